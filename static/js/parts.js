// What need not be put in its place, or not yet, of the parts that come down the stream. The board sends every part anew
// when the stream opens again: one that says nothing new is left as it is, with what was unfolded in it, typed into it and
// has the focus. One that nobody sees before its dialogue or fold is opened (data-once-open) waits for that.

const ONCE_OPEN = 'dialog:not([open]), details:not([open])';

/** What each part says, as it came. @type {WeakMap<Element, string>} */
const told = new WeakMap();
/** What each said when the page was opened, as the browser writes it, until its stream speaks. @type {Map<Element, string>} */
const opened = new Map();
/** What waits, by its part. @type {Map<Element, string>} */
const waiting = new Map();
const paper = document.createElement('template');

/** As the browser writes it. @param {string} html */
function written(html) {
  paper.innerHTML = html;
  return paper.innerHTML;
}

/** @param {Element} part @param {string} html @returns {boolean} whether it says what it was told to say last */
function saysNothingNew(part, html) {
  const before = opened.get(part);
  const same = before === undefined ? told.get(part) === html : before === written(html);
  opened.delete(part);
  told.set(part, html);
  return same;
}

/** @param {Element} part @param {string} html */
function fill(part, html) {
  part.innerHTML = html;
  part.dispatchEvent(new CustomEvent('htmx:sseMessage', { bubbles: true }));
}

/**
 * htmx looks through what it replaces and what it puts there node by node for what is its own. No part holds anything of
 * that, so it is spared all parts but the one that has the focus, which it hands on to what comes in its place.
 * @param {CustomEvent} event
 */
function comes(event) {
  const { target: part, detail: { data } } = event;
  if (saysNothingNew(part, data)) {
    event.preventDefault();
    return;
  }
  waiting.delete(part);
  const focus = document.activeElement;
  if (part !== focus && part.contains(focus)) return;
  event.preventDefault();
  if (part.matches('[data-once-open]') && part.closest(ONCE_OPEN)) {
    part.replaceChildren();
    waiting.set(part, data);
  } else {
    fill(part, data);
  }
}

/** What waits in a dialogue or a fold that opens is put in its place. @param {Element} box */
export function opens(box) {
  for (const [part, html] of waiting) {
    if (!box.contains(part)) continue;
    waiting.delete(part);
    fill(part, html);
  }
}

/** Before anything on the page is changed. */
export function start() {
  for (const part of document.querySelectorAll('[sse-swap]')) opened.set(part, part.innerHTML);
  document.addEventListener('htmx:sseBeforeMessage', comes);
  document.addEventListener('toggle', (event) => { if (event.target.open) opens(event.target); }, true);
}
