import assert from 'node:assert/strict';
import { test } from 'node:test';
import { hold, nearest, nearestDrill } from '../../src/Desk/wwwroot/js/snaps.js';

const none = { step: 0, grid: 0, from: { x: 0, y: 0 }, line: false, spacing: false };
const nothing = { places: [], holes: [], lines: [] };

test('the step alone is no exact hold: the desk rounds it itself', () => {
    assert.deepEqual(hold({ x: 3.2, y: 4.8 }, 1, { ...none, step: 0.5 }, nothing), { x: 3, y: 5, exact: false, guides: [] });
    assert.deepEqual(hold({ x: 3.2, y: 4.8 }, 1, none, nothing), { x: 3.2, y: 4.8, exact: false, guides: [] });
});

test('the grid is counted from the datum', () => {
    const h = hold({ x: 13, y: 9 }, 1, { ...none, grid: 10, from: { x: 2, y: 3 }, step: 0.5 }, nothing);
    assert.deepEqual([h.x, h.y, h.exact], [12, 13, true]);
});

test('in line with another place, the other coordinate to the step, with a guide between them', () => {
    const h = hold({ x: 10.3, y: 4.8 }, 0.5, { ...none, line: true, step: 0.5 }, { ...nothing, places: [{ x: 10.123, y: 40 }, { x: 10.123, y: 20 }] });
    assert.deepEqual([h.x, h.y, h.exact], [10.123, 5, true]);
    assert.deepEqual(h.guides, [{ x0: 10.123, y0: 20, x1: 10.123, y1: 4.8 }]);
});

test('nothing in reach, nothing held', () => {
    assert.deepEqual(hold({ x: 10.8, y: 4 }, 0.5, { ...none, line: true }, { ...nothing, places: [{ x: 10, y: 40 }] }).guides, []);
});

test('on a slanted line, and where it meets a coordinate already held', () => {
    const lines = [{ x0: 0, y0: 0, x1: 30, y1: 40 }];
    const on = hold({ x: 3.08, y: 3.94 }, 0.5, { ...none, line: true }, { ...nothing, lines });
    assert.ok(Math.abs(on.x - 3) < 1e-9 && Math.abs(on.y - 4) < 1e-9);
    const met = hold({ x: 6.1, y: 7.9 }, 0.5, { ...none, line: true }, { ...nothing, lines, places: [{ x: 6, y: 100 }] });
    assert.ok(Math.abs(met.x - 6) < 1e-9 && Math.abs(met.y - 8) < 1e-9);
});

test('equal spacing: midway between two, or one pitch on', () => {
    const holes = [{ x: 0, y: 0 }, { x: 20, y: 2 }];
    const holds = { ...none, spacing: true };
    const between = hold({ x: 10.4, y: 0.8 }, 1, holds, { ...nothing, holes });
    assert.deepEqual([between.x, between.y, between.exact], [10, 1, true]);
    const on = hold({ x: 40.3, y: 3.8 }, 1, holds, { ...nothing, holes });
    assert.deepEqual([on.x, on.y], [40, 4]);
});

test('the nearest of the drills owned', () => {
    const drills = [{ mm: 3, name: '3' }, { mm: 3.2639, name: '#30' }, { mm: 6, name: '6' }];
    assert.equal(nearestDrill(3.2, drills)?.name, '#30');
    assert.equal(nearestDrill(50, drills)?.name, '6');
    assert.equal(nearestDrill(5, []), null);
});

test('a step of 1/64 inch comes out whole', () => assert.equal(nearest(10.01, 25.4 / 64) / (25.4 / 64), 25));
