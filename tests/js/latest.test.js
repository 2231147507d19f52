import assert from 'node:assert/strict';
import { test } from 'node:test';
import { latest } from '../../src/Desk/wwwroot/js/latest.js';

test('one question at a time, the last one always answered, every answer shown in its turn', async () => {
    const [asked, shown] = [[], []];
    let out = 0;
    const q = latest(async a => {
        assert.equal(++out, 1, 'two questions out at once');
        asked.push(a);
        await new Promise(r => { setTimeout(r, 2); });
        out--;
        return a * 10;
    }, b => shown.push(b));
    for (let i = 1; i <= 50; i++) q.put(i);
    await q.rest();
    assert.deepEqual(asked, [1, 50]);
    assert.deepEqual(shown, [10, 500]);
});
