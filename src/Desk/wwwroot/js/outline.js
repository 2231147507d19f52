// @ts-check
// The outline as the screen draws it: path data, and what moves with a point of it. Pure.

/**
 * @typedef {{kind:string,x0:number,y0:number,x:number,y:number,rx:number,ry:number,turn:number,large:boolean,sweep:boolean,x1:number,y1:number,x2:number,y2:number}} Segment
 * @typedef {{x:number,y:number}} Place
 */

/** Path data of one segment after its start. @param {Segment} s */
export function pieceOf(s) {
    return s.kind === 'C' ? `C${s.x1} ${s.y1} ${s.x2} ${s.y2} ${s.x} ${s.y}`
        : s.kind === 'A' ? `A${s.rx} ${s.ry} ${s.turn} ${+s.large} ${+s.sweep} ${s.x} ${s.y}`
            : `L${s.x} ${s.y}`;
}

/** Path data of an outline, plan's axes. @param {Segment[]} outline */
export function pathOf(outline) {
    return outline.map((s, i) => (i ? '' : `M${s.x0} ${s.y0}`) + pieceOf(s)).join('') + 'Z';
}

/** Moves what an id names, as far as the screen can know at once; says whether the outline changed. @param {Segment[]} outline @param {string} id @param {Place} to */
export function moveIn(outline, id, to) {
    const [, kind, number, end] = /^(\w+):(\d+)(?:\.([12]))?$/.exec(id) ?? [];
    const s = outline[+number];
    if (!s) return false;
    if (kind === 'point') {
        Object.assign(s, { x0: to.x, y0: to.y });
        Object.assign(outline.at(+number - 1) ?? s, { x: to.x, y: to.y });
    } else if (kind === 'control' && s.kind === 'C') {
        Object.assign(s, end === '1' ? { x1: to.x, y1: to.y } : { x2: to.x, y2: to.y });
    } else if (kind === 'bow' && s.kind === 'A') {
        bowTo(s, to);
    } else {
        return false;
    }
    return true;
}

/** Bends a circular arc so that its middle comes nearest to a place; its ends stay. @param {Segment} s @param {Place} to */
export function bowTo(s, to) {
    const [cx, cy] = [s.x - s.x0, s.y - s.y0];
    const chord = Math.hypot(cx, cy);
    if (!chord) return;
    const rise = ((to.y - (s.y0 + s.y) / 2) * cx - (to.x - (s.x0 + s.x) / 2) * cy) / chord;
    const h = Math.max(Math.abs(rise), chord * 1e-4);
    const r = (chord * chord / 4 + h * h) / (2 * h);
    // a middle to the left of the chord is reached turning clockwise
    Object.assign(s, { rx: r, ry: r, turn: 0, large: h > chord / 2, sweep: rise < 0 });
}

/** Middle of a circular arc, on the arc. @param {Segment} s @returns {Place} */
export function bowOf(s) {
    const [cx, cy] = [s.x - s.x0, s.y - s.y0];
    const half = Math.hypot(cx, cy) / 2 || 1e-9;
    const down = Math.sqrt(Math.max(0, s.rx * s.rx - half * half));
    const rise = (s.large ? s.rx + down : s.rx - down) * (s.sweep ? -1 : 1);
    return { x: (s.x0 + s.x) / 2 - rise * cy / (2 * half), y: (s.y0 + s.y) / 2 + rise * cx / (2 * half) };
}

/** A place about the middle of a segment, to name and to choose it by. @param {Segment} s @returns {Place} */
export function middleOf(s) {
    if (s.kind === 'C') return { x: (s.x0 + 3 * s.x1 + 3 * s.x2 + s.x) / 8, y: (s.y0 + 3 * s.y1 + 3 * s.y2 + s.y) / 8 };
    if (s.kind === 'A' && Math.abs(s.rx - s.ry) < 1e-6 * s.rx) return bowOf(s);
    return { x: (s.x0 + s.x) / 2, y: (s.y0 + s.y) / 2 };
}
