// @ts-check
// Which part of the plan is seen, and SVG elements by their name.

const NS = 'http://www.w3.org/2000/svg';

/** @param {string} name @param {Record<string,string|number>} [attributes] @param {Element} [parent] @returns {any} */
export function make(name, attributes = {}, parent) {
    const el = document.createElementNS(NS, name);
    set(el, attributes);
    parent?.append(el);
    return el;
}

/** @param {Element} el @param {Record<string,string|number>} attributes */
export function set(el, attributes) {
    for (const [k, v] of Object.entries(attributes)) el.setAttribute(k, String(v));
}

/** The window onto the plan: middle in plan's axes, px per mm, size in px. Reads the layout only when told to. */
export class View {
    /** @param {SVGSVGElement} svg */
    constructor(svg) {
        this.svg = svg;
        [this.x, this.y, this.k, this.w, this.h, this.own] = [0, 0, 1, 300, 300, false];
        /** @type {DOMRect|null} */ this.rect = null;
        this.measure();
    }

    /** Reads how large the drawing is. */
    measure() {
        this.w = this.svg.clientWidth || 300;
        this.h = this.svg.clientHeight || 300;
        this.rect = null;
    }

    /** @param {number} x */ sx(x) { return (x - this.x) * this.k + this.w / 2; }

    /** @param {number} y */ sy(y) { return this.h / 2 - (y - this.y) * this.k; }

    /** Pixels of the drawing under a pointer. @param {{clientX:number,clientY:number}} e */
    px(e) {
        this.rect ??= this.svg.getBoundingClientRect();
        return { x: e.clientX - this.rect.left, y: e.clientY - this.rect.top };
    }

    /** Place of the plan at pixels of the drawing. @param {{x:number,y:number}} p */
    plan(p) { return { x: (p.x - this.w / 2) / this.k + this.x, y: this.y - (p.y - this.h / 2) / this.k }; }

    /** Whether a place lies in sight or within some px of it. @param {{x:number,y:number}} p @param {number} more */
    sees(p, more) {
        return Math.abs(p.x - this.x) * this.k < this.w / 2 + more && Math.abs(p.y - this.y) * this.k < this.h / 2 + more;
    }

    /** The whole piece with room for its dimensions. @param {number[]} box */
    whole([x0, y0, x1, y1]) {
        const side = Math.min(100, this.w * 0.13);
        const up = this.w < 500 ? 100 : 150;
        [this.x, this.y, this.own] = [(x0 + x1) / 2, (y0 + y1) / 2, false];
        this.k = Math.max(0.01, Math.min((this.w - 2 * side) / (x1 - x0 || 1), (this.h - up) / (y1 - y0 || 1)));
    }

    /** Closer or farther about a spot, px. @param {number} factor @param {{x:number,y:number}} at */
    zoom(factor, at) {
        const here = this.plan(at);
        this.k = Math.min(400, Math.max(0.02, this.k * factor));
        this.x = here.x - (at.x - this.w / 2) / this.k;
        this.y = here.y + (at.y - this.h / 2) / this.k;
        this.own = true;
    }

    /** Along by px. @param {number} dx @param {number} dy */
    pan(dx, dy) {
        this.x -= dx / this.k;
        this.y += dy / this.k;
        this.own = true;
    }

    /** For the group that is drawn in plan's axes. */
    get matrix() {
        return `matrix(${this.k} 0 0 ${-this.k} ${this.w / 2 - this.x * this.k} ${this.h / 2 + this.y * this.k})`;
    }
}
