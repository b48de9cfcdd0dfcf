// The board sends every part anew when the stream opens again. One that says nothing new is left as it is, with what was
// unfolded in it, typed into it and has the focus.

/** What each part was told to say last, by its id. @type {Map<string, string>} */
const told = new Map();
const paper = document.createElement('template');

/** As the browser writes it. @param {string} html */
function written(html) {
  paper.innerHTML = html;
  return paper.innerHTML;
}

export function start() {
  for (const part of document.querySelectorAll('[sse-swap]')) told.set(part.id, part.innerHTML);
  document.addEventListener('htmx:sseBeforeMessage', (event) => {
    const html = written(event.detail.data);
    if (told.get(event.target.id) === html) event.preventDefault(); else told.set(event.target.id, html);
  });
}
