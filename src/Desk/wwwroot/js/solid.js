// @ts-check
// The solid on the screen: fetches it, turns it by hand or by the arrow keys, draws only when something changed.
// three.js comes from this computer and only when a solid is looked at.

const STEP = Math.PI / 24;

// what is ground is bright, what is not is the grey of bar stock
const STEEL = { light: ['#8d9194', '#c3c8cb', '#f4f6f7', '#777b7e'], dark: ['#767b80', '#aeb5ba', '#e9eef1', '#5d6266'] };

/** @param {HTMLElement} root holds the canvas and the buttons @param {string} address of the solid */
export async function attach(root, address) {
    const canvas = /** @type {HTMLCanvasElement} */ (root.querySelector('canvas'));
    const context = canvas.getContext('webgl2', { antialias: true, alpha: true });
    if (!context) throw new Error('this browser draws no solids here (WebGL is missing or switched off)');
    const T = await import('../lib/three.bundle.js');

    const renderer = new T.WebGLRenderer({ canvas, context, antialias: true, alpha: true });
    renderer.setClearAlpha(0);
    const scene = new T.Scene();
    const camera = new T.OrthographicCamera();
    camera.position.z = 1000;
    camera.near = 1;
    camera.far = 5000;
    const sky = new T.HemisphereLight(0xffffff, 0x777777, 1.5);
    const key = new T.DirectionalLight(0xffffff, 2.2);
    key.position.set(-3, 5, 6);
    const side = new T.DirectionalLight(0xffffff, 0.7);
    side.position.set(5, -2, 2);
    const piece = new T.Group();
    scene.add(sky, key, side, piece);

    const steel = new T.MeshStandardMaterial({ vertexColors: true, metalness: 0.25, roughness: 0.42, polygonOffset: true, polygonOffsetFactor: 1, polygonOffsetUnits: 1 });
    const ink = new T.LineBasicMaterial();
    /** @type {Uint8Array} */ let faces = new Uint8Array();
    /** @type {any} */ let body;
    /** @type {any} */ let lines;
    let half = new T.Vector3(1, 1, 1);
    let zoom = 1;
    let frame = 0;
    const ends = new AbortController();
    /** @type {AbortController|undefined} */ let fetching;

    const draw = () => { frame ||= requestAnimationFrame(() => { frame = 0; renderer.render(scene, camera); }); };

    // what the piece takes up on the screen as it is turned now
    const fit = () => {
        const [w, h] = [canvas.clientWidth || 1, canvas.clientHeight || 1];
        let [x, y] = [1e-3, 1e-3];
        for (const sx of [-1, 1]) for (const sy of [-1, 1]) {
            const c = new T.Vector3(sx * half.x, sy * half.y, half.z).applyQuaternion(piece.quaternion);
            x = Math.max(x, Math.abs(c.x));
            y = Math.max(y, Math.abs(c.y));
        }
        return Math.max(x / w, y / h) * 2.24;
    };
    let mmPerDot = 1;
    const look = () => {
        const [w, h] = [canvas.clientWidth || 1, canvas.clientHeight || 1];
        renderer.setPixelRatio(Math.min(devicePixelRatio || 1, 2));
        renderer.setSize(w, h, false);
        const m = mmPerDot / zoom;
        [camera.left, camera.right, camera.bottom, camera.top] = [-w * m / 2, w * m / 2, -h * m / 2, h * m / 2];
        camera.updateProjectionMatrix();
        draw();
    };
    const whole = () => { zoom = 1; mmPerDot = fit(); look(); };
    const closer = (/** @type {number} */ by) => { zoom = Math.min(40, Math.max(0.3, zoom * by)); look(); };
    const X = new T.Vector3(1, 0, 0), Y = new T.Vector3(0, 1, 0);
    const turn = (/** @type {number} */ aboutY, /** @type {number} */ aboutX) => {
        piece.quaternion.premultiply(new T.Quaternion().setFromAxisAngle(Y, aboutY)).premultiply(new T.Quaternion().setFromAxisAngle(X, aboutX));
        draw();
    };
    const from = (/** @type {number} */ aboutX, /** @type {number} */ aboutY) => {
        piece.quaternion.identity();
        turn(aboutY, aboutX);
        whole();
    };

    const paint = () => {
        const probe = document.createElement('span');
        probe.style.color = 'var(--ink)';
        root.append(probe);
        ink.color.setStyle(getComputedStyle(probe).color);
        probe.remove();
        const tones = STEEL[matchMedia('(prefers-color-scheme: dark)').matches ? 'dark' : 'light'].map(c => new T.Color(c));
        const colours = new Float32Array(faces.length * 3);
        faces.forEach((f, i) => tones[f].toArray(colours, i * 3));
        body?.geometry.setAttribute('color', new T.BufferAttribute(colours, 3));
        draw();
    };

    const drop = () => {
        for (const part of [body, lines]) {
            if (!part) continue;
            piece.remove(part);
            part.geometry.dispose();
        }
        body = lines = undefined;
    };

    /** @param {string} where */
    const show = async where => {
        fetching?.abort();
        const mine = fetching = new AbortController();
        let bytes;
        try {
            const answer = await fetch(where, { signal: mine.signal });
            if (!answer.ok) throw new Error(await answer.text());
            bytes = await answer.arrayBuffer();
        } catch (e) {
            if (mine.signal.aborted) return;
            throw e;
        }
        if (mine.signal.aborted) return;
        const [points, triangles, lineEnds] = new Int32Array(bytes, 0, 3);
        let at = 12;
        const floats = (/** @type {number} */ n) => { const a = new Float32Array(bytes, at, n); at += 4 * n; return a; };
        const [places, outward] = [floats(3 * points), floats(3 * points)];
        const corners = new Uint32Array(bytes, at, 3 * triangles);
        at += 12 * triangles;
        const ruled = floats(3 * lineEnds);
        faces = new Uint8Array(bytes, at, points);

        const first = !body;
        drop();
        const solid = new T.BufferGeometry();
        solid.setAttribute('position', new T.BufferAttribute(places, 3));
        solid.setAttribute('normal', new T.BufferAttribute(outward, 3));
        solid.setIndex(new T.BufferAttribute(corners, 1));
        solid.computeBoundingBox();
        const box = /** @type {any} */ (solid.boundingBox);
        half = box.getSize(new T.Vector3()).multiplyScalar(0.5);
        const middle = box.getCenter(new T.Vector3());
        const strokes = new T.BufferGeometry();
        strokes.setAttribute('position', new T.BufferAttribute(ruled, 3));
        body = new T.Mesh(solid, steel);
        lines = new T.LineSegments(strokes, ink);
        body.position.copy(middle).negate();
        lines.position.copy(body.position);
        piece.add(body, lines);
        paint();
        if (first) from(-0.72, 0.42);
        else look();
        root.dataset.shown = where;
    };

    const on = (/** @type {EventTarget} */ what, /** @type {string} */ name, /** @type {(e:any)=>void} */ does, passive = true) => what.addEventListener(name, does, { signal: ends.signal, passive });
    /** @type {Map<number,{x:number,y:number}>} */ const held = new Map();
    on(canvas, 'pointerdown', e => { canvas.setPointerCapture(e.pointerId); held.set(e.pointerId, { x: e.clientX, y: e.clientY }); });
    on(canvas, 'pointermove', e => {
        const was = held.get(e.pointerId);
        if (!was) return;
        const now = { x: e.clientX, y: e.clientY };
        if (held.size === 1) turn((now.x - was.x) * 0.009, (now.y - was.y) * 0.009);
        else {
            const other = [...held].find(([id]) => id !== e.pointerId)?.[1];
            if (other) closer(Math.hypot(now.x - other.x, now.y - other.y) / Math.max(1, Math.hypot(was.x - other.x, was.y - other.y)));
        }
        held.set(e.pointerId, now);
    });
    for (const name of ['pointerup', 'pointercancel', 'lostpointercapture']) on(canvas, name, e => held.delete(e.pointerId));
    on(canvas, 'wheel', e => { e.preventDefault(); closer(Math.exp(-e.deltaY * 0.0015)); }, false);
    on(canvas, 'keydown', e => {
        if (e.ctrlKey || e.altKey || e.metaKey) return;
        const does = { ArrowLeft: () => turn(-STEP, 0), ArrowRight: () => turn(STEP, 0), ArrowUp: () => turn(0, -STEP), ArrowDown: () => turn(0, STEP), '+': () => closer(1.25), '-': () => closer(0.8), Home: whole }[/** @type {string} */ (e.key)];
        if (!does) return;
        e.preventDefault();
        does();
    }, false);
    on(root, 'click', e => {
        const view = e.target.closest?.('[data-view]')?.dataset.view;
        if (!view) return;
        ({ closer: () => closer(1.25), farther: () => closer(0.8), whole, face: () => from(0, 0), below: () => from(-Math.PI / 2, 0), end: () => from(-Math.PI / 2, Math.PI / 2), slant: () => from(-0.72, 0.42) })[view]?.();
    });
    on(matchMedia('(prefers-color-scheme: dark)'), 'change', paint);
    const room = new ResizeObserver(() => { mmPerDot = fit(); look(); });
    room.observe(canvas);

    const dispose = () => {
        ends.abort();
        fetching?.abort();
        room.disconnect();
        cancelAnimationFrame(frame);
        drop();
        steel.dispose();
        ink.dispose();
        renderer.dispose();
        renderer.forceContextLoss();
    };
    try {
        if (address) await show(address);
    } catch (e) {
        dispose();
        throw e;
    }
    return { show, dispose };
}
