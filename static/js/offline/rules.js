// Which taps the board will let stand. A tap that it would refuse changes nothing here either.

import { furthestFinished, furthestOpened, indexOf, isOpen, wax } from './table.js';

/**
 * @typedef {import('./table.js').Table} Table
 * @typedef {import('../box.js').Command} Command
 */

/** How long a seat is left to the helper who went there, in ms; as on the board. */
const CLAIM_HOLDS_MS = 5 * 60_000;

/** @type {Record<string, (table: Table, command: Command, at: number) => boolean>} */
const LETS = {
  'open-step': (table, { step }) => opens(table, step),
  'finish-step': (table, { seat, step }) => active(table, seat) && finishes(table, table.seats.get(seat), step),
  'still-at-it': (table, { seat, step }) => active(table, seat) && indexOf(table, step) >= 0
    && !(step in table.seats.get(seat).candle.finishes),
  'pause': (table, { seat }) => active(table, seat) && !table.seats.get(seat).candle.paused,
  'resume': (table, { seat }) => active(table, seat) && table.seats.get(seat).candle.paused > 0,
  'expect': (table, { seat }) => table.seats.has(seat) && table.seats.get(seat).presence !== 'expected'
    && Object.keys(table.seats.get(seat).candle.finishes).length === 0,
  'arrive': (table, { seat }) => table.seats.has(seat),
  'leave': (table, { seat }) => table.seats.has(seat) && table.seats.get(seat).presence !== 'left',
  'pair': (table, command) => pairs(table, command),
  'unpair': (table, { seat }) => (table.seats.get(seat)?.shares ?? 0) > 0,
  'poured-again': (table, { seat }, at) => poured(table, seat, at),
  'judge-set': (table, { seat }, at) => poured(table, seat, at) && !wax(table, table.seats.get(seat).candle).judged,
  'judge-skin': (table, { seat }, at) => poured(table, seat, at) && !wax(table, table.seats.get(seat).candle).skin,
  'claim': (table, { seat }, at) => active(table, seat) && !(holds(table.seats.get(seat).candle.claim, at)),
  'sorted': (table, { seat }) => Boolean(table.seats.get(seat)?.candle.claim),
  'undo': (table, { seq }) => takesBack(table, seq),
  'close': (table) => !table.closed,
};

/**
 * @param {Table} table
 * @param {import('../carried.js').Traits} traits of commands
 * @param {Command} command
 * @param {number} at when it was tapped, in ms
 */
export function lets(table, { afterTheClose }, command, at) {
  if (table.closed && !afterTheClose.includes(command.type)) return false;
  return LETS[command.type]?.(table, command, at) ?? true;
}

function active(table, number) {
  const seat = table.seats.get(number);
  return seat?.presence === 'present' && seat.shares === 0;
}

/** A talk may be left out; any other led step has to be opened first. */
function opens(table, id) {
  const index = indexOf(table, id);
  if (index < 0 || !table.steps[index].led || id in table.opened || index < furthestOpened(table)) return false;
  return !table.steps.slice(furthestOpened(table) + 1, index).some((step) => step.led && step.kind !== 'talk');
}

function finishes(table, seat, id) {
  const step = table.steps[indexOf(table, id)];
  if (!step || id in seat.candle.finishes) return false;
  if (step.kind === 'cure' && !wax(table, seat.candle).poured) return false;
  return isOpen(table, step) || indexOf(table, id) < furthestOpened(table);
}

function pairs(table, { seat, with: other }) {
  const guest = table.seats.get(other);
  if (!active(table, seat) || !guest || guest.presence === 'left' || seat === other || guest.shares) return false;
  return ![...table.seats.values()].some((s) => s.presence !== 'left' && s.shares === other);
}

function poured(table, number, at) {
  const seat = table.seats.get(number);
  if (!seat || seat.shares) return false;
  const since = wax(table, seat.candle).poured;
  return since > 0 && since <= at;
}

/** @param {{helper: string, at: number} | null} claim @param {number} at */
export function holds(claim, at) {
  return claim !== null && at < claim.at + CLAIM_HOLDS_MS;
}

/** A step that seats have finished stays open; once the class is closed only that is taken back. */
function takesBack(table, seq) {
  if (table.closed) return table.closed === seq;
  const opened = Object.entries(table.opened).find(([, mark]) => mark.seq === seq)?.[0];
  if (!opened) return true;
  return ![...table.seats.values()].some((seat) => furthestFinished(table, seat.candle) >= indexOf(table, opened));
}

/** Whether it could be opened at all by now. @param {Table} table @param {string} id */
export function mayOpen(table, id) {
  return !table.closed && opens(table, id);
}
