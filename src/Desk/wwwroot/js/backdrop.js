// @ts-check
// A scanned drawing laid pale under the plan.
import { make, set } from './view.js';

/** @typedef {{address:string,x:number,y:number,mmPerPixel:number,wide:number,high:number,turn:number,strength:number,shown:boolean}} Placed x, y: lower left corner, mm; turn in degrees counter-clockwise about it */

export class Backdrop {
    /** @param {SVGGElement} g @param {SVGGElement} world */
    constructor(g, world) {
        world.prepend(g);
        this.g = g;
        /** @type {SVGImageElement|null} */ this.image = null;
    }

    /** @param {Placed|null} placed */
    show(placed) {
        if (!placed?.shown) {
            this.g.replaceChildren();
            this.image = null;
            return;
        }
        this.image ??= make('image', { preserveAspectRatio: 'none' }, this.g);
        const [w, h] = [placed.wide * placed.mmPerPixel, placed.high * placed.mmPerPixel];
        // the plan's y runs up, a picture's down
        set(/** @type {SVGImageElement} */ (this.image), { width: w, height: h, opacity: placed.strength, transform: `translate(${placed.x} ${placed.y}) rotate(${placed.turn}) scale(1 -1) translate(0 ${-h})` });
        if (this.image?.getAttribute('href') !== placed.address) this.image?.setAttribute('href', placed.address);
    }
}
