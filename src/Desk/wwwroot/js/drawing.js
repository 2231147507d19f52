// @ts-check
// The inside of the drawing's <svg>: shows a plan, moves at once what is dragged, and asks the desk what follows from it,
// one question at a time and always about the last place. Holds no rule of the trade: those answers come from the desk.
import { Backdrop } from './backdrop.js';
import { Holes } from './holes.js';
import { latest } from './latest.js';
import { Marks } from './marks.js';
import { bowOf, middleOf, moveIn, pathOf } from './outline.js';
import { picks } from './picking.js';
import { pointing } from './pointing.js';
import { drawBar, drawSizes, gridOf, lineOf } from './sizes.js';
import { hold, nearestDrill } from './snaps.js';
import { kindOf, Stops } from './stops.js';
import { make, View } from './view.js';

/**
 * @typedef {import('./outline.js').Segment} Segment
 * @typedef {import('./stops.js').Thing} Thing
 * @typedef {import('./marks.js').Mark} Mark
 * @typedef {import('./sizes.js').Size} Size
 * @typedef {{i:number,segment:Segment}} Changed
 * @typedef {{version:number,refused:string,edge:string,plunge:string,grip:string,rowHoles:Thing[]|null,places:Thing[],changed:Changed[],marks:Mark[],sizes:Size[]}} Derived
 * @typedef {{version:number,box:number[],unitMm:number,stepMm:number,outline:Segment[],things:Thing[],lines:{x0:number,y0:number,x1:number,y1:number}[],drills:{name:string,mm:number}[],derived:Derived,pale:string}} Plan
 * @typedef {{invokeMethodAsync:(name:string,...args:any[])=>Promise<any>}} Net
 */

/** Kinds whose true place only the desk knows: they stay on the outline or in the middle of an arc. */
const BOUND = ['edge', 'plunge', 'bow', 'rowend'];

export class Drawing {
    /** @param {SVGSVGElement} svg @param {Net} net @param {Plan} first */
    constructor(svg, net, first) {
        [this.svg, this.net, this.plan] = [svg, net, first];
        this.paper = /** @type {HTMLElement} */ (svg.closest('.paper') ?? svg.parentElement);
        this.view = new View(svg);
        this.world = make('g', { class: 'world' }, svg);
        const over = make('g', { class: 'over' }, svg);
        this.layer = Object.fromEntries(['grid', 'pale', 'outline', 'edge', 'plunge', 'grip', 'along', 'stems', 'guide'].map(c => [c, make('path', { class: c }, this.world)]));
        this.backdrop = new Backdrop(make('g', { class: 'backdrop' }), this.world);
        const [crosses, sizes, marks] = ['crosses', 'sizes', 'plain-marks'].map(c => make('g', { class: c, 'aria-hidden': 'true' }, over));
        this.sizes = sizes;
        this.stops = new Stops(over, this.view);
        this.holes = new Holes(this.world, crosses, this.stops);
        this.marks = new Marks(marks, make('g', { role: 'group', 'aria-label': 'Findings on the drawing' }, over), this.view);
        this.bar = make('g', { class: 'bar', 'aria-hidden': 'true' }, over);
        this.picks = picks(this, over);
        /** @type {{thing:Thing,dx:number,dy:number}|null} */ this.grip = null;
        this.moving = false;
        this.frame = 0;
        this.stale = { marks: true, holes: true };
        /** @type {Segment[]} */ this.sent = [];
        /** @type {Thing[]} */ this.rows = [];
        /** @type {number[]} */ this.changed = [];
        /** The move in hand is being ended: what comes after the first word does not count. */ this.ending = false;
        this.questions = latest(
            (/** @type {{id:string,x:number,y:number,rounded:boolean,name:string}} */ q) => net.invokeMethodAsync('Drag', q.id, q.x, q.y, q.rounded, q.name),
            (/** @type {Derived} */ d) => this.follow(d));
        /** @type {{id:string,x:number,y:number,rounded:boolean,name:string}|null} */ this.asked = null;
    }

