// Opens the browser's print dialog once the lettering is there. Only the frame behind "Print from here" asks for it; the page prints as well without.
addEventListener('load', () => document.fonts.ready.then(() => print()));
