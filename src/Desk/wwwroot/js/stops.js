// @ts-check
// What can be taken hold of: a stop for each thing in sight, chosen by pointer or keyboard, moved in place at every frame.
import { make, View } from './view.js';

/**
 * @typedef {{id:string,name:string,x:number,y:number,diameter:number,fixed:boolean}} Thing
 * @typedef {{thing:Thing,el:SVGGElement,reach:Element,label:string,r:number}} Stop
 */

const MOST = 400;
const GROUPS = /** @type {const} */ ({
    holes: { label: 'Holes', kinds: ['hole', 'row', 'rim'] },
    outline: { label: 'Points of the outline', kinds: ['point', 'control', 'bow'] },
    lines: { label: 'Lines of the outline', kinds: ['segment'] },
    rest: { label: 'Edge, plunge, grip, datum and ends of rows', kinds: ['edge', 'plunge', 'grip', 'datum', 'rowend'] },
});
/** How each kind is drawn, px about its place. @type {Record<string,string>} */
const SHAPES = {
    point: 'M-4 -4H4V4H-4Z',
    control: 'M0 -4.5A4.5 4.5 0 0 1 0 4.5A4.5 4.5 0 0 1 0 -4.5Z',
    bow: 'M0 -6L6 0L0 6L-6 0Z',
    edge: 'M-4.5 -5L4.5 0L-4.5 5Z',
    plunge: 'M0 -6L6 0L0 6L-6 0Z',
    grip: 'M0 -4.5A4.5 4.5 0 0 1 0 4.5A4.5 4.5 0 0 1 0 -4.5Z',
    datum: 'M0 0L-7 12H7Z',
    rowend: 'M-5 -5L5 5M-5 5L5 -5M-5 -5H5V5H-5Z',
    rim: 'M0 -4.5A4.5 4.5 0 0 1 0 4.5A4.5 4.5 0 0 1 0 -4.5Z',
    segment: '',
};

/** @param {string} id */
export const kindOf = id => id.slice(0, id.indexOf(':'));

/** The outline's segments next to a chosen thing: their control points are shown. @param {string} id @param {number} count @returns {number[]} */
export function besides(id, count) {
    const i = parseInt(id.slice(id.indexOf(':') + 1), 10);
    switch (kindOf(id)) {
        case 'point': return [(i + count - 1) % count, i];
        case 'control': case 'bow': case 'segment': return [i];
        default: return [];
    }
}

/** Of things in px those that keep apart: one a cell, the chosen one first. @template {{id:string,px:number,py:number}} T @param {T[]} list @param {number} cell @param {number} most @param {string} chosen @returns {T[]} */
export function apart(list, cell, most, chosen) {
    const taken = new Set();
    /** @type {T[]} */ const kept = [];
    for (const t of [...list.filter(o => o.id === chosen), ...list.filter(o => o.id !== chosen)]) {
        const key = Math.round(t.px / cell) * 65536 + Math.round(t.py / cell);
        if (taken.has(key) || kept.length >= most) continue;
        taken.add(key);
        kept.push(t);
    }
    return kept;
}

export class Stops {
    /** @param {Element} over @param {View} view */
    constructor(over, view) {
        this.view = view;
        this.groups = Object.fromEntries(Object.entries(GROUPS).map(([k, g]) => [k, make('g', { role: 'group', 'aria-label': g.label }, over)]));
        /** @type {Map<string,Thing>} */ this.things = new Map();
        /** @type {Map<string,Stop>} */ this.shown = new Map();
        this.chosen = '';
        this.thinned = '';
    }

    /** Takes other things. @param {Thing[]} things */
    take(things) {
        this.things = new Map(things.map(t => [t.id, t]));
        for (const [id, stop] of this.shown) {
            const t = this.things.get(id);
            if (t) stop.thing = t; else this.drop(id);
        }
    }

    /** @param {string} id */
    drop(id) {
        this.shown.get(id)?.el.remove();
        this.shown.delete(id);
    }

    /** Which things are seen now, and the words when some are not. @param {number} segments */
    wanted(segments) {
        const near = new Set(besides(this.chosen, segments));
        const hole = this.chosen.replace(/^rim:/, 'hole:');
        /** @type {Record<string,{id:string,diameter:number,px:number,py:number}[]>} */ const by = { holes: [], points: [], rest: [], always: [] };
        let [holes, points] = [0, 0];
        for (const t of this.things.values()) {
            const kind = kindOf(t.id);
            if (kind === 'rim' && 'hole:' + t.id.slice(4) !== hole) continue;
            if ((kind === 'control' || kind === 'bow') && !near.has(parseInt(t.id.slice(kind.length + 1), 10))) continue;
            if (t.id !== this.chosen && !this.view.sees(t, 20)) continue;
            const seen = { id: t.id, diameter: t.diameter, px: this.view.sx(t.x), py: this.view.sy(t.y) };
            if (kind === 'hole' || kind === 'row') { by.holes.push(seen); holes++; }
            else if (kind === 'point') { by.points.push(seen); points++; }
            else if (kind === 'segment') by.rest.push(seen);
            else by.always.push(seen);
        }
        const many = by.holes.length > MOST;
        const small = this.view.w < 500;
        const kept = [
            ...apart(by.holes, many ? 14 : 1, MOST, this.chosen),
            ...apart(by.points, small ? 20 : 9, MOST, this.chosen),
            ...apart(by.rest, 24, MOST / 2, this.chosen),
            ...by.always,
        ];
        const keptPoints = kept.filter(t => kindOf(t.id) === 'point').length;
        const keptHoles = kept.filter(t => ['hole', 'row'].includes(kindOf(t.id))).length;
        this.thinned = [
            keptPoints < points ? `${keptPoints} of ${points} points` : '',
            keptHoles < holes ? `${keptHoles} of ${holes} holes` : '',
        ].filter(s => s).join(' and ');
        return kept;
    }

