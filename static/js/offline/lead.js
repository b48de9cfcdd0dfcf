// Now and next while taps wait: the step that was opened here, who is not done with it, and the one to open after it.

import { filled, seatWords } from './fill.js';
import { triedFrom } from './hand.js';
import { parted } from './sentences.js';

/**
 * @typedef {import('./foreseen.js').Foreseen} Foreseen
 * @typedef {import('./foresee.js').Shown} Shown
 */

const NAMED = 4;

/** @param {number[]} seats */
function briefly(seats) {
  return seats.length > NAMED ? `${seats.length} seats` : seatWords(seats);
}

/**
 * Shows what is foreseen in the place of what the board said, or the board's words again.
 * @param {string} id
 * @param {DocumentFragment | undefined} part
 */
function cover(id, part) {
  const board = document.getElementById(id);
  const own = document.getElementById(`${id}-unsent`);
  if (!board || !own) return;
  board.hidden = part !== undefined;
  own.hidden = part === undefined;
  if (!part) {
    own.replaceChildren();
    return;
  }
  const fresh = document.createElement('div');
  fresh.append(part);
  if (own.innerHTML !== fresh.innerHTML) own.replaceChildren(...fresh.childNodes); // a finger may be on it
}

/** @param {Foreseen | undefined} all nothing: the board's own words alone */
export function paint(all) {
  const differs = all !== undefined && (all.shown.at !== all.base.at || all.shown.opened !== all.base.opened
    || all.shown.closed !== all.base.closed);
  cover('now', differs ? now(all) : undefined);
  cover('middle', differs ? middle(all) : undefined);
  cover('next', differs ? next(all) : undefined);
  if (differs) ask(all);
}

/** @param {Foreseen} all */
function now({ steps, shown }) {
  const index = steps.findIndex((step) => step.id === shown.at);
  const step = steps[index];
  const [first, more] = parted(step?.caution ?? '');
  const notDone = shown.notDone.length === 0 ? 'Everybody is done.' : `Not done: ${briefly(shown.notDone)}.`;
  const earlier = shown.earlier.length === 0 ? '' : `${upper(briefly(shown.earlier))}: at an earlier step.`;
  return filled('now-words', {
    kicker: step ? `Step ${index + 1} of ${steps.length}, not sent yet` : 'Not sent yet',
    heading: shown.closed ? 'The class is over' : step?.name ?? 'Nothing is open',
    say: step?.say ?? '',
    caution: first, more,
    notDone: step?.tap && shown.done > 0 ? notDone : '',
    earlier,
  });
}

/** How long the step has been open is the board's to say. @param {Foreseen} all */
function middle({ steps, shown }) {
  const tapped = steps.some((step) => step.id === shown.at && step.tap);
  return filled('middle-words', { done: tapped ? `${shown.done} of ${shown.of}` : '' });
}

/** @param {Foreseen} all */
function next({ steps, shown }) {
  if (shown.closed) return filled('next-over', {});
  const step = steps.find((s) => s.id === shown.next);
  if (!step) return close(steps, shown);
  return filled('next-words', {
    step: step.id, name: step.name, ask: shown.behind.length > 0 ? 'next-dialog-unsent' : '',
    leaves: shown.behind.length > 0 ? `leaves ${briefly(shown.behind.map((row) => row.seat))} behind` : '',
  });
}

/** Closing comes first once the last seat is done, and is small until then. */
function close(steps, { seats, at, done, of }) {
  const here = seats.filter((seat) => !['expected', 'left', 'sharing'].includes(seat.phase));
  if (here.every((seat) => seat.phase === 'done')) return filled('next-close', {});
  const step = steps.find((s) => s.id === at);
  return filled('next-idle-words', { name: step?.name ?? '', count: step?.tap ? `${done} of ${of} done` : '' });
}

/** @param {Foreseen} all */
function ask({ steps, shown }) {
  const place = document.getElementById('next-ask-unsent');
  const step = steps.find((s) => s.id === shown.next);
  if (!place || !step) return;
  const part = filled('next-ask-words', { step: step.id, name: step.name, leaves: shown.behind.length > 0
    ? `It leaves ${briefly(shown.behind.map((row) => row.seat))} behind.` : '' });
  const rows = part.querySelector('ul');
  for (const row of shown.behind) {
    const seat = shown.seats.find((s) => s.seat === row.seat);
    const named = (/** @type {string} */ id) => steps.find((s) => s.id === id)?.name ?? '';
    rows.append(filled('next-ask-row', {
      seat: row.seat, name: seat.name, stepName: named(row.step),
      done: row.finish === row.step ? 'It is done' : `Done up to ${named(row.finish)}`,
      step: row.step, finish: row.finish, stays: row.stays, paused: row.paused,
      triedFrom: triedFrom(steps, seat, row.finish),
      mayStay: !row.stays && !row.paused && seat.canFinish, mayPause: !row.paused,
    }));
  }
  for (const button of rows.querySelectorAll('[data-finish]')) {
    button.dataset.step = button.dataset.finish;
    delete button.dataset.finish;
  }
  place.replaceChildren(part);
}

/** @param {string} words */
function upper(words) {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
