// Taps on the table. The tile's outer button stays while its inside is swapped, so a swap under a finger loses nothing;
// the command names the step that the tile showed when the finger came down.

import { openSheet } from './sheet.js';
import { kept, send, watchTaps } from './taps.js';

const LONG_PRESS_MS = 500;
const DOUBLE_TAP_MS = 600;
const SLIP_PX = 30;
const NOT_SENT_MS = 1_500;

/** @typedef {{tile: HTMLElement, step: string, canFinish: boolean, x: number, y: number, id: number}} Press */

/** @type {Press | undefined} */
let press;
let longPress = 0;
/** When each tile was last tapped, by seat. @type {Map<string, number>} */
const tapped = new Map();
/** Tiles whose tap was answered by pointer, so that the click that follows is not a second one. */
let handled = { tile: null, at: 0 };

/** @param {HTMLElement} tile */
function shown(tile) {
  const face = tile.querySelector('[data-step]');
  return { step: face?.dataset.step ?? '', canFinish: face?.dataset.canFinish === 'true' };
}

/** @param {PointerEvent} event */
function down(event) {
  const tile = event.target.closest('.tile');
  if (!tile || event.button !== 0) return;
  press = { tile, ...shown(tile), x: event.clientX, y: event.clientY, id: event.pointerId };
  clearTimeout(longPress);
  longPress = setTimeout(() => {
    const held = press;
    press = undefined;
    handled = { tile, at: performance.now() + 10_000 };
    if (held) openSheet(Number(tile.dataset.seat));
  }, LONG_PRESS_MS);
}

/** @param {PointerEvent} event */
function up(event) {
  clearTimeout(longPress);
  if (!press || press.id !== event.pointerId) return;
  const { tile, step, canFinish, x, y } = press;
  press = undefined;
  if (Math.hypot(event.clientX - x, event.clientY - y) > SLIP_PX) return;
  handled = { tile, at: performance.now() };
  tap(tile, step, canFinish);
}

function cancel() {
  clearTimeout(longPress);
  press = undefined;
}

/** Keyboards and screen readers click without a pointer. @param {MouseEvent} event */
function clicked(event) {
  const tile = event.target.closest('.tile');
  if (!tile) return;
  const byPointer = handled.tile === tile && performance.now() - handled.at < 700;
  handled = { tile: null, at: 0 };
  if (byPointer) return;
  const { step, canFinish } = shown(tile);
  tap(tile, step, canFinish);
}

/** @param {HTMLElement} tile @param {string} step @param {boolean} canFinish */
function tap(tile, step, canFinish) {
  const seat = tile.dataset.seat;
  const before = tapped.get(seat) ?? -DOUBLE_TAP_MS;
  if (performance.now() - before < DOUBLE_TAP_MS) return;
  tapped.set(seat, performance.now());
  if (!canFinish) {
    openSheet(Number(seat));
    return;
  }
  mark(seat, 'done');
  send({ type: 'finish-step', seat: Number(seat), step });
}

/**
 * Answers on the glass at once.
 * @param {string} seat
 * @param {string} words
 */
function mark(seat, words) {
  const place = document.querySelector(`[data-place="${seat}"]`);
  if (!place) return;
  place.classList.add('is-pressed');
  place.querySelector('[data-sent]').textContent = words;
}

/** @param {Element} place */
function unmark(place) {
  place.classList.remove('is-pressed', 'is-unsent');
  place.querySelector('[data-sent]').textContent = '';
}

/** Marks the tiles whose taps have not reached the server, and says so when that takes long. */
function showUnsent() {
  const waiting = new Map(kept().filter((k) => k.command.seat).map((k) => [String(k.command.seat), k]));
  for (const place of document.querySelectorAll('[data-place]')) {
    const tap = waiting.get(place.dataset.place);
    if (!tap) {
      if (place.classList.contains('is-unsent')) unmark(place);
      continue;
    }
    place.classList.add('is-pressed', 'is-unsent');
    place.querySelector('[data-sent]').textContent = 'not sent yet';
  }
}

export function start() {
  const table = document.getElementById('table');
  table.addEventListener('pointerdown', down);
  table.addEventListener('pointerup', up);
  table.addEventListener('pointercancel', cancel);
  table.addEventListener('click', clicked);
  table.addEventListener('contextmenu', (event) => { if (event.target.closest('.tile')) event.preventDefault(); });
  document.addEventListener('htmx:sseMessage', (event) => {
    const place = event.target.closest?.('[data-place]');
    if (place && !kept().some((k) => String(k.command.seat) === place.dataset.place)) unmark(place);
  });
  let slow = 0;
  watchTaps((waiting, settled) => {
    clearTimeout(slow);
    if (waiting.some((k) => k.command.seat)) slow = setTimeout(showUnsent, NOT_SENT_MS);
    if (settled?.seat) {
      const place = document.querySelector(`[data-place="${settled.seat}"]`);
      // The new face normally arrives first; a refused tap brings none.
      setTimeout(() => { if (place && !waiting.some((k) => k.command.seat === settled.seat)) unmark(place); }, 1_200);
    }
  });
  if (kept().length > 0) showUnsent();
}
