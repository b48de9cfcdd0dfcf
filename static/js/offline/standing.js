// Where the seats stand in the plan: the board's own rules, said once more.

import { furthestFinished, furthestOpened, indexOf, isOpen, wax } from './table.js';

/**
 * @typedef {import('./table.js').Table} Table
 * @typedef {import('./table.js').Seat} Seat
 * @typedef {import('./table.js').Step} Step
 * @typedef {{phase: string, step: Step | null}} Standing
 */

/** @param {Table} table @param {Seat} seat @returns {Standing} */
export function standing(table, seat) {
  if (seat.presence !== 'present') return { phase: seat.presence, step: null };
  if (seat.shares) return { phase: 'sharing', step: null };
  const ahead = workOf(table, seat);
  return seat.candle.paused ? { phase: 'paused', step: ahead.step } : ahead;
}

/** @param {Table} table @param {Seat} seat @returns {Standing} */
function workOf(table, { candle }) {
  for (let i = furthestFinished(table, candle) + 1; i < table.steps.length; i++) {
    const step = table.steps[i];
    if (step.kind === 'talk') {
      if (!talkIsOver(table, i)) return { phase: step.id in table.opened ? 'listening' : 'waiting', step };
    } else if (step.kind === 'cure') {
      if (!wax(table, candle).judged) return { phase: 'curing', step };
    } else {
      return { phase: isOpen(table, step) ? 'working' : 'waiting', step };
    }
  }
  return { phase: 'done', step: null };
}

/** A led talk lasts until something after it is open; a free one never holds anybody. @param {Table} table @param {number} index */
function talkIsOver(table, index) {
  const talk = table.steps[index];
  if (!talk.led || furthestOpened(table) > index) return true;
  const next = table.steps[index + 1];
  return next !== undefined && !next.led && talk.id in table.opened;
}

/**
 * A candle that may be firm is finished with one tap, once the step after the cure is open.
 * @param {Table} table @param {Seat} seat @param {Standing} stands @param {number} now in ms
 * @returns {Step | undefined}
 */
export function afterCure(table, seat, stands, now) {
  if (table.closed || stands.phase !== 'curing' || !stands.step || !seat.firm || now < seat.firm) return undefined;
  const next = table.steps.slice(indexOf(table, stands.step.id) + 1).find((step) => step.tap);
  return next?.led && isOpen(table, next) ? next : undefined;
}

/** Finished the step of that position, or is past it. @param {Table} table @param {Standing} stands @param {number} index */
export function isDoneWith(table, stands, index) {
  return stands.phase === 'done' || (stands.step !== null && indexOf(table, stands.step.id) > index);
}
