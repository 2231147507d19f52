// @ts-check
// Pointer, touch and keyboard at the drawing, and the words beside it that act on it.
import { kindOf } from './stops.js';

/** @type {Record<string,[number,number]>} */
const WAYS = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] };

/** Listens until the returned function is called. @param {import('./drawing.js').Drawing} d @returns {() => void} */
export function pointing(d) {
    const { svg, view, stops, net } = d;
    const stop = new AbortController();
    const on = (/** @type {EventTarget} */ target, /** @type {string} */ kind, /** @type {(e:any)=>void} */ act, passive = true) => target.addEventListener(kind, act, { signal: stop.signal, passive });
    /** @type {Map<number,{x:number,y:number}>} */ const fingers = new Map();
    /** @type {{x:number,y:number}|null} */ let pressed = null;
    let [keyMove, panned] = [false, false];

    const narrow = matchMedia('(max-width: 820px)');
    const isRounded = (/** @type {{altKey:boolean}} */ e) => !e.altKey;
    const reach = (/** @type {{pointerType?:string}} */ e) => e.pointerType === 'touch' || e.pointerType === undefined ? 24 : 12;
    const middle = () => ({ x: view.w / 2, y: view.h / 2 });

    on(svg, 'pointerdown', e => {
        if (e.button > 0) return;
        view.rect = null;
        const px = view.px(e);
        fingers.set(e.pointerId, { x: e.clientX, y: e.clientY });
        svg.setPointerCapture(e.pointerId);
        panned = false;
        pressed = fingers.size === 1 ? px : null;
        if (fingers.size > 1 || e.target.closest?.('[data-findings]')) return;
        e.preventDefault();
        const t = stops.hit(px, reach(e));
        if (d.picks.on) return;
        if (!t) { if (!svg.contains(document.activeElement)) svg.focus({ preventScroll: true }); return; }
        if (t.id !== stops.chosen) d.choose(t.id, true);
        d.now();
        stops.focus(t.id);
        if (t.fixed) return;
        const p = view.plan(px);
        d.grip = { thing: t, dx: t.x - p.x, dy: t.y - p.y };
    }, false);

    on(svg, 'pointermove', e => {
        const was = fingers.get(e.pointerId);
        if (!was) {
            if (d.picks.on) d.picks.over(view.plan(view.px(e)), isRounded(e));
            return;
        }
        const px = view.px(e);
        if (d.grip) {
            if (!d.moving && pressed && Math.hypot(px.x - pressed.x, px.y - pressed.y) < 3) return;
            d.begin();
            const p = view.plan(px);
            d.move(d.grip.thing, { x: p.x + d.grip.dx, y: p.y + d.grip.dy }, isRounded(e), true);
            return;
        }
        const other = [...fingers].find(([id]) => id !== e.pointerId)?.[1];
        fingers.set(e.pointerId, { x: e.clientX, y: e.clientY });
        if (other) {
            const span = Math.hypot(was.x - other.x, was.y - other.y) || 1;
            const mid = view.px({ clientX: (e.clientX + other.x) / 2, clientY: (e.clientY + other.y) / 2 });
            view.zoom(Math.hypot(e.clientX - other.x, e.clientY - other.y) / span, mid);
            view.pan((e.clientX - was.x) / 2, (e.clientY - was.y) / 2);
            panned = true;
        } else if (panned || !pressed || Math.hypot(px.x - pressed.x, px.y - pressed.y) >= 4) {
            view.pan(e.clientX - was.x, e.clientY - was.y);
            panned = true;
        } else {
            fingers.set(e.pointerId, was);
            return;
        }
        d.draw();
    });

    on(svg, 'pointerup', e => {
        if (!fingers.delete(e.pointerId) || fingers.size) return;
        const px = view.px(e);
        if (d.moving && !keyMove) { d.end('End'); return; }
        d.grip = null;
        if (panned || !pressed) return;
        if (d.picks.on) { place(px, e); return; }
        if (e.target.closest?.('[data-findings]') || stops.hit(px, reach(e))) return;
        line(view.plan(px), reach(e) / view.k);
    });

    /** Chooses the line of the outline under a place. @param {{x:number,y:number}} p @param {number} within */
    async function line(p, within) {
        const id = await net.invokeMethodAsync('ChooseLine', p.x, p.y, within);
        if (d.moving || (!id && !stops.chosen)) return;
        d.choose(id, id === '');
        d.now();
        if (id) stops.focus(id);
    }
    for (const kind of ['pointercancel', 'lostpointercapture']) {
        on(svg, kind, e => {
            if (!fingers.delete(e.pointerId)) return;
            if (d.moving && !keyMove && fingers.size === 0) d.end('End');
            d.grip = null;
        });
    }

    /** Points at a place: a thing near the spot goes first when measuring. @param {{x:number,y:number}} px @param {any} e */
    function place(px, e) {
        const t = stops.hit(px, reach(e));
        d.picks.over(view.plan(px), isRounded(e));
        d.picks.take(t && d.picks.kind === 'measure' ? { x: t.x, y: t.y } : undefined);
    }

    // a finger on a handle drags it, two fingers look closer; one finger beside them scrolls the page
    on(svg, 'touchstart', e => {
        view.rect = null;
        if (e.touches.length > 1 || d.picks.on || stops.hit(view.px(e.touches[0]), 24)) e.preventDefault();
    }, false);

    on(svg, 'wheel', e => {
        if (narrow.matches && !e.ctrlKey && !svg.contains(document.activeElement)) return;
        e.preventDefault();
        view.zoom(Math.exp(-e.deltaY * (e.deltaMode ? 0.05 : 0.0015)), view.px(e));
        d.draw();
    }, false);
    on(document, 'scroll', () => { view.rect = null; });

    on(svg, 'focusin', e => {
        const id = e.target.closest('[data-id]')?.dataset.id;
        if (id && id !== stops.chosen) { d.choose(id, true); d.now(); }
        const balloon = e.target.closest('[data-findings]');
        if (balloon) finding(balloon.dataset.findings.split(' ')[0], false);
    });
    on(svg, 'click', e => {
        const balloon = e.target.closest('[data-findings]');
        if (balloon) finding(balloon.dataset.findings.split(' ')[0], false);
    });

    on(svg, 'keydown', e => {
        if (e.ctrlKey || e.metaKey) return;
        const t = stops.things.get(e.target.closest('[data-id]')?.dataset.id ?? '');
        const balloon = e.target.closest('[data-findings]');
        const way = WAYS[e.key];
        const step = d.plan.unitMm === 1 ? (e.shiftKey ? 0.1 : 1) : d.plan.unitMm / (e.shiftKey ? 64 : 16);
        const turn = e.key === 'PageDown' ? 1 : e.key === 'PageUp' ? -1 : 0;
        if (e.key === '+' || e.key === '=') { view.zoom(1.25, middle()); d.draw(); }
        else if (e.key === '-') { view.zoom(0.8, middle()); d.draw(); }
        else if (e.key === '0') { view.whole(d.plan.box); d.draw(); }
        else if (e.target.closest('.cross') && way) d.picks.nudge(way[0] * step, way[1] * step);
        else if (d.picks.on && (e.key === 'Enter' || e.key === ' ')) d.picks.take(t ? { x: t.x, y: t.y } : undefined);
        else if (way && t && kindOf(t.id) === 'rim') { keyMove = true; d.begin(); d.rimBy(t, way[0] + way[1]); }
        else if (way && t && !t.fixed && kindOf(t.id) !== 'segment') {
            keyMove = true;
            d.begin();
            d.move(t, { x: t.x + way[0] * step, y: t.y + way[1] * step }, !e.altKey, false);
        } else if (way && !balloon) { view.pan(-way[0] * 40, way[1] * 40); d.draw(); }
        else if (turn && balloon) d.marks.next(balloon, turn);
        else if (turn && t) {
            const next = stops.next(t.id, turn, d.plan.outline.length);
            d.choose(next, true);
            inSight(next);
            d.now();
            stops.focus(next);
        } else return;
        e.preventDefault();
    }, false);

    /** Brings a thing into sight. @param {string} id */
    function inSight(id) {
        const t = stops.things.get(id);
        if (!t || view.sees(t, -20)) return;
        [view.x, view.y, view.own] = [t.x, t.y, true];
    }

    const endKeys = () => { if (keyMove) { keyMove = false; d.end('End'); } };
    on(svg, 'keyup', e => { if (WAYS[e.key]) endKeys(); });
    on(svg, 'focusout', endKeys);

    on(document, 'keydown', e => {
        if (e.key === 'Escape') {
            if (d.moving) { keyMove = false; d.end('Cancel'); } else if (d.picks.stop()) e.preventDefault();
            return;
        }
        if (!(e.ctrlKey || e.metaKey) || e.target.closest('input,select,textarea')) return;
        const key = e.key.toLowerCase();
        if (key !== 'z' && key !== 'y') return;
        e.preventDefault();
        if (!d.moving) net.invokeMethodAsync(key === 'y' || e.shiftKey ? 'Redo' : 'Undo');
    }, false);

    on(d.paper, 'click', e => {
        const b = e.target.closest('[data-view],[data-pick]');
        if (!b) return;
        if (b.dataset.pick) { d.picks.begin(b.dataset.pick); return; }
        if (b.dataset.view === 'whole') view.whole(d.plan.box);
        else view.zoom(b.dataset.view === 'closer' ? 1.5 : 1 / 1.5, middle());
        d.draw();
    });
    on(d.paper, 'change', e => { if (e.target.closest('[data-hold]')) d.draw(); });

    // a finding in the list and its balloon point at each other
    /** @param {string} number @param {boolean} fromList */
    function finding(number, fromList) {
        for (const li of document.querySelectorAll('.findings ol > li')) {
            const its = String([...li.parentElement?.children ?? []].indexOf(li) + 1) === number;
            li.classList.toggle('pointed', its);
            if (its && !fromList) li.scrollIntoView({ block: 'nearest' });
        }
        const at = d.marks.point(number);
        if (at && fromList && !view.sees(at, -30)) { [view.x, view.y, view.own] = [at.x, at.y, true]; d.draw(); }
    }
    for (const kind of ['click', 'focusin']) {
        on(document, kind, e => {
            const li = e.target.closest?.('.findings ol > li');
            if (li) finding(String([...li.parentElement.children].indexOf(li) + 1), true);
        });
    }
    return () => stop.abort();
}
