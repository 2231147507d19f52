// @ts-check
// The inside of the drawing's <svg>: shows a plan, moves at once what is dragged, and asks the desk what follows from it,
// one question at a time and always about the last place. Holds no rule of the trade: those answers come from the desk.

/**
 * @typedef {{kind:string,x0:number,y0:number,x:number,y:number,rx:number,ry:number,turn:number,large:boolean,sweep:boolean,x1:number,y1:number,x2:number,y2:number}} Segment
 * @typedef {{id:string,name:string,x:number,y:number,diameter:number}} Hole
 * @typedef {{kind:string,label:string,says:string,x:number,y:number}} Mark
 * @typedef {{refused:string,edge:string,plunge:string,grip:string,rowHoles:Hole[],marks:Mark[],sizes:{x0:number,y0:number,x1:number,y1:number,text:string}[]}} Derived
 * @typedef {{version:number,box:number[],unitMm:number,stepMm:number,outline:Segment[],holes:Hole[],derived:Derived,pale:string}} Plan
 * @typedef {{invokeMethodAsync:(name:string,...args:any[])=>Promise<any>}} Net
 * @typedef {{id:string,x:number,y:number,el:SVGGElement,radius:number}} Thing
 */

const PLAIN = ['datum', 'balance', 'percussion'];
const NS = 'http://www.w3.org/2000/svg';

/** Path data of an outline, plan's axes. @param {Segment[]} outline */
export function pathOf(outline) {
    return outline.map((s, i) => (i ? '' : `M${s.x0} ${s.y0}`) + (
        s.kind === 'C' ? `C${s.x1} ${s.y1} ${s.x2} ${s.y2} ${s.x} ${s.y}`
            : s.kind === 'A' ? `A${s.rx} ${s.ry} ${s.turn} ${+s.large} ${+s.sweep} ${s.x} ${s.y}`
                : `L${s.x} ${s.y}`)).join('') + 'Z';
}

/** A place on the nearest whole step. @param {number} v @param {number} step */
export function nearest(v, step) {
    return step > 0 ? Math.round(v / step) * step : v;
}

/** Asks one question at a time; while one is out only the latest is kept. @template A,B @param {(a:A)=>Promise<B>} ask @param {(b:B)=>void} answer */
export function latest(ask, answer) {
    /** @type {A|undefined} */ let waiting;
    /** @type {Promise<void>|undefined} */ let running;
    const run = async () => {
        while (waiting !== undefined) {
            const a = waiting;
            waiting = undefined;
            const b = await ask(a);
            if (waiting === undefined) answer(b);
        }
    };
    return {
        /** @param {A} a */
        put(a) { waiting = a; running ??= run().finally(() => { running = undefined; }); },
        /** Waits until nothing is out. */
        async rest() { while (running) await running; },
    };
}

/** @param {string} name @param {Record<string,string|number>} [attributes] @param {Element} [parent] @returns {any} */
function make(name, attributes = {}, parent) {
    const el = document.createElementNS(NS, name);
    for (const [k, v] of Object.entries(attributes)) el.setAttribute(k, String(v));
    parent?.append(el);
    return el;
}

