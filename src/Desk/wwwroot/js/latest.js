// @ts-check

/** Asks one question at a time; while one is out only the latest is kept. @template A,B @param {(a:A)=>Promise<B>} ask @param {(b:B)=>void} answer */
export function latest(ask, answer) {
    /** @type {A|undefined} */ let waiting;
    /** @type {Promise<void>|undefined} */ let running;
    const run = async () => {
        while (waiting !== undefined) {
            const a = waiting;
            waiting = undefined;
            // under a steady hand something always waits: every answer is shown, or the drawing would stand still meanwhile
            answer(await ask(a));
        }
    };
    return {
        /** @param {A} a */
        put(a) { waiting = a; running ??= run().finally(() => { running = undefined; }); },
        /** Drops what waits. */
        drop() { waiting = undefined; },
        /** Waits until nothing is out. */
        async rest() { while (running) await running; },
    };
}
