// Buttons and small forms that say what they want in data attributes: <button data-command="pause" data-seat="4">.
// Listens once, on the page, so that parts may be swapped at any time.

import { toCelsius } from './degrees.js';
import * as dialogue from './dialogue.js';
import { whenTried } from './hand-test.js';
import { inTime, isCurrent } from './live.js';
import { tell } from './status.js';
import { send } from './taps.js';
import { undoUnsent } from './undo.js';

const NUMBERS = new Set(['seat', 'seq', 'with', 'celsius', 'minutes']);
const YES_OR_NO = new Set(['on']);
const NOT_FIELDS = new Set(['command', 'dismiss', 'ask', 'open', 'number', 'latest', 'triedFrom']);
const DOUBLE_TAP_MS = 600;
/** Longer than between the two of a trembling finger, shorter than between taps taken back one after the other. */
const UNDO_RESTS_MS = 350;

let who = async () => document.body.dataset.initials ?? '';

/** @param {() => Promise<string>} ask gives the initials of whoever holds this device; empty if they won't say */
export function askInitials(ask) {
  who = ask;
}

/**
 * @param {HTMLElement} element
 * @returns {Record<string, string | number | boolean>}
 */
function wishOf(element) {
  const wish = { type: element.dataset.command };
  for (const [name, value] of Object.entries(element.dataset)) {
    if (!NOT_FIELDS.has(name)) wish[name] = meant(name, value);
  }
  return wish;
}

/** @param {string} name @param {string} value */
function meant(name, value) {
  if (YES_OR_NO.has(name)) return value === 'true';
  return NUMBERS.has(name) ? Number(value) : value;
}

/** @param {HTMLFormElement} form */
function withFields(wish, form) {
  for (const field of form.elements) {
    if (!field.name) continue;
    const value = field.value.trim();
    const number = NUMBERS.has(field.name) || 'number' in field.dataset;
    if (value !== '' || field.name === 'name') wish[field.name] = number ? Number(value.replace(',', '.')) : value;
    if ('degrees' in field.dataset) wish[field.name] = toCelsius(wish[field.name]);
  }
  return wish;
}

/** @param {Record<string, string | number>} wish @param {HTMLElement} element */
async function act(wish, element) {
  // The last thing done may be a tap that the board does not have: then its own latest is not what is meant.
  if ('latest' in element.dataset && (undoUnsent() || !wish.seq)) return;
  if (wish.helper === 'me') {
    wish.helper = await who();
    if (!wish.helper) return;
  }
  if (!isCurrent() && await inTime() && !stillOffered(element)) {
    tell('The class had moved on while this screen slept. Look at it again.');
    return;
  }
  send(wish);
  element.classList.add('is-sent');
  setTimeout(() => element.classList.remove('is-sent'), 2_000);
}

/** After the stream has brought all parts anew: whether a button or form that wishes the same is still there. */
function stillOffered(element) {
  if (element.isConnected) return true;
  const same = JSON.stringify(wishOf(element));
  return [...document.querySelectorAll(`[data-command="${element.dataset.command}"]`)]
    .some((other) => JSON.stringify(wishOf(other)) === same);
}

/** @param {MouseEvent} event */
function clicked(event) {
  const button = event.target.closest('button[data-command]');
  if (button?.dataset.ask) dialogue.open(button.dataset.ask);
  else if (button && !tooSoon(button)) whenTried(button.dataset.triedFrom, button.dataset.seat, () => act(wishOf(button), button));
}

let rested = 0;

/**
 * A trembling finger does not wish the same twice: what was wished rests for a moment. Undo is seen to, until it names the
 * next tap.
 */
function tooSoon(button) {
  const latest = 'latest' in button.dataset;
  const wish = latest ? 'undo' : JSON.stringify(wishOf(button));
  const { dataset } = document.body;
  if (wish === dataset.rests) return true;
  dataset.rests = wish;
  const until = performance.now() + DOUBLE_TAP_MS;
  const rise = () => {
    const old = button.dataset.seq && button.isConnected;
    if (old && performance.now() < until) rested = setTimeout(rise, 50); else delete dataset.rests;
  };
  clearTimeout(rested);
  rested = setTimeout(rise, latest ? UNDO_RESTS_MS : DOUBLE_TAP_MS);
  return false;
}

/** @param {SubmitEvent} event */
function submitted(event) {
  const form = event.target;
  if (!form.dataset.command) return;
  event.preventDefault();
  const wish = withFields(wishOf(form), form);
  const chosen = form.querySelector('option:checked[data-tried-from]');
  whenTried(chosen?.dataset.triedFrom, wish.seat, () => act(wish, form));
  form.reset();
  dialogue.closeQuestion(form);
}

export function start() {
  document.addEventListener('click', clicked);
  document.addEventListener('submit', submitted);
  dialogue.start(); // after the commands, which may stand on buttons that close their dialogue
  dialogue.closeFromOutside();
}
