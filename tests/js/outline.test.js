import assert from 'node:assert/strict';
import { test } from 'node:test';
import { bowOf, bowTo, middleOf, moveIn, pathOf } from '../../src/Desk/wwwroot/js/outline.js';

const line = (x0, y0, x, y) => ({ kind: 'L', x0, y0, x, y, rx: 0, ry: 0, turn: 0, large: false, sweep: false, x1: 0, y1: 0, x2: 0, y2: 0 });
const arc = (x0, y0, x, y, r, large, sweep) => ({ ...line(x0, y0, x, y), kind: 'A', rx: r, ry: r, large, sweep });

test('a point takes the end of the segment before it along, round the close too', () => {
    const outline = [line(0, 0, 10, 0), line(10, 0, 10, 5), line(10, 5, 0, 0)];
    assert.ok(moveIn(outline, 'point:0', { x: -1, y: 2 }));
    assert.equal(pathOf(outline), 'M-1 2L10 0L10 5L-1 2Z');
    assert.ok(!moveIn(outline, 'control:0.1', { x: 1, y: 1 }), 'a straight line has no control points');
    assert.ok(!moveIn(outline, 'hole:A', { x: 1, y: 1 }));
    assert.ok(!moveIn(outline, 'point:9', { x: 1, y: 1 }));
});

test('an arc bent to a place goes through it, on either side and beyond the half circle', () => {
    for (const [x, y] of [[5, 2], [5, -3], [5, 8], [5, -11]]) {
        const s = arc(0, 0, 10, 0, 7, false, true);
        bowTo(s, { x, y });
        const m = bowOf(s);
        assert.ok(Math.hypot(m.x - x, m.y - y) < 1e-9, `${x} ${y} became ${m.x} ${m.y}`);
        // Euclid III.31: the angle over a diameter is square, so a rise of half the chord is a half circle
        assert.equal(s.large, Math.abs(y) > 5);
    }
});

test('the middle of a quarter circle, counter-clockwise about the origin', () => {
    const m = bowOf(arc(10, 0, 0, 10, 10, false, true));
    assert.ok(Math.abs(m.x - 10 * Math.SQRT1_2) < 1e-9 && Math.abs(m.y - 10 * Math.SQRT1_2) < 1e-9);
});

test('the middle of a curve is the curve at one half', () => {
    assert.deepEqual(middleOf({ ...line(0, 0, 8, 0), kind: 'C', x1: 0, y1: 8, x2: 8, y2: 8 }), { x: 4, y: 6 });
});
