// @ts-check
// What a place holds on to while it is dragged. Pure; sizes of drills and steps are handed over by the desk.

/**
 * @typedef {{x:number,y:number}} Place
 * @typedef {{x0:number,y0:number,x1:number,y1:number}} Stretch
 * @typedef {{step:number,grid:number,from:Place,line:boolean,spacing:boolean}} Holds what is ticked: step and grid in mm or 0
 * @typedef {{places:Place[],holes:Place[],lines:Stretch[]}} Near what there is to hold on to, the dragged thing left out
 * @typedef {{x:number,y:number,exact:boolean,guides:Stretch[]}} Held exact: by something else than the step
 */

/** A place on the nearest whole step. @param {number} v @param {number} step */
export function nearest(v, step) {
    return step > 0 ? Math.round(v / step) * step : v;
}

/** The drill nearest to a diameter; null when there is none. @template {{mm:number}} D @param {number} mm @param {D[]} drills @returns {D|null} */
export function nearestDrill(mm, drills) {
    return drills.reduce((best, d) => best && Math.abs(best.mm - mm) <= Math.abs(d.mm - mm) ? best : d, /** @type {D|null} */ (null));
}

/** Where a dragged place is put. @param {Place} p @param {number} reach how near counts, mm @param {Holds} holds @param {Near} near @returns {Held} */
export function hold(p, reach, holds, near) {
    const even = holds.spacing ? evenly(p, reach, near.holes) : null;
    if (even) return even;
    let [x, y] = [p.x, p.y];
    /** @type {Stretch[]} */ const guides = [];
    let [heldX, heldY] = [false, false];
    if (holds.line) {
        const onX = closest(p, reach, near.places, 'x', 'y');
        const onY = closest(p, reach, near.places, 'y', 'x');
        if (onX) [x, heldX] = [onX.x, true];
        if (onY) [y, heldY] = [onY.y, true];
        for (const l of near.lines) {
            if (heldX && heldY) break;
            const on = onLine({ x, y }, reach, l, heldX, heldY);
            if (!on) continue;
            [x, y, heldX, heldY] = [on.x, on.y, true, true];
            guides.push({ ...l });
        }
        if (onX && x === onX.x) guides.push({ x0: x, y0: onX.y, x1: x, y1: y });
        if (onY && y === onY.y) guides.push({ x0: onY.x, y0: y, x1: x, y1: y });
    }
    const exact = heldX || heldY || holds.grid > 0;
    const put = (/** @type {number} */ v, /** @type {number} */ from) => holds.grid > 0 ? from + nearest(v - from, holds.grid) : nearest(v, holds.step);
    return { x: heldX ? x : put(x, holds.from.x), y: heldY ? y : put(y, holds.from.y), exact, guides };
}

/** The place whose one coordinate is nearest, then the one least far away. @param {Place} p @param {number} reach @param {Place[]} places @param {'x'|'y'} along @param {'x'|'y'} other */
function closest(p, reach, places, along, other) {
    /** @type {Place|null} */ let best = null;
    let [off, far] = [reach, Infinity];
    for (const o of places) {
        const d = Math.abs(o[along] - p[along]);
        const f = Math.abs(o[other] - p[other]);
        if (d < off - 1e-9 || (d <= off + 1e-9 && d <= reach && f < far)) [best, off, far] = [o, Math.min(d, off), f];
    }
    return best;
}

/** The place on a line, keeping a coordinate already held. @param {Place} p @param {number} reach @param {Stretch} l @param {boolean} keepX @param {boolean} keepY @returns {Place|null} */
function onLine(p, reach, l, keepX, keepY) {
    const [dx, dy] = [l.x1 - l.x0, l.y1 - l.y0];
    const long = dx * dx + dy * dy;
    if (!long) return null;
    if (keepX || keepY) {
        if (Math.abs(keepX ? dx : dy) < 1e-9) return null;
        const t = keepX ? (p.x - l.x0) / dx : (p.y - l.y0) / dy;
        const q = { x: keepX ? p.x : l.x0 + t * dx, y: keepY ? p.y : l.y0 + t * dy };
        return Math.hypot(q.x - p.x, q.y - p.y) <= reach ? q : null;
    }
    const t = ((p.x - l.x0) * dx + (p.y - l.y0) * dy) / long;
    const q = { x: l.x0 + t * dx, y: l.y0 + t * dy };
    return Math.hypot(q.x - p.x, q.y - p.y) <= reach ? q : null;
}

/** Midway between two neighbours, or as far from one as it is from the next. @param {Place} p @param {number} reach @param {Place[]} holes @returns {Held|null} */
function evenly(p, reach, holes) {
    const about = holes.map(h => ({ h, d: Math.hypot(h.x - p.x, h.y - p.y) })).sort((a, b) => a.d - b.d).slice(0, 8).map(o => o.h);
    /** @type {Held|null} */ let best = null;
    let off = reach;
    for (const a of about) {
        for (const b of about) {
            if (a === b) continue;
            const between = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
            const after = { x: 2 * a.x - b.x, y: 2 * a.y - b.y };
            for (const [q, from, to] of /** @type {[Place,Place,Place][]} */ ([[between, a, b], [after, b, after]])) {
                const d = Math.hypot(q.x - p.x, q.y - p.y);
                if (d < off) [best, off] = [{ x: q.x, y: q.y, exact: true, guides: [{ x0: from.x, y0: from.y, x1: to.x, y1: to.y }] }, d];
            }
        }
    }
    return best;
}