    /** Makes the whole drawing anew. @param {Plan} next */
    build(next) {
        const focused = /** @type {any} */ (document.activeElement)?.dataset?.id;
        this.plan = next;
        this.sent = next.outline.map(s => ({ ...s }));
        this.rows = next.derived.rowHoles ?? [];
        this.changed = [];
        const { derived } = next;
        const things = [...next.things.filter(t => kindOf(t.id) === 'hole'), ...derived.rowHoles ?? []].sort((a, b) => b.diameter - a.diameter);
        for (const t of [...things]) if (kindOf(t.id) === 'hole') things.push({ id: 'rim:' + t.id.slice(5), name: `Rim of ${t.name.toLowerCase()}`, x: 0, y: 0, diameter: 0, fixed: false });
        const named = new Map(next.things.map(t => [t.id, t]));
        next.outline.forEach((s, i) => {
            for (const id of [`point:${i}`, `control:${i}.1`, `control:${i}.2`, `bow:${i}`]) {
                const t = named.get(id);
                if (t) things.push(t);
            }
        });
        next.outline.forEach((s, i) => { const t = named.get(`segment:${i}`); if (t) things.push(t); });
        this.stops.take([...things, ...derived.places]);
        this.layer.pale.setAttribute('d', next.pale);
        this.follow(derived, true);
        this.choose(this.stops.things.has(this.stops.chosen) ? this.stops.chosen : '', false);
        if (!this.view.own) this.view.whole(next.box);
        this.draw();
        this.now();
        if (focused) this.stops.focus(focused);
    }

    /** Shows what follows from a step. @param {Derived} d @param {boolean} [anew] */
    follow(d, anew = false) {
        // what is not told is as it was when the whole plan was sent
        const rows = d.rowHoles ?? this.rows;
        const newRows = anew || rows !== this.plan.derived.rowHoles;
        this.plan.derived = { ...d, rowHoles: rows };
        for (const part of /** @type {const} */ (['edge', 'plunge', 'grip'])) this.layer[part].setAttribute('d', d[part]);
        for (const t of [...d.places, ...newRows ? rows : []]) {
            const own = this.stops.things.get(t.id);
            if (own && !(this.moving && this.asked?.id === t.id && !BOUND.includes(kindOf(t.id)))) Object.assign(own, { x: t.x, y: t.y, diameter: t.diameter });
        }
        const now = new Map(d.changed.map(c => [c.i, c.segment]));
        for (const i of new Set([...this.changed, ...now.keys()])) if (this.plan.outline[i]) Object.assign(this.plan.outline[i], now.get(i) ?? this.sent[i]);
        const moved = this.changed.length > 0 || now.size > 0;
        this.changed = [...now.keys()];
        // what the hand has done since the question was asked stays done
        if (this.moving && this.asked && kindOf(this.asked.id) !== 'bow') moveIn(this.plan.outline, this.asked.id, this.asked);
        if (anew || moved) this.outline();
        this.svg.classList.toggle('refused', d.refused !== '');
        this.svg.dataset.version = String(d.version);
        this.stale.marks = true;
        if (newRows) this.stale.holes = true;
        this.draw();
    }

    /** Draws the outline and puts its points where it says. */
    outline() {
        this.layer.outline.setAttribute('d', pathOf(this.plan.outline));
        this.plan.outline.forEach((s, i) => {
            const at = (/** @type {string} */ id, /** @type {number} */ x, /** @type {number} */ y) => { const t = this.stops.things.get(id); if (t) Object.assign(t, { x, y }); };
            at(`point:${i}`, s.x0, s.y0);
            const m = middleOf(s);
            at(`segment:${i}`, m.x, m.y);
            if (s.kind === 'C') { at(`control:${i}.1`, s.x1, s.y1); at(`control:${i}.2`, s.x2, s.y2); }
            if (s.kind === 'A' && this.stops.things.has(`bow:${i}`)) { const b = bowOf(s); at(`bow:${i}`, b.x, b.y); }
        });
    }

    /** Asks for a frame. */
    draw() { this.frame ||= requestAnimationFrame(() => this.now()); }

    /** Puts everything where the view says. */
    now() {
        cancelAnimationFrame(this.frame);
        this.frame = 0;
        const { view, plan, stops } = this;
        this.world.setAttribute('transform', view.matrix);
        this.rims();
        stops.place(plan.outline.length, t => this.label(t));
        this.stems();
        if (this.stale.holes) this.holes.build();
        this.stale.holes = false;
        this.holes.place();
        const list = [...plan.derived.sizes.filter(s => s.kind !== 'over' || view.sees({ x: s.x0, y: s.y0 }, 0) || view.sees({ x: s.x1, y: s.y1 }, 0)), ...this.picks.sizes()];
        drawSizes(this.sizes, view, plan.box, list);
        if (this.stale.marks || this.marks.k !== view.k) {
            const texts = list.map(s => { const l = lineOf(view, plan.box, s); return { x: (l.lx0 + l.lx1) / 2, y: (l.ly0 + l.ly1) / 2 - 6 }; });
            this.marks.build(plan.derived.marks, [...stops.things.values()].filter(t => (t.diameter || kindOf(t.id) === 'point') && view.sees(t, 200)), texts);
        } else {
            this.marks.place();
        }
        this.stale.marks = false;
        drawBar(this.bar, view, plan.unitMm);
        this.picks.place();
        this.layer.grid.setAttribute('d', gridOf(view, this.holds(true).grid, this.datum));
        this.tell('thinned', stops.thinned && `Shown: ${stops.thinned}. Look closer for the others.`);
    }

