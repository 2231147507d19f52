// @ts-check
// Holes: all of them in two paths, the chosen one by itself, so that moving it draws no other anew. Centre lines and names where they are large enough.
import { kindOf, Stops } from './stops.js';
import { make, set } from './view.js';

const MANY = 1500;

export class Holes {
    /** @param {SVGGElement} world @param {SVGGElement} crosses @param {Stops} stops */
    constructor(world, crosses, stops) {
        this.single = make('path', { class: 'hole' }, world);
        this.rows = make('path', { class: 'hole' }, world);
        this.one = make('circle', { class: 'hole chosen', visibility: 'hidden' }, world);
        [this.stops, this.crosses] = [stops, crosses];
        this.lines = make('path', {}, crosses);
        this.many = false;
        /** @type {SVGTextElement[]} */ this.labels = [];
    }

    get chosen() {
        const t = this.stops.things.get(this.stops.chosen.replace(/^rim:/, 'hole:'));
        return t?.diameter ? t : null;
    }

    /** Makes the paths anew. Of very many only those in sight are drawn, and where they are no more than dots, as dots. */
    build() {
        let [single, rows] = ['', ''];
        const { one, view } = { one: this.chosen, view: this.stops.view };
        const { things } = this.stops;
        this.many = things.size > MANY;
        let largest = 0;
        for (const t of things.values()) {
            if (!t.diameter || t === one) continue;
            const r = t.diameter / 2;
            if (this.many && !view.sees(t, r * view.k)) continue;
            largest = Math.max(largest, r * view.k);
            const d = this.many && r * view.k < 3
                ? `M${t.x - r} ${t.y}l${r} ${r}l${r} ${-r}l${-r} ${-r}Z`
                : `M${t.x - r} ${t.y}a${r} ${r} 0 1 0 ${t.diameter} 0a${r} ${r} 0 1 0 ${-t.diameter} 0Z`;
            if (kindOf(t.id) === 'row') rows += d; else single += d;
        }
        this.single.setAttribute('d', single);
        this.rows.setAttribute('d', rows);
        for (const p of [this.single, this.rows]) p.classList.toggle('dots', this.many && largest < 3);
    }

    /** Puts centre lines and names where the view says. */
    place() {
        const { stops, chosen: one } = this;
        const { view } = stops;
        set(this.one, one ? { cx: one.x, cy: one.y, r: one.diameter / 2, visibility: 'visible' } : { visibility: 'hidden' });
        if (this.many) this.build();
        let [d, n] = ['', 0];
        const small = view.w < 500;
        /** @type {{x:number,y:number}[]} */ const taken = [];
        for (const t of stops.things.values()) {
            const r = t.diameter / 2 * view.k;
            if (r <= 3 || !view.sees(t, r + 20)) continue;
            const [x, y] = [view.sx(t.x), view.sy(t.y)];
            d += `M${x - r - 4} ${y}H${x + r + 4}M${x} ${y - r - 4}V${y + r + 4}`;
            if (n >= 80) continue;
            const says = t.id.slice(t.id.indexOf(':') + 1);
            const at = { x: x + r * 0.75 + 3, y: y - r * 0.75 - 3 };
            const apart = small ? 22 : 12;
            if (taken.some(l => Math.abs(l.x - at.x) < apart + 7 * says.length && Math.abs(l.y - at.y) < 14)) continue;
            taken.push(at);
            const label = this.labels[n] ??= make('text', {}, this.crosses);
            set(label, at);
            if (label.textContent !== says) label.textContent = says;
            n++;
        }
        for (const label of this.labels.splice(n)) label.remove();
        this.lines.setAttribute('d', d);
    }
}
