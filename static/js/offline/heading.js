// Under which step the class stands: the step it has open, whoever is slow or late.

import { furthestFinished, indexOf, makesCandle, wax } from './table.js';

/**
 * @typedef {import('./table.js').Table} Table
 * @typedef {import('./table.js').Seat} Seat
 * @typedef {{upToCure: number, whole: number, tried: boolean}} Reach positions in the plan; -1 while nothing is open
 */

/** How far the class as a whole has come, the clock left aside. @param {Table} table @returns {Reach} */
export function reach(table) {
  const cure = cureOf(table);
  const opened = Object.keys(table.opened).map((id) => indexOf(table, id));
  const upTo = (/** @type {number[]} */ led) => come(table, Math.max(-1, ...led));
  return { upToCure: upTo(opened.filter((i) => cure < 0 || i < cure)), whole: upTo(opened), tried: anyTried(table, cure) };
}

/** What the class has reached it leaves with an undo alone. @param {Reach} was @param {Reach} is @returns {Reach} */
export function further(was, is) {
  return {
    upToCure: Math.max(was.upToCure, is.upToCure),
    whole: Math.max(was.whole, is.whole),
    tried: was.tried || is.tried,
  };
}

function anyTried(table, cure) {
  return makers(table).some((seat) => wax(table, seat.candle).judged > 0 || furthestFinished(table, seat.candle) > cure);
}

function cureOf(table) {
  return table.steps.findIndex((step) => step.kind === 'cure');
}

function makers(table) {
  return [...table.seats.values()].filter(makesCandle);
}

/** The led step, or the furthest free one after it that more than half of the seats have reached. */
function come(table, led) {
  if (led < 0) return -1;
  const free = freeAfter(table, led);
  const all = makers(table);
  const half = free.filter((i) => 2 * all.filter((seat) => hasReached(table, seat, i)).length > all.length);
  if (table.steps[led].kind !== 'talk') return Math.max(led, ...half);
  const wentOn = all.some((seat) => furthestFinished(table, seat.candle) > led);
  return wentOn && free.length > 0 ? Math.max(free[0], ...half) : led;
}

/** The free steps after a led one, talks left out. */
function freeAfter(table, led) {
  const free = [];
  for (let i = led + 1; i < table.steps.length && !table.steps[i].led; i++) {
    if (table.steps[i].kind !== 'talk') free.push(i);
  }
  return free;
}

/** Nothing before that step asks for a tap or a hand test any more. @param {Table} table @param {Seat} seat @param {number} index */
function hasReached(table, { candle }, index) {
  return table.steps.slice(furthestFinished(table, candle) + 1, index)
    .every((step) => !step.tap && (step.kind !== 'cure' || wax(table, candle).judged > 0));
}

/**
 * What lies after the cure counts once a candle may be firm, and a talk ends with its time box.
 * @param {Table} table @param {Reach} come @param {number} now in ms
 * @returns {number}
 */
export function heading(table, come, now) {
  const cure = cureOf(table);
  const firm = come.tried || makers(table).some((seat) => seat.firm > 0 && now >= seat.firm);
  const at = cure < 0 || firm ? come.whole : come.upToCure;
  const led = Math.max(-1, ...Object.keys(table.opened).map((id) => indexOf(table, id)).filter((i) => i <= at));
  const talk = table.steps[led];
  if (talk?.kind !== 'talk' || now < table.opened[talk.id].at + talk.minutes * 60_000) return at;
  return Math.max(at, freeAfter(table, led)[0] ?? -1);
}