    /** @param {Thing} t */
    label(t) {
        const kind = kindOf(t.id);
        if (kind === 'segment') return t.name;
        if (kind === 'rim') return `${t.name}, diameter ${this.text(this.stops.things.get('hole:' + t.id.slice(4))?.diameter ?? 0)}`;
        return `${t.name}, x ${this.text(t.x)}, y ${this.text(t.y)}`;
    }

    /** A length in the maker's unit. @param {number} mm */
    text(mm) { return this.plan.unitMm === 1 ? mm.toFixed(2) : (mm / this.plan.unitMm).toFixed(3); }

    get datum() { return this.plan.derived.marks.find(m => m.kind === 'datum') ?? { x: 0, y: 0 }; }

    /** The rim of the chosen hole, below and to the right. */
    rims() {
        const name = this.stops.chosen.replace(/^(hole|rim):/, '');
        const [hole, rim] = [this.stops.things.get('hole:' + name), this.stops.things.get('rim:' + name)];
        if (!hole || !rim) return;
        const r = Math.max(hole.diameter / 2, 13 / this.view.k);
        Object.assign(rim, { x: hole.x + r * Math.SQRT1_2, y: hole.y - r * Math.SQRT1_2 });
    }

    /** Lines from control points to the points they belong to. */
    stems() {
        let d = '';
        for (const id of this.stops.shown.keys()) {
            if (kindOf(id) !== 'control') continue;
            const s = this.plan.outline[parseInt(id.slice(8), 10)];
            if (s) d += id.endsWith('.1') ? `M${s.x0} ${s.y0}L${s.x1} ${s.y1}` : `M${s.x} ${s.y}L${s.x2} ${s.y2}`;
        }
        this.layer.stems.setAttribute('d', d);
        const chosen = kindOf(this.stops.chosen) === 'segment' ? this.plan.outline[+this.stops.chosen.slice(8)] : null;
        this.layer.along.setAttribute('d', chosen ? pathOf([chosen]).slice(0, -1) : '');
    }

    /** @param {string} id @param {boolean} tell @param {{x:number,y:number}} [at] where it was clicked */
    choose(id, tell, at) {
        if (this.stops.chosen !== id) this.stale.holes = true;
        this.stops.choose(id);
        this.draw();
        if (!tell) return;
        const t = this.stops.things.get(id);
        this.net.invokeMethodAsync('Choose', id, at?.x ?? t?.x ?? 0, at?.y ?? t?.y ?? 0).then((/** @type {Size[]|null} */ sizes) => {
            if (!sizes || this.moving || this.stops.chosen !== id) return;
            this.plan.derived.sizes = sizes;
            this.stale.marks = true;
            this.draw();
        }, () => {});
    }

    /** What is ticked. @param {boolean} rounded */
    holds(rounded) {
        const ticked = (/** @type {string} */ name) => rounded && /** @type {HTMLInputElement|null} */ (this.paper.querySelector(`[data-hold="${name}"]`))?.checked === true;
        const grid = ticked('grid') ? parseFloat(/** @type {HTMLElement|null} */ (this.paper.querySelector('[data-grid]'))?.dataset.grid ?? '0') : 0;
        return { step: ticked('step') ? this.plan.stepMm : 0, grid, from: this.datum, line: ticked('line'), spacing: ticked('spacing'), drills: ticked('drills') };
    }

