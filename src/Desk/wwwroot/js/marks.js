// @ts-check
// Datum, balance, percussion, and a numbered balloon for each spot that has findings.
import { make, View } from './view.js';

/** @typedef {{kind:string,label:string,says:string,x:number,y:number}} Mark */

const PLAIN = ['datum', 'balance', 'percussion'];
const GRAVE = ['note', 'warning', 'error'];
const MOST = 60;

export class Marks {
    /** @param {SVGGElement} plain @param {SVGGElement} balloons @param {View} view */
    constructor(plain, balloons, view) {
        [this.plain, this.balloons, this.view] = [plain, balloons, view];
        /** @type {{x:number,y:number,el:SVGGElement}[]} */ this.placed = [];
        this.pointed = '';
        this.k = 0;
    }

    /** Draws them anew. @param {Mark[]} marks @param {{x:number,y:number,diameter:number}[]} holes @param {{x:number,y:number}[]} texts where dimension figures stand, px */
    build(marks, holes, texts) {
        const { view } = this;
        const focused = /** @type {any} */ (document.activeElement)?.dataset?.findings;
        this.k = view.k;
        this.placed = [];
        this.plain.replaceChildren();
        this.balloons.replaceChildren();
        /** @type {Map<string,Mark[]>} */ const spots = new Map();
        const small = view.w < 500;
        for (const m of marks) {
            if (!PLAIN.includes(m.kind)) {
                const key = `${m.x.toFixed(2)} ${m.y.toFixed(2)}`;
                spots.set(key, [...spots.get(key) ?? [], m]);
                continue;
            }
            const g = make('g', { class: 'mark ' + m.kind }, this.plain);
            this.placed.push({ x: m.x, y: m.y, el: g });
            make('title', {}, g).textContent = m.says;
            if (m.kind !== 'datum') make('circle', { r: 8 }, g);
            if (m.kind === 'balance') make('path', { d: 'M0 0V-8A8 8 0 0 1 8 0ZM0 0V8A8 8 0 0 1 -8 0Z' }, g);
            if (m.kind === 'percussion') make('path', { d: 'M-13 0H13M0 -13V13' }, g);
            const says = m.label || m.kind;
            const where = m.kind === 'datum' ? { y: 27, 'text-anchor': 'middle' } : this.room(m, says, holes);
            if (where && !(small && m.kind === 'datum')) make('text', where, g).textContent = says;
        }
        // where a number may not stand: on a hole, a mark, a dimension
        const marked = marks.filter(m => PLAIN.includes(m.kind)).map(m => ({ x: view.sx(m.x), y: view.sy(m.y), r: 24 }));
        const taken = [...marked, ...texts.map(t => ({ ...t, r: 40 }))];
        for (const group of [...spots.values()].slice(0, MOST)) {
            const [x, y] = [view.sx(group[0].x), view.sy(group[0].y)];
            const near = [...taken, ...holes.filter(h => Math.abs(view.sx(h.x) - x) < 170 + h.diameter * view.k && Math.abs(view.sy(h.y) - y) < 170 + h.diameter * view.k).slice(0, 200)
                .map(h => ({ x: view.sx(h.x), y: view.sy(h.y), r: h.diameter / 2 * view.k + 13 }))];
            const ways = [34, 58, 86, 120].flatMap(r => [[0.6, -0.8], [-0.6, -0.8], [0.6, 0.8], [-0.6, 0.8], [0, -1], [0, 1]].map(([a, b]) => [a * r, b * r]));
            const [dx, dy] = ways.find(([a, b]) => near.every(t => Math.hypot(t.x - x - a, t.y - y - b) > t.r)) ?? ways[0];
            taken.push({ x: x + dx, y: y + dy, r: 27 });
            this.balloon(group, dx, dy);
        }
        this.place();
        this.point(this.pointed);
        if (focused) /** @type {SVGGElement|null} */ (this.balloons.querySelector(`[data-findings="${focused}"]`))?.focus({ preventScroll: true });
    }

    /** Where a mark's name hides no hole; on a small drawing it is left out when there is no such place. @param {Mark} m @param {string} says @param {{x:number,y:number,diameter:number}[]} holes */
    room(m, says, holes) {
        const { view } = this;
        const long = says.length * 7.5;
        const ways = [[12, 20], [12, -13], [-12 - long, 20], [-12 - long, -13], [-long / 2, 30], [-long / 2, -20], [-long / 2, 48], [-long / 2, -36]];
        const near = holes.map(h => ({ x: view.sx(h.x) - view.sx(m.x), y: view.sy(h.y) - view.sy(m.y), r: h.diameter / 2 * view.k + 4 })).filter(h => Math.hypot(h.x, h.y) < h.r + 150);
        const way = ways.find(([x, y]) => near.every(h => Math.hypot(h.x - Math.min(x + long, Math.max(x, h.x)), h.y - Math.min(y, Math.max(y - 12, h.y))) > h.r));
        if (!way && view.w < 500) return null;
        return { x: (way ?? ways[0])[0], y: (way ?? ways[0])[1] };
    }

    /** @param {Mark[]} group @param {number} dx @param {number} dy */
    balloon(group, dx, dy) {
        const kind = GRAVE[Math.max(...group.map(m => GRAVE.indexOf(m.kind)))];
        const says = group.map(m => `${m.label}. ${m.says}`).join('\n');
        const g = make('g', { class: 'mark ' + kind, role: 'button', tabindex: this.balloons.childElementCount ? '-1' : '0', 'data-findings': group.map(m => m.label).join(' '), 'aria-label': `${group.length > 1 ? 'Findings' : 'Finding'} ${says}` }, this.balloons);
        this.placed.push({ x: group[0].x, y: group[0].y, el: g });
        make('title', {}, g).textContent = says;
        make('path', { class: 'leader', d: `M0 0L${dx} ${dy}` }, g);
        make('circle', { r: 2.5 }, g);
        const b = make('g', { transform: `translate(${dx} ${dy})`, class: 'balloon' }, g);
        make('path', { d: kind === 'error' ? 'M-12 -10H12V10H-12Z' : kind === 'warning' ? 'M0 -15L15 11H-15Z' : 'M0 -11A11 11 0 0 1 0 11A11 11 0 0 1 0 -11Z' }, b);
        make('text', { y: kind === 'warning' ? 8 : 5, 'text-anchor': 'middle' }, b).textContent = group.length > 1 ? `${group[0].label}+` : group[0].label;
    }

    /** Puts them where the view says. */
    place() {
        for (const p of this.placed) p.el.setAttribute('transform', `translate(${this.view.sx(p.x)} ${this.view.sy(p.y)})`);
    }

    /** Marks the balloon of a finding; says where it is. @param {string} number @returns {{x:number,y:number}|null} */
    point(number) {
        this.pointed = number;
        /** @type {{x:number,y:number}|null} */ let at = null;
        for (const p of this.placed) {
            const its = number !== '' && (p.el.dataset.findings ?? '').split(' ').includes(number);
            p.el.classList.toggle('pointed', its);
            if (its) at = p;
        }
        return at;
    }

    /** The next balloon. @param {Element} el @param {number} way */
    next(el, way) {
        const all = [...this.balloons.children];
        const to = /** @type {SVGGElement} */ (all[(all.indexOf(el) + way + all.length) % all.length]);
        for (const b of all) b.setAttribute('tabindex', b === to ? '0' : '-1');
        to.focus({ preventScroll: true });
    }
}
