// @ts-check
// When the desk stops answering the page says so and comes back by itself: the framework tries again for a while; after
// that, and when the desk was started anew and knows nothing of this page, the page is loaded again.
const notice = document.getElementById('components-reconnect-modal');

async function again() {
    try {
        if ((await fetch(location.href, { method: 'GET', cache: 'no-store' })).ok) { location.reload(); return; }
    } catch {
        // still away
    }
    setTimeout(again, 1500);
}

notice?.addEventListener('components-reconnect-state-changed', e => {
    const { state } = /** @type {CustomEvent} */ (e).detail;
    if (state === 'failed' || state === 'rejected') again();
});