    /** Moves a thing here at once and asks what follows. @param {Thing} t @param {{x:number,y:number}} to @param {boolean} rounded @param {boolean} pulled by a pointer, so that it may hold on to others */
    move(t, to, rounded, pulled) {
        const holds = this.holds(rounded);
        const kind = kindOf(t.id);
        if (kind === 'rim') { this.rim(t, to, holds, rounded); return; }
        const others = pulled ? [...this.stops.things.values()].filter(o => o.id !== t.id && ['hole', 'row', 'point', 'rowend'].includes(kindOf(o.id)) && this.view.sees(o, 0)) : [];
        const near = { places: others, holes: kind === 'hole' || kind === 'rowend' ? others.filter(o => o.diameter) : [], lines: pulled ? this.plan.lines : [] };
        const at = pulled ? hold(to, 8 / this.view.k, holds, near) : { ...to, exact: false, guides: [] };
        Object.assign(t, { x: at.x, y: at.y });
        this.layer.guide.setAttribute('d', at.guides.map(g => `M${g.x0} ${g.y0}L${g.x1} ${g.y1}`).join(''));
        if (moveIn(this.plan.outline, t.id, at)) this.outline();
        this.ask({ id: t.id, x: at.x, y: at.y, rounded: holds.step > 0 && !at.exact && pulled, name: '' });
    }

    /** The next larger or smaller drill owned, or one step. @param {Thing} t @param {number} way */
    rimBy(t, way) {
        const hole = this.stops.things.get('hole:' + t.id.slice(4));
        if (!hole) return;
        const { drills } = this.plan;
        const drill = !this.holds(true).drills ? null : way > 0 ? drills.find(o => o.mm > hole.diameter + 1e-6) : [...drills].reverse().find(o => o.mm < hole.diameter - 1e-6);
        hole.diameter = drill?.mm ?? Math.max(0.1, hole.diameter + way * this.plan.stepMm);
        this.ask({ id: t.id, x: hole.diameter, y: 0, rounded: false, name: drill?.name ?? '' });
    }

    /** Drags the rim of a hole. @param {Thing} t @param {{x:number,y:number}} to @param {{drills:boolean,step:number}} holds @param {boolean} rounded */
    rim(t, to, holds, rounded) {
        const hole = this.stops.things.get('hole:' + t.id.slice(4));
        if (!hole) return;
        const wanted = 2 * Math.hypot(to.x - hole.x, to.y - hole.y);
        const drill = holds.drills ? nearestDrill(wanted, this.plan.drills) : null;
        hole.diameter = drill?.mm ?? Math.max(0.1, rounded && holds.step ? Math.round(wanted / holds.step) * holds.step : wanted);
        this.ask({ id: t.id, x: hole.diameter, y: 0, rounded, name: drill?.name ?? '' });
    }

    /** @param {{id:string,x:number,y:number,rounded:boolean,name:string}} q */
    ask(q) {
        this.asked = q;
        this.questions.put(q);
        this.draw();
    }

    begin() {
        if (this.moving) return;
        this.moving = true;
        this.net.invokeMethodAsync('Begin');
    }

    /** The move is done, or taken back. @param {'End'|'Cancel'} how */
    async end(how) {
        // Esc while the button is still down: letting go of it must not keep what Esc put back
        if (this.ending) return;
        this.ending = true;
        this.grip = null;
        if (how === 'Cancel') this.questions.drop();
        this.layer.guide.setAttribute('d', '');
        await this.questions.rest();
        this.moving = false;
        this.ending = false;
        this.asked = null;
        const next = await this.net.invokeMethodAsync(how);
        if (!this.moving) this.build(next);
    }

    /** Words for the line under the drawing. @param {string} what @param {string} words */
    tell(what, words) {
        const el = this.paper.querySelector(`[data-says="${what}"]`);
        if (el && el.textContent !== words) el.textContent = words;
    }
}

/** @param {SVGSVGElement} svg @param {Net} net @param {Plan} first */
export function attach(svg, net, first) {
    const drawing = new Drawing(svg, net, first);
    const stop = pointing(drawing);
    const grown = new ResizeObserver(() => {
        drawing.view.measure();
        if (!drawing.view.own) drawing.view.whole(drawing.plan.box);
        drawing.stale.marks = true;
        drawing.now();
    });
    grown.observe(svg);
    drawing.build(first);
    svg.dataset.ready = 'yes';
    return {
        /** Shows a plan changed elsewhere; while something is held the end of the move shows it. @param {Plan} next */
        show(next) { if (!drawing.moving) drawing.build(next); },
        /** @param {import('./backdrop.js').Placed|null} placed */
        background(placed) { drawing.backdrop.show(placed); },
        /** Lets two places be pointed at. @param {string} how */
        pick(how) { drawing.picks.begin(how); },
        dispose() { stop(); grown.disconnect(); cancelAnimationFrame(drawing.frame); },
    };
}
