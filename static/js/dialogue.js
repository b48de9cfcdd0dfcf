// The one place that opens and closes dialogues: <button data-open="menu-dialog"> opens one, and <button data-dismiss> closes
// the one it stands in. Listens once, on the page, so that parts may be swapped at any time.

import { opens } from './parts.js';

/** @param {string} id @returns {HTMLDialogElement | null} */
const named = (id) => document.getElementById(id);

/** @param {HTMLDialogElement} dialog */
function show(dialog) {
  opens(dialog);
  // without the board it is not to be had, and nobody is heard of who goes on
  if (dialog.classList.contains('ask')) import('./questions.js').catch(() => { });
  dialog.showModal();
}

/** @param {string} id of a dialogue; one that is open stays as it is */
export function open(id) {
  if (named(id) && !isOpen(id)) show(named(id));
}

/** @param {string} id */
export function close(id) {
  named(id)?.close();
}

/** The question that a part stands in is answered; a sheet stays open. @param {Element} part */
export function closeQuestion(part) {
  part.closest('dialog.ask')?.close();
}

/** @param {string} id */
export function isOpen(id) {
  return named(id)?.open ?? false;
}

/** @returns {boolean} whether any is open */
export function anyOpen() {
  return document.querySelector('dialog[open]') !== null;
}

/**
 * Tells once it is closed in whatever way. The browser says so a moment later, when it may be open again: that is of the
 * time before.
 * @param {HTMLDialogElement} dialog
 * @param {() => void} then
 * @param {AbortController} [until]
 */
function onClosed(dialog, then, until = new AbortController()) {
  dialog.addEventListener('close', () => {
    if (dialog.open) return;
    until.abort();
    then();
  }, { signal: until.signal });
}

/** @param {string} id @returns {Promise<void>} opened, and closed again in whatever way */
export function closed(id) {
  open(id);
  return new Promise((resolve) => { onClosed(named(id), resolve); });
}

/** How to answer what a dialogue was last asked with. @type {WeakMap<HTMLDialogElement, (yes: boolean) => void>} */
const lastAsked = new WeakMap();

/**
 * Asks with a dialogue that has a button with data-yes.
 * @param {string} id
 * @returns {Promise<boolean>} whether it was answered with yes; no if it asks already
 */
export function asked(id) {
  const dialog = named(id);
  if (!dialog || dialog.open) return Promise.resolve(false);
  lastAsked.get(dialog)?.(false); // it is closed, and nobody was told yet
  const answered = new AbortController();
  return new Promise((resolve) => {
    const answer = (/** @type {boolean} */ yes) => {
      answered.abort();
      dialog.close();
      resolve(yes);
    };
    lastAsked.set(dialog, answer);
    dialog.querySelector('[data-yes]').addEventListener('click', () => answer(true), { signal: answered.signal });
    onClosed(dialog, () => answer(false), answered);
    show(dialog);
  });
}

/** @param {MouseEvent} event */
function clicked(event) {
  const opener = event.target.closest('[data-open]');
  const within = event.target.closest('[data-dismiss]');
  // what was pressed may be gone from the page by now, the way of the press is not
  if (within) event.composedPath().find((part) => part instanceof HTMLDialogElement)?.close();
  if (opener) open(opener.dataset.open);
}

/**
 * A press outside its box closes a dialogue. It must begin there: the click that ends the touch which opened the dialogue
 * lands outside too.
 */
export function closeFromOutside() {
  for (const dialog of document.querySelectorAll('dialog')) {
    let pressed = false;
    dialog.addEventListener('pointerdown', (event) => { pressed = event.target === dialog; });
    dialog.addEventListener('click', (event) => {
      if (pressed && event.target === dialog) dialog.close();
      pressed = false;
    });
  }
}

export function start() {
  document.addEventListener('click', clicked);
}