    /** Puts every stop where the view says. @param {number} segments @param {(t:Thing)=>string} label */
    place(segments, label) {
        const wanted = this.wanted(segments);
        const ids = new Set(wanted.map(t => t.id));
        for (const id of [...this.shown.keys()]) {
            if (!ids.has(id) && !this.shown.get(id)?.el.contains(document.activeElement)) this.drop(id);
        }
        for (const t of wanted) {
            let stop = this.shown.get(t.id);
            if (!stop) this.shown.set(t.id, stop = this.stopOf(/** @type {Thing} */ (this.things.get(t.id))));
            stop.el.setAttribute('transform', `translate(${t.px} ${t.py})`);
            const r = Math.max(t.diameter / 2 * this.view.k, 11);
            if (r !== stop.r) { stop.r = r; stop.reach.setAttribute('r', String(r)); }
            const says = label(stop.thing);
            if (says !== stop.label) { stop.label = says; stop.el.setAttribute('aria-label', says); }
        }
        this.tabs();
    }

    /** One stop of each group is reached with Tab. */
    tabs() {
        for (const g of Object.values(this.groups)) {
            const stops = [...g.children];
            const one = stops.find(e => e.dataset.id === this.chosen) ?? stops.find(e => e.getAttribute('tabindex') === '0') ?? stops[0];
            for (const e of stops) {
                const tab = e === one ? '0' : '-1';
                if (e.getAttribute('tabindex') !== tab) e.setAttribute('tabindex', tab);
            }
        }
    }

    /** @param {Thing} thing @returns {Stop} */
    stopOf(thing) {
        const kind = kindOf(thing.id);
        const group = Object.entries(GROUPS).find(([, g]) => /** @type {readonly string[]} */ (g.kinds).includes(kind))?.[0] ?? 'rest';
        const el = make('g', { class: `stop at-${kind}${thing.fixed ? ' fixed' : ''}${thing.id === this.chosen ? ' chosen' : ''}`, role: 'button', tabindex: '-1', 'data-id': thing.id }, this.groups[group]);
        const reach = make('circle', { class: 'reach', r: 11 }, el);
        if (SHAPES[kind]) make('path', { class: 'dot', d: SHAPES[kind] }, el);
        return { thing, el, reach, label: '', r: 11 };
    }

    /** @param {string} id */
    choose(id) {
        for (const i of [this.chosen, id]) this.shown.get(i)?.el.classList.toggle('chosen', i === id);
        this.chosen = id;
    }

    /** The thing nearest to a spot that a finger or pointer may mean. @param {{x:number,y:number}} p px @param {number} reach px */
    hit(p, reach) {
        /** @type {Thing|null} */ let best = null;
        let least = Infinity;
        for (const { thing } of this.shown.values()) {
            const kind = kindOf(thing.id);
            if (kind === 'segment') continue;
            const d = Math.hypot(this.view.sx(thing.x) - p.x, this.view.sy(thing.y) - p.y);
            const r = kind === 'hole' || kind === 'row' ? Math.max(reach, thing.diameter / 2 * this.view.k) : reach;
            // inside a large hole whatever lies nearer to its own place goes first
            const rank = kind === 'hole' || kind === 'row' ? d + 3 : d;
            if (d <= r && rank < least) [best, least] = [thing, rank];
        }
        return best;
    }

    /** The next or the last but one of the same group. @param {string} id @param {number} way @param {number} segments */
    next(id, way, segments) {
        const kinds = Object.values(GROUPS).find(g => /** @type {readonly string[]} */ (g.kinds).includes(kindOf(id)))?.kinds ?? [];
        const near = new Set(besides(this.chosen, segments));
        const all = [...this.things.values()].filter(t => {
            const kind = kindOf(t.id);
            if (!(/** @type {readonly string[]} */ (kinds)).includes(kind)) return false;
            if (kind === 'rim') return 'hole:' + t.id.slice(4) === this.chosen.replace(/^rim:/, 'hole:');
            return (kind !== 'control' && kind !== 'bow') || near.has(parseInt(t.id.slice(kind.length + 1), 10));
        });
        return all[(all.findIndex(t => t.id === id) + way + all.length) % all.length]?.id ?? '';
    }

    /** @param {string} id */
    focus(id) { this.shown.get(id)?.el.focus({ preventScroll: true }); }
}

