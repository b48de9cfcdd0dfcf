// A page shown anew after something of it was decided, with the focus at the part that says what became of it.

/** @param {string} id of a heading with tabindex -1 */
export function show(id) {
  history.replaceState(null, '', `#${id}`);
  location.reload();
}

export function start() {
  const part = document.getElementById(location.hash.slice(1));
  if (part?.matches('[tabindex="-1"]')) part.focus();
}
