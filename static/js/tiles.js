// Taps on the table. The tile's outer button stays while its inside is swapped, so a swap under a finger loses nothing;
// the command names the step that the tile showed when the finger came down.

import * as clock from './clock.js';
import { drawn } from './drawn.js';
import { whenTried } from './hand-test.js';
import { inTime, isCurrent } from './live.js';
import { openSheet } from './sheet.js';
import { tell } from './status.js';
import { send, waiting, watchTaps } from './taps.js';

const LONG_PRESS_MS = 500;
const DOUBLE_TAP_MS = 600;
const SLIP_PX = 30;
const NOT_SENT_MS = 1_500;
/** How long after a lift, or after a long press, the browser may still send the click that belongs to it. */
const CLICK_MS = 700;
const HELD_MS = 10_000;

/** @typedef {{tile: HTMLElement, step: string, canFinish: boolean, triedFrom: string, x: number, y: number, timer: number}} Press */

/** Two hands may be at the table: each finger's press by its pointer. @type {Map<number, Press>} */
const presses = new Map();
/** When each tile was last tapped, by seat. @type {Map<string, number>} */
const tapped = new Map();
/** Until when a click on a tile only follows what a pointer did, by tile. @type {Map<HTMLElement, number>} */
const answered = new Map();

/** @param {HTMLElement} tile */
function shown(tile) {
  const face = tile.querySelector('.face--unsent') ?? tile.querySelector('[data-step]');
  return {
    step: face?.dataset.step ?? '', canFinish: face?.dataset.canFinish === 'true', triedFrom: face?.dataset.triedFrom ?? '',
  };
}

/** @param {PointerEvent} event */
function down(event) {
  const tile = event.target.closest('.tile');
  if (!tile || event.button !== 0) return;
  release(event);
  const timer = setTimeout(() => {
    presses.delete(event.pointerId);
    answered.set(tile, performance.now() + HELD_MS);
    openSheet(Number(tile.dataset.seat));
  }, LONG_PRESS_MS);
  presses.set(event.pointerId, { tile, ...shown(tile), x: event.clientX, y: event.clientY, timer });
}

/** @param {PointerEvent} event @returns {Press | undefined} the press that this pointer had begun and that ends now */
function release(event) {
  const press = presses.get(event.pointerId);
  presses.delete(event.pointerId);
  clearTimeout(press?.timer);
  return press;
}

/** @param {PointerEvent} event */
function up(event) {
  const press = release(event);
  if (!press || Math.hypot(event.clientX - press.x, event.clientY - press.y) > SLIP_PX) return;
  answered.set(press.tile, performance.now() + CLICK_MS);
  tap(press.tile, press);
}

/**
 * No mouse is made of a finger that has its answer: with all that hangs on a mouse it takes a slow tablet as long as the
 * answer does, before the next frame and before the tap is sent.
 * @param {TouchEvent} event
 */
function lifted(event) {
  const tile = event.target.closest('.tile');
  if (!event.cancelable || performance.now() >= (answered.get(tile) ?? 0)) return;
  answered.delete(tile);
  event.preventDefault();
}

/** Keyboards and screen readers click without a pointer. @param {MouseEvent} event */
function clicked(event) {
  const tile = event.target.closest('.tile');
  if (!tile) return;
  const byPointer = performance.now() < (answered.get(tile) ?? 0);
  answered.delete(tile);
  if (byPointer) return;
  tap(tile, shown(tile));
}

/** @param {HTMLElement} tile @param {{step: string, canFinish: boolean, triedFrom: string}} face as it was pressed */
function tap(tile, { step, canFinish, triedFrom }) {
  const seat = tile.dataset.seat;
  const before = tapped.get(seat) ?? -Infinity;
  if (performance.now() - before < DOUBLE_TAP_MS) return;
  tapped.set(seat, performance.now());
  if (!canFinish) {
    openSheet(Number(seat));
    return;
  }
  whenTried(triedFrom, seat, () => finish(tile, seat, step));
}

/** The first tap after a sleep counts only if the tile still means it once the board has spoken, and at the time it tells then. */
async function finish(tile, seat, step) {
  if (!document.getElementById('playback')) mark(seat, 'done');
  const woken = isCurrent() ? false : inTime();
  const pressed = !woken && clock.sure() ? clock.reading() : {};
  await drawn();
  if (await woken && shown(tile).step !== step) {
    unmark(tile.closest('[data-place]'));
    tell(`Seat ${seat} had moved on while this screen slept. Look at it again.`);
    return;
  }
  send({ type: 'finish-step', seat: Number(seat), step, ...pressed });
}

/**
 * Answers on the glass at once, wherever it was tapped.
 * @param {string} seat
 * @param {string} words
 */
function mark(seat, words) {
  const place = document.querySelector(`[data-place="${seat}"]`);
  if (!place || place.classList.contains('is-pressed')) return;
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
  const unsent = new Map(waiting().filter((k) => k.command.seat).map((k) => [String(k.command.seat), k]));
  for (const place of document.querySelectorAll('[data-place]')) {
    const tap = unsent.get(place.dataset.place);
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
  // On the page: a pointer may leave the table before it is lifted.
  document.addEventListener('pointerup', up);
  document.addEventListener('pointercancel', release);
  table.addEventListener('touchend', lifted, { passive: false });
  table.addEventListener('click', clicked);
  table.addEventListener('contextmenu', (event) => { if (event.target.closest('.tile')) event.preventDefault(); });
  document.addEventListener('htmx:sseMessage', (event) => {
    const place = event.target.closest?.('[data-place]');
    if (place?.classList.contains('is-pressed') && !waiting().some((k) => String(k.command.seat) === place.dataset.place)) unmark(place);
  });
  let slow = 0;
  watchTaps((unsent, settled, takenBack) => {
    clearTimeout(slow);
    for (const { command } of unsent) if (command.type === 'finish-step') mark(String(command.seat), 'done');
    if (unsent.some((k) => k.command.seat)) slow = setTimeout(showUnsent, NOT_SENT_MS);
    if (settled?.seat) {
      const place = document.querySelector(`[data-place="${settled.seat}"]`);
      // The new face normally arrives first; a refused tap brings none.
      setTimeout(() => { if (place && !waiting().some((k) => k.command.seat === settled.seat)) unmark(place); }, takenBack ? 0 : 1_200);
    }
  });
  if (waiting().length > 0) showUnsent();
}