/** @param {SVGSVGElement} svg @param {Net} net @param {Plan} first */
export function attach(svg, net, first) {
    const stop = new AbortController();
    const on = (/** @type {EventTarget} */ target, /** @type {string} */ kind, /** @type {(e:any)=>void} */ act, passive = true) => target.addEventListener(kind, act, { signal: stop.signal, passive });
    const world = make('g', { class: 'world' }, svg);
    const over = make('g', { class: 'over' }, svg);
    const layer = Object.fromEntries(['pale', 'outline', 'edge', 'plunge', 'grip'].map(c => [c, make('path', { class: c }, world)]));
    const circles = make('g', {}, world);
    const [sizes, crosses, marks] = ['sizes', 'crosses', 'marks'].map(c => make('g', { class: c, 'aria-hidden': 'true' }, over));
    const holeStops = make('g', { role: 'group', 'aria-label': 'Holes' }, over);
    const pointStops = make('g', { role: 'group', 'aria-label': 'Points of the outline' }, over);
    const bar = make('g', { class: 'bar', 'aria-hidden': 'true' }, over);

    let plan = first;
    let view = { x: 0, y: 0, k: 1, own: false };
    /** @type {Thing[]} */ let things = [];
    /** @type {string} */ let chosen = '';
    /** @type {{thing:Thing,dx:number,dy:number}|null} */ let held = null;
    /** @type {Plan|null} */ let later = null;
    /** @type {Map<number,{x:number,y:number}>} */ const fingers = new Map();
    let keyMove = false;

    const size = () => ({ w: svg.clientWidth || 300, h: svg.clientHeight || 300 });
    const sx = (/** @type {number} */ x) => (x - view.x) * view.k + size().w / 2;
    const sy = (/** @type {number} */ y) => size().h / 2 - (y - view.y) * view.k;
    const toPlan = (/** @type {{clientX:number,clientY:number}} */ e) => {
        const r = svg.getBoundingClientRect();
        return { x: (e.clientX - r.left - size().w / 2) / view.k + view.x, y: view.y - (e.clientY - r.top - size().h / 2) / view.k };
    };
    const sizeText = (/** @type {number} */ mm) => plan.unitMm === 1 ? mm.toFixed(2) : (mm / plan.unitMm).toFixed(3);

    const questions = latest(
        (/** @type {{id:string,x:number,y:number,rounded:boolean}} */ q) => net.invokeMethodAsync('Drag', q.id, q.x, q.y, q.rounded),
        (/** @type {Derived} */ d) => { plan.derived = d; follow(); });

    function whole() {
        const { w, h } = size();
        const [x0, y0, x1, y1] = plan.box;
        const side = Math.min(90, w * 0.13);
        view = { x: (x0 + x1) / 2, y: (y0 + y1) / 2, k: Math.max(0.01, Math.min((w - 2 * side) / (x1 - x0 || 1), (h - 150) / (y1 - y0 || 1))), own: false };
        place();
    }

    /** @param {number} factor @param {number} px @param {number} py */
    function zoom(factor, px, py) {
        const { w, h } = size();
        const k = Math.min(400, Math.max(0.02, view.k * factor));
        const [x, y] = [(px - w / 2) / view.k + view.x, view.y - (py - h / 2) / view.k];
        view = { x: x - (px - w / 2) / k, y: y + (py - h / 2) / k, k, own: true };
        place();
    }

    /** Makes the whole drawing anew. @param {Plan} next */
    function build(next) {
        const focused = /** @type {any} */ (document.activeElement)?.dataset?.id;
        plan = next;
        layer.pale.setAttribute('d', plan.pale);
        holeStops.replaceChildren();
        pointStops.replaceChildren();
        things = [
            ...[...plan.holes, ...plan.derived.rowHoles].sort((a, b) => b.diameter - a.diameter).map(h => stopAt(holeStops, h.id, h.x, h.y, h.diameter / 2)),
            ...plan.outline.map((s, i) => stopAt(pointStops, `point:${i}`, s.x0, s.y0, 0)),
        ];
        for (const group of [holeStops, pointStops]) {
            const stops = [...group.children];
            (stops.find(e => e.dataset.id === chosen) ?? stops[0])?.setAttribute('tabindex', '0');
        }
        outline();
        follow();
        choose(chosen, false);
        if (view.own) place(); else whole();
        if (focused) things.find(t => t.id === focused)?.el.focus({ preventScroll: true });
    }

    /** @param {SVGGElement} group @param {string} id @param {number} x @param {number} y @param {number} radius @returns {Thing} */
    function stopAt(group, id, x, y, radius) {
        const el = make('g', { class: 'stop ' + id.slice(0, id.indexOf(':')), role: 'button', tabindex: '-1', 'data-id': id }, group);
        make('circle', { class: 'reach', r: 11 }, el);
        if (!radius) make('rect', { class: 'dot', x: -4, y: -4, width: 8, height: 8 }, el);
        return { id, x, y, el, radius };
    }

    const name = (/** @type {Thing} */ t) => t.id.startsWith('point:') ? `Point ${+t.id.slice(6) + 1}` : `Hole ${t.id.slice(t.id.indexOf(':') + 1)}`;

    function outline() {
        const d = pathOf(plan.outline);
        layer.outline.setAttribute('d', d);
    }

    /** What follows from outline and holes. */
    function follow() {
        const d = plan.derived;
        for (const part of /** @type {const} */ (['edge', 'plunge', 'grip'])) layer[part].setAttribute('d', d[part]);
        for (const h of d.rowHoles) {
            const t = things.find(o => o.id === h.id);
            if (t) Object.assign(t, { x: h.x, y: h.y, radius: h.diameter / 2 });
        }
        svg.classList.toggle('refused', d.refused !== '');
        place();
    }

    /** Puts everything where the view says. */
    function place() {
        const { w, h } = size();
        world.setAttribute('transform', `matrix(${view.k} 0 0 ${-view.k} ${w / 2 - view.x * view.k} ${h / 2 + view.y * view.k})`);
        /** @type {{x:number,y:number}[]} */ const labels = [];
        circles.replaceChildren();
        crosses.replaceChildren();
        for (const t of things) {
            const [x, y, r] = [sx(t.x), sy(t.y), t.radius * view.k];
            t.el.setAttribute('transform', `translate(${x} ${y})`);
            t.el.setAttribute('aria-label', `${name(t)}, x ${sizeText(t.x)}, y ${sizeText(t.y)}`);
            if (!t.radius) continue;
            t.el.firstElementChild?.setAttribute('r', String(Math.max(r, 9)));
            make('circle', { class: t.id === chosen ? 'hole chosen' : 'hole', cx: t.x, cy: t.y, r: t.radius }, circles);
            if (r > 3) make('path', { d: `M${x - r - 4} ${y}H${x + r + 4}M${x} ${y - r - 4}V${y + r + 4}` }, crosses);
            const label = t.id.slice(t.id.indexOf(':') + 1);
            const at = { x: x + r * 0.75 + 3, y: y - r * 0.75 - 3 };
            if (r > 3 && labels.length < 80 && labels.every(l => Math.abs(l.x - at.x) > 12 + 7 * label.length || Math.abs(l.y - at.y) > 14)) {
                labels.push(at);
                make('text', at, crosses).textContent = label;
            }
        }
        drawMarks();
        drawSizes();
        drawBar(w, h);
    }

    function drawMarks() {
        marks.replaceChildren();
        // where a finding's number may not stand: on a hole, a mark, a dimension
        /** @type {{x:number,y:number,r:number}[]} */ const taken = [
            ...things.filter(t => t.radius).map(t => ({ x: sx(t.x), y: sy(t.y), r: t.radius * view.k + 13 })),
            ...plan.derived.sizes.map(s => s.y0 === s.y1 ? { x: (sx(s.x0) + sx(s.x1)) / 2, y: sy(s.y0) + 46, r: 40 } : { x: sx(s.x0) + 40, y: (sy(s.y0) + sy(s.y1)) / 2, r: 40 }),
            ...plan.derived.marks.filter(m => PLAIN.includes(m.kind)).map(m => ({ x: sx(m.x), y: sy(m.y), r: 24 })),
        ];
        /** @type {Map<string,Mark[]>} */ const spots = new Map();
        for (const m of plan.derived.marks) {
            if (PLAIN.includes(m.kind)) {
                const g = make('g', { class: 'mark ' + m.kind, transform: `translate(${sx(m.x)} ${sy(m.y)})` }, marks);
                make('title', {}, g).textContent = m.says;
                if (m.kind === 'datum') make('path', { d: 'M0 0L-7 12H7Z' }, g);
                else make('circle', { r: 8 }, g);
                if (m.kind === 'balance') make('path', { d: 'M0 0V-8A8 8 0 0 1 8 0ZM0 0V8A8 8 0 0 1 -8 0Z' }, g);
                if (m.kind === 'percussion') make('path', { d: 'M-13 0H13M0 -13V13' }, g);
                make('text', m.kind === 'datum' ? { y: 26, 'text-anchor': 'middle' } : { x: 12, y: 20 }, g).textContent = m.label || m.kind;
            } else {
                const key = `${m.x.toFixed(2)} ${m.y.toFixed(2)}`;
                spots.set(key, [...spots.get(key) ?? [], m]);
            }
        }
        const grave = ['note', 'warning', 'error'];
        for (const group of [...spots.values()].slice(0, 60)) {
            const [x, y] = [sx(group[0].x), sy(group[0].y)];
            const kind = grave[Math.max(...group.map(m => grave.indexOf(m.kind)))];
            const ways = [34, 58, 86, 120].flatMap(r => [[0.6, -0.8], [-0.6, -0.8], [0.6, 0.8], [-0.6, 0.8], [0, -1], [0, 1]].map(([a, b]) => [a * r, b * r]));
            const [dx, dy] = ways.find(([a, b]) => taken.every(t => Math.hypot(t.x - x - a, t.y - y - b) > t.r)) ?? ways[0];
            taken.push({ x: x + dx, y: y + dy, r: 27 });
            const g = make('g', { class: 'mark ' + kind, transform: `translate(${x} ${y})` }, marks);
            make('title', {}, g).textContent = group.map(m => `${m.label}. ${m.says}`).join('\n');
            make('path', { class: 'leader', d: `M0 0L${dx} ${dy}` }, g);
            make('circle', { r: 2.5 }, g);
            const b = make('g', { transform: `translate(${dx} ${dy})`, class: 'balloon' }, g);
            make('path', { d: kind === 'error' ? 'M-12 -10H12V10H-12Z' : kind === 'warning' ? 'M0 -15L15 11H-15Z' : 'M0 -11A11 11 0 0 1 0 11A11 11 0 0 1 0 -11Z' }, b);
            make('text', { y: kind === 'warning' ? 8 : 5, 'text-anchor': 'middle' }, b).textContent = group.length > 1 ? `${group[0].label}+` : group[0].label;
        }
    }

    function drawSizes() {
        sizes.replaceChildren();
        for (const s of plan.derived.sizes) {
            const flat = s.y0 === s.y1;
            const [x0, y0, x1, y1] = [sx(s.x0), sy(s.y0), sx(s.x1), sy(s.y1)];
            const [dx, dy] = flat ? [0, 52] : [46, 0];
            const arrow = flat ? `M${x0} ${y0 + dy}l9 -3v6ZM${x1} ${y1 + dy}l-9 -3v6Z` : `M${x0 + dx} ${y0}l-3 -9h6ZM${x1 + dx} ${y1}l-3 9h6Z`;
            make('path', { d: `M${x0} ${y0 + (flat ? 6 : 0)}M${x0 + (flat ? 0 : 6)} ${y0 + (flat ? 6 : 0)}L${x0 + dx * 1.15} ${y0 + dy * 1.15}M${x1 + (flat ? 0 : 6)} ${y1 + (flat ? 6 : 0)}L${x1 + dx * 1.15} ${y1 + dy * 1.15}M${x0 + dx} ${y0 + dy}L${x1 + dx} ${y1 + dy}` }, sizes);
            make('path', { class: 'arrow', d: arrow }, sizes);
            const [tx, ty] = [(x0 + x1) / 2 + dx, (y0 + y1) / 2 + dy];
            make('text', flat ? { x: tx, y: ty - 6, 'text-anchor': 'middle' } : { transform: `translate(${tx - 6} ${ty}) rotate(-90)`, 'text-anchor': 'middle' }, sizes).textContent = s.text;
        }
    }

    /** A bar of round length, to see how large things are. @param {number} w @param {number} h */
    function drawBar(w, h) {
        const most = Math.min(160, w / 3) / view.k / plan.unitMm;
        const ten = 10 ** Math.floor(Math.log10(most));
        const long = [5, 2, 1].map(f => f * ten).find(v => v <= most) ?? ten;
        const px = long * plan.unitMm * view.k;
        bar.replaceChildren();
        make('path', { d: `M14 ${h - 22}v8h${px}v-8M${14 + px / 2} ${h - 14}v-5` }, bar);
        make('text', { x: 20 + px, y: h - 12 }, bar).textContent = `${+long.toPrecision(3)} ${plan.unitMm === 1 ? 'mm' : 'in'}`;
    }

    /** @param {string} id @param {boolean} tell */
    function choose(id, tell) {
        chosen = things.some(t => t.id === id) ? id : '';
        for (const t of things) t.el.classList.toggle('chosen', t.id === chosen);
        const el = things.find(t => t.id === chosen)?.el;
        if (el) {
            el.parentElement?.querySelector('[tabindex="0"]')?.setAttribute('tabindex', '-1');
            el.setAttribute('tabindex', '0');
        }
        if (tell) net.invokeMethodAsync('Choose', chosen);
    }

    /** Moves a thing here at once and asks what follows. @param {Thing} t @param {number} x @param {number} y @param {boolean} rounded */
    function move(t, x, y, rounded) {
        [t.x, t.y] = rounded ? [nearest(x, plan.stepMm), nearest(y, plan.stepMm)] : [x, y];
        if (t.id.startsWith('point:')) {
            const i = +t.id.slice(6);
            const before = plan.outline.at(i - 1);
            Object.assign(plan.outline[i], { x0: t.x, y0: t.y });
            if (before) Object.assign(before, { x: t.x, y: t.y });
            outline();
        }
        place();
        questions.put({ id: t.id, x: t.x, y: t.y, rounded });
    }

    async function end() {
        held = null;
        await questions.rest();
        later = null;
        build(await net.invokeMethodAsync('End'));
    }

    const isRounded = (/** @type {{altKey:boolean}} */ e) => !e.altKey && svg.dataset.rounded !== 'no';

    on(svg, 'pointerdown', e => {
        if (e.button > 0) return;
        const id = e.target.closest('[data-id]')?.dataset.id;
        const t = things.find(o => o.id === id);
        fingers.set(e.pointerId, { x: e.clientX, y: e.clientY });
        svg.setPointerCapture(e.pointerId);
        e.preventDefault();
        if (t && fingers.size === 1) {
            t.el.focus({ preventScroll: true });
            choose(t.id, true);
            if (t.id.startsWith('row:')) return;
            const p = toPlan(e);
            held = { thing: t, dx: t.x - p.x, dy: t.y - p.y };
            net.invokeMethodAsync('Begin');
        }
    }, false);
    on(svg, 'pointermove', e => {
        const was = fingers.get(e.pointerId);
        if (!was) return;
        if (held) {
            const p = toPlan(e);
            move(held.thing, p.x + held.dx, p.y + held.dy, isRounded(e));
            return;
        }
        const other = [...fingers].find(([id]) => id !== e.pointerId)?.[1];
        if (other) {
            const r = svg.getBoundingClientRect();
            const span = Math.hypot(was.x - other.x, was.y - other.y) || 1;
            zoom(Math.hypot(e.clientX - other.x, e.clientY - other.y) / span, other.x - r.left, other.y - r.top);
        } else if (!e.target.closest?.('.row')) {
            view = { ...view, x: view.x - (e.clientX - was.x) / view.k, y: view.y + (e.clientY - was.y) / view.k, own: true };
            place();
        }
        fingers.set(e.pointerId, { x: e.clientX, y: e.clientY });
    });
    for (const kind of ['pointerup', 'pointercancel', 'lostpointercapture']) {
        on(svg, kind, e => {
            fingers.delete(e.pointerId);
            if (held && fingers.size === 0) end();
        });
    }
    on(svg, 'wheel', e => {
        e.preventDefault();
        const r = svg.getBoundingClientRect();
        zoom(Math.exp(-e.deltaY * (e.deltaMode ? 0.05 : 0.0015)), e.clientX - r.left, e.clientY - r.top);
    }, false);
    on(svg, 'focusin', e => {
        const id = e.target.closest('[data-id]')?.dataset.id;
        if (id && id !== chosen) choose(id, true);
    });

    /** @type {Record<string,[number,number]>} */ const ways = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] };
    on(svg, 'keydown', e => {
        if (e.ctrlKey || e.metaKey) return;
        const { w, h } = size();
        const t = things.find(o => o.id === e.target.closest('[data-id]')?.dataset.id);
        const way = ways[e.key];
        if (e.key === '+' || e.key === '=') zoom(1.25, w / 2, h / 2);
        else if (e.key === '-') zoom(0.8, w / 2, h / 2);
        else if (e.key === '0') whole();
        else if (way && t && !t.id.startsWith('row:')) {
            if (!keyMove) { keyMove = true; net.invokeMethodAsync('Begin'); }
            const step = plan.unitMm === 1 ? (e.shiftKey ? 0.1 : 1) : plan.unitMm / (e.shiftKey ? 64 : 16);
            move(t, t.x + way[0] * step, t.y + way[1] * step, false);
        } else if (way && !t) {
            view = { ...view, x: view.x + way[0] * 40 / view.k, y: view.y + way[1] * 40 / view.k, own: true };
            place();
        } else if (t && (e.key === 'PageDown' || e.key === 'PageUp')) {
            const stops = [...t.el.parentElement?.children ?? []];
            const next = stops[(stops.indexOf(t.el) + (e.key === 'PageDown' ? 1 : stops.length - 1)) % stops.length];
            /** @type {SVGElement} */ (next).focus();
        } else return;
        e.preventDefault();
    }, false);
    const endKeys = () => { if (keyMove) { keyMove = false; end(); } };
    on(svg, 'keyup', e => { if (ways[e.key]) endKeys(); });
    on(svg, 'focusout', endKeys);
    on(document, 'keydown', e => {
        if (!(e.ctrlKey || e.metaKey) || e.target.closest('input,select,textarea')) return;
        const key = e.key.toLowerCase();
        if (key !== 'z' && key !== 'y') return;
        e.preventDefault();
        net.invokeMethodAsync(key === 'y' || e.shiftKey ? 'Redo' : 'Undo');
    }, false);
    for (const b of svg.parentElement?.querySelectorAll('[data-view]') ?? []) {
        on(b, 'click', () => {
            const { w, h } = size();
            const how = /** @type {HTMLElement} */ (b).dataset.view;
            if (how === 'whole') whole(); else zoom(how === 'closer' ? 1.5 : 1 / 1.5, w / 2, h / 2);
        });
    }
    const grown = new ResizeObserver(() => view.own ? place() : whole());
    grown.observe(svg);
    build(first);
    svg.dataset.ready = 'yes';

    return {
        /** Shows a plan changed elsewhere; while something is held it waits. @param {Plan} next */
        show(next) { if (held || keyMove) later = next; else build(next); },
        dispose() { stop.abort(); grown.disconnect(); },
    };
}
