// @ts-check
// Pointing at places: for a new hole, for measuring, for the scale of a background. By pointer, or with a cross moved by the arrow keys.
import { make } from './view.js';

/** @typedef {{x:number,y:number}} Place */
/** How many places each way needs, and what is asked. @type {Record<string,{count:number,asks:string[]}>} */
const WAYS = {
    hole: { count: 1, asks: ['Click where the new hole goes, or move the cross with the arrow keys and press Enter. Esc ends.'] },
    measure: { count: 2, asks: ['Measure from: click a point, a centre or the outline, or move the cross with the arrow keys and press Enter. Esc ends.', 'Measure to: the second place.'] },
    scale: { count: 2, asks: ['Click the first of two places on the background whose distance you know, or move the cross and press Enter. Esc ends.', 'And the second.'] },
};

/** @param {import('./drawing.js').Drawing} d @param {SVGGElement} over */
export function picks(d, over) {
    let how = '';
    /** @type {Place[]} */ let places = [];
    /** @type {Place} */ let at = { x: 0, y: 0 };
    /** @type {import('./sizes.js').Size[]} */ let measured = [];
    /** @type {SVGGElement|null} */ let cross = null;

    const label = () => `${how === 'hole' ? 'Place of the new hole' : places.length ? 'Second place' : 'First place'}, x ${d.text(at.x)}, y ${d.text(at.y)}`;

    function show() {
        d.tell('picking', how ? WAYS[how].asks[places.length] ?? '' : '');
        d.svg.classList.toggle('picking', how !== '');
        for (const b of d.paper.querySelectorAll('[data-pick]')) b.setAttribute('aria-pressed', String(/** @type {HTMLElement} */ (b).dataset.pick === how));
        d.draw();
    }

    const self = {
        get on() { return how !== ''; },
        get kind() { return how; },
        /** @param {string} kind */
        begin(kind) {
            if (how === kind || !WAYS[kind]) { self.stop(); return; }
            [how, places, measured] = [kind, [], []];
            d.tell('measured', '');
            const chosen = d.stops.things.get(d.stops.chosen);
            at = chosen && d.view.sees(chosen, 0) && kind === 'measure' ? { x: chosen.x, y: chosen.y } : { x: d.view.x, y: d.view.y };
            cross ??= make('g', { class: 'cross', role: 'button', tabindex: '0' }, over);
            cross?.replaceChildren();
            make('path', { d: 'M-16 0H-4M4 0H16M0 -16V-4M0 4V16' }, /** @type {SVGGElement} */ (cross));
            show();
            d.now();
            cross?.focus({ preventScroll: true });
        },
        /** Ends it; a second time what was measured goes too. */
        stop() {
            if (!how && !measured.length) return false;
            if (!how) measured = [];
            how = '';
            places = [];
            const had = cross?.contains(document.activeElement);
            cross?.remove();
            cross = null;
            if (had) d.svg.focus({ preventScroll: true });
            if (!measured.length) d.tell('measured', '');
            show();
            return true;
        },
        /** @param {Place} p @param {boolean} rounded */
        over(p, rounded) {
            at = how === 'scale' ? p : { x: p.x, y: p.y };
            if (how === 'hole') {
                const step = rounded ? d.holds(true).step : 0;
                if (step) at = { x: Math.round(p.x / step) * step, y: Math.round(p.y / step) * step };
            }
            d.draw();
        },
        /** @param {number} dx @param {number} dy */
        nudge(dx, dy) { at = { x: at.x + dx, y: at.y + dy }; d.draw(); },
        /** Takes the place of the cross, or of a thing. @param {Place} [place] */
        async take(place) {
            const reach = 12 / d.view.k;
            places.push({ ...(place ?? at) });
            const kind = how;
            if (places.length < WAYS[kind].count) {
                show();
                return;
            }
            const [a, b] = places;
            if (kind === 'hole') {
                self.stop();
                const id = await d.net.invokeMethodAsync('NewHole', a.x, a.y);
                if (id) { d.choose(id, true); d.now(); d.stops.focus(id); }
            } else if (kind === 'measure') {
                const m = await d.net.invokeMethodAsync('Measure', a.x, a.y, b.x, b.y, reach);
                places = [];
                if (how !== kind) return;
                measured = m.sizes;
                d.tell('measured', m.says);
                show();
            } else {
                self.stop();
                await d.net.invokeMethodAsync('Pointed', a.x, a.y, b.x, b.y);
            }
        },
        sizes: () => measured,
        place() {
            if (!cross) return;
            cross.setAttribute('transform', `translate(${d.view.sx(at.x)} ${d.view.sy(at.y)})`);
            cross.setAttribute('aria-label', label());
        },
    };
    return self;
}
