// @ts-check
// Dimension lines, a bar of round length, the grid: what tells how large things are. Narrow lines, filled arrowheads of 1 : 3 as in ISO 129-1.
import { make, View } from './view.js';

/** @typedef {{x0:number,y0:number,x1:number,y1:number,text:string,kind:string}} Size kind: over, x, y, web, measured */

/** Where a dimension line stands, px; from and to are the two measured places. @param {View} view @param {number[]} box @param {Size} s */
export function lineOf(view, box, s) {
    const [ax, ay, bx, by] = [view.sx(s.x0), view.sy(s.y0), view.sx(s.x1), view.sy(s.y1)];
    const room = view.w < 500 ? 0.75 : 1;
    const clampY = (/** @type {number} */ y) => Math.min(view.h - 44, Math.max(26, y));
    const clampX = (/** @type {number} */ x) => Math.min(view.w - 20, Math.max(26, x));
    if (s.kind === 'over') return s.y0 === s.y1 ? { ax, ay, bx, by, lx0: ax, lx1: bx, ly0: clampY(ay + 52 * room), ly1: clampY(ay + 52 * room) } : { ax, ay, bx, by, lx0: clampX(ax + 46 * room), lx1: clampX(ax + 46 * room), ly0: ay, ly1: by };
    if (s.kind === 'x') { const y = clampY(view.sy(box[3]) - 34 * room); return { ax, ay, bx, by, lx0: ax, lx1: bx, ly0: y, ly1: y }; }
    if (s.kind === 'y') { const x = clampX(view.sx(box[0]) - 40 * room); return { ax, ay, bx, by, lx0: x, lx1: x, ly0: ay, ly1: by }; }
    return { ax, ay, bx, by, lx0: ax, lx1: bx, ly0: ay, ly1: by };
}

/** Draws dimension lines. @param {SVGGElement} g @param {View} view @param {number[]} box @param {Size[]} list */
export function drawSizes(g, view, box, list) {
    g.replaceChildren();
    for (const s of list) {
        const l = lineOf(view, box, s);
        const [dx, dy] = [l.lx1 - l.lx0, l.ly1 - l.ly0];
        const long = Math.hypot(dx, dy);
        if (long < 0.5 || !Number.isFinite(long)) continue;
        const [ux, uy] = [dx / long, dy / long];
        // with no room between them the arrows stand outside and point inward
        const outside = long < 26;
        const lead = outside ? 18 : 0;
        const out = make('g', { class: 'size ' + s.kind }, g);
        const extend = (/** @type {number} */ x, /** @type {number} */ y, /** @type {number} */ tx, /** @type {number} */ ty) => {
            const far = Math.hypot(tx - x, ty - y);
            return far < 3 ? '' : `M${x + (tx - x) * Math.min(1, 6 / far)} ${y + (ty - y) * Math.min(1, 6 / far)}L${tx + (tx - x) / far * 6} ${ty + (ty - y) / far * 6}`;
        };
        make('path', { d: extend(l.ax, l.ay, l.lx0, l.ly0) + extend(l.bx, l.by, l.lx1, l.ly1) + `M${l.lx0 - ux * lead} ${l.ly0 - uy * lead}L${l.lx1 + ux * lead} ${l.ly1 + uy * lead}` }, out);
        const head = (/** @type {number} */ x, /** @type {number} */ y, /** @type {number} */ way) => `M${x} ${y}l${way * ux * 10 - uy * 3.4} ${way * uy * 10 + ux * 3.4}l${uy * 6.8} ${-ux * 6.8}Z`;
        make('path', { class: 'arrow', d: head(l.lx0, l.ly0, outside ? -1 : 1) + head(l.lx1, l.ly1, outside ? 1 : -1) }, out);
        // read from below or from the right
        let turn = Math.atan2(dy, dx) * 180 / Math.PI;
        if (turn > 89.9) turn -= 180;
        if (turn <= -90.1) turn += 180;
        const [mx, my] = outside ? [l.lx1 + ux * (lead + 6), l.ly1 + uy * (lead + 6)] : [(l.lx0 + l.lx1) / 2, (l.ly0 + l.ly1) / 2];
        const [nx, ny] = [Math.sin(turn * Math.PI / 180), -Math.cos(turn * Math.PI / 180)];
        make('text', { transform: `translate(${mx + nx * 6} ${my + ny * 6}) rotate(${turn})`, 'text-anchor': outside ? (Math.cos(turn * Math.PI / 180) * ux + Math.sin(turn * Math.PI / 180) * uy >= 0 ? 'start' : 'end') : 'middle' }, out).textContent = s.text;
    }
}

/** A bar of round length. @param {SVGGElement} g @param {View} view @param {number} unitMm */
export function drawBar(g, view, unitMm) {
    const most = Math.min(160, view.w / 3) / view.k / unitMm;
    const ten = 10 ** Math.floor(Math.log10(most));
    const long = [5, 2, 1].map(f => f * ten).find(v => v <= most) ?? ten;
    const px = long * unitMm * view.k;
    g.replaceChildren();
    make('path', { d: `M14 ${view.h - 22}v8h${px}v-8M${14 + px / 2} ${view.h - 14}v-5` }, g);
    make('text', { x: 20 + px, y: view.h - 12 }, g).textContent = `${+long.toPrecision(3)} ${unitMm === 1 ? 'mm' : 'in'}`;
}

/** Grid lines in sight, plan's axes; none when they would stand closer than 7 px. @param {View} view @param {number} step @param {{x:number,y:number}} from */
export function gridOf(view, step, from) {
    if (!(step > 0) || step * view.k < 7) return '';
    const [x0, x1, y0, y1] = [view.x - view.w / 2 / view.k, view.x + view.w / 2 / view.k, view.y - view.h / 2 / view.k, view.y + view.h / 2 / view.k];
    let d = '';
    for (let i = Math.ceil((x0 - from.x) / step); from.x + i * step <= x1; i++) d += `M${from.x + i * step} ${y0}V${y1}`;
    for (let i = Math.ceil((y0 - from.y) / step); from.y + i * step <= y1; i++) d += `M${x0} ${from.y + i * step}H${x1}`;
    return d;
}
