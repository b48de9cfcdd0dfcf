// The tiles of the table while taps wait: a face of our own over the board's, for those seats that the taps have moved.

import { filled, marked } from './fill.js';
import { tapOf } from './hand.js';

/**
 * @typedef {import('./foresee.js').SeatShown} SeatShown
 * @typedef {import('./foresee.js').Shown} Shown
 * @typedef {import('./foreseen.js').Foreseen} Foreseen
 */

/** The mark of each phase, as the board's tiles have it. @type {Record<string, string>} */
const MARKS = { working: 'on-pace', curing: 'setting' };
/** @type {Record<string, string>} */
const WORDS = {
  waiting: 'waiting', listening: 'listening', paused: 'paused', expected: 'not here yet', left: 'left',
  sharing: 'shares', curing: 'poured', done: 'done',
};

/** @param {SeatShown} seat */
export function markOf(seat) {
  return seat.phase === 'waiting' && seat.judged ? 'set' : MARKS[seat.phase] ?? seat.phase;
}

/** @param {SeatShown} seat the state in words; empty for one at its step */
export function wordOf(seat) {
  return markOf(seat) === 'set' ? 'set' : WORDS[seat.phase] ?? '';
}

/** @param {SeatShown} seat @param {Foreseen} all what it is doing. No time is invented for a candle the board has not seen. */
export function lineOf(seat, { steps }) {
  if (seat.phase === 'sharing') return `with seat ${seat.shares}`;
  if (seat.phase === 'curing') return seat.firm ? 'setting' : 'setting; range when the board is back';
  if (seat.phase === 'waiting') return '';
  return steps.find((step) => step.id === seat.step)?.name ?? '';
}

/** @param {Foreseen} all @param {Shown} then @param {SeatShown} seat all that a tile shows, in one text */
function looks({ steps }, then, { since, claimed, finished, ...seat }) {
  return JSON.stringify({ ...seat, ...tapOf(steps, then, { finished, ...seat }), done: finished.length });
}

/** @param {Foreseen} all @returns {SeatShown[]} those that the waiting taps have moved */
export function movedSeats(all) {
  const { base, shown } = all;
  return shown.seats.filter((seat, i) => !base.seats[i] || looks(all, base, base.seats[i]) !== looks(all, shown, seat));
}

/** @param {SeatShown} seat @param {Foreseen} all whether its candle sets as the board has said, so that its words still hold */
function setsAsTold(seat, { base }) {
  const told = base.seats.find((s) => s.seat === seat.seat);
  return seat.phase === 'curing' && told?.phase === 'curing' && seat.firm !== 0 && seat.firm === told.firm;
}

/** @param {SeatShown} seat @param {Foreseen} all @returns {{word: string, line: string}} its state and its range, or what it does */
export function wordsOf(seat, all) {
  const told = setsAsTold(seat, all) ? document.querySelector(`#tile-${seat.seat} > .face:not(.face--unsent)`) : null;
  return {
    word: told?.querySelector('.face__word')?.textContent.trim() || wordOf(seat),
    line: told?.querySelector('.face__line')?.textContent || lineOf(seat, all),
  };
}

/** Our face on each tile that has one. @type {Map<HTMLElement, Element>} */
const ours = new Map();

/** The board's face came anew: ours stays over it until the stamp tells what it is of. @param {HTMLElement} tile */
export function putBack(tile) {
  const face = ours.get(tile);
  if (face) tile.append(face);
}

/** @param {Foreseen | undefined} all nothing: the board's own faces alone */
export function paint(all) {
  ours.clear();
  const moved = new Map((all ? movedSeats(all) : []).map((seat) => [String(seat.seat), seat]));
  for (const tile of document.querySelectorAll('.tile[data-seat]')) {
    const seat = moved.get(tile.dataset.seat);
    const old = tile.querySelector(':scope > .face--unsent');
    if (!seat) {
      old?.remove();
      continue;
    }
    let face = faceOf(seat, all);
    if (old?.outerHTML === face.outerHTML) face = old; // a finger may be on it
    else if (old) old.replaceWith(face);
    else tile.append(face);
    ours.set(tile, face);
  }
  for (const card of document.querySelectorAll('#help .flag')) {
    const about = card.querySelector('[data-seat]')?.dataset.seat;
    card.classList.toggle('is-covered', about !== undefined && moved.has(about));
  }
}

/** @param {SeatShown} seat @param {Foreseen} all */
function faceOf(seat, all) {
  const tap = tapOf(all.steps, all.shown, seat);
  const name = all.steps.find((step) => step.id === tap.step)?.name ?? '';
  const part = marked(filled('face-unsent', {
    seat: seat.seat, name: seat.name, ...wordsOf(seat, all), helper: seat.helper, ...tap,
    spoken: !tap.canFinish ? 'Tap to open' : tap.triedFrom ? 'Tap when tried by hand and firm' : `Tap when done with ${name}`,
  }), markOf(seat));
  const face = part.firstElementChild;
  face.classList.add(`face--${markOf(seat)}`);
  return face;
}
