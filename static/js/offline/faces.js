// The tiles of the table while taps wait: a face of our own over the board's, for those seats that the taps have moved.

import { filled, marked } from './fill.js';

/**
 * @typedef {import('./foresee.js').SeatShown} SeatShown
 * @typedef {import('./foreseen.js').Foreseen} Foreseen
 */

/** A range is said to full five minutes, outward. */
const SAID_TO_MS = 5 * 60_000;

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

/**
 * Until when a tap that says of a candle that it was tried asks first, as the board's own buttons have it.
 * @param {SeatShown} seat
 * @returns {string} RFC 3339, "always" or "unheard"; empty once a hand has decided
 */
export function triedFrom({ poured, judged, firm }) {
  if (judged) return '';
  if (!poured) return 'always';
  return firm ? new Date(Math.floor(firm / SAID_TO_MS) * SAID_TO_MS).toISOString() : 'unheard';
}

/** @param {SeatShown} a @param {SeatShown} b whether a tile would show something else */
function apart(a, b) {
  const face = ({ since, claimed, finished, ...rest }) => JSON.stringify({ ...rest, done: finished.length });
  return face(a) !== face(b);
}

/** @param {Foreseen} all @returns {SeatShown[]} those that the waiting taps have moved */
export function movedSeats({ base, shown }) {
  return shown.seats.filter((seat, i) => !base.seats[i] || apart(base.seats[i], seat));
}

/** @param {Foreseen | undefined} all nothing: the board's own faces alone */
export function paint(all) {
  const moved = new Map((all ? movedSeats(all) : []).map((seat) => [String(seat.seat), seat]));
  for (const tile of document.querySelectorAll('.tile[data-seat]')) {
    const seat = moved.get(tile.dataset.seat);
    const old = tile.querySelector(':scope > .face--unsent');
    if (!seat) {
      old?.remove();
      continue;
    }
    const face = faceOf(seat, all);
    if (old?.outerHTML === face.outerHTML) continue; // a finger may be on it
    if (old) old.replaceWith(face); else tile.append(face);
  }
  for (const card of document.querySelectorAll('#help .flag')) {
    const about = card.querySelector('[data-seat]')?.dataset.seat;
    card.classList.toggle('is-covered', about !== undefined && moved.has(about));
  }
}

/** @param {SeatShown} seat @param {Foreseen} all */
function faceOf(seat, all) {
  const tapped = all.steps.filter((step) => step.tap);
  const line = lineOf(seat, all);
  const part = marked(filled('face-unsent', {
    seat: seat.seat, name: seat.name, line, word: wordOf(seat), helper: seat.helper, step: seat.step,
    canFinish: seat.canFinish, spoken: seat.canFinish ? `Tap when done with ${line}` : 'Tap to open',
  }), markOf(seat));
  const pips = part.querySelector('.pips');
  tapped.forEach((_, i) => {
    const pip = document.createElement('i');
    pip.className = i < seat.finished.length ? 'pip pip--done' : 'pip';
    pips.append(pip);
  });
  const face = part.firstElementChild;
  face.classList.add(`face--${markOf(seat)}`);
  return face;
}
