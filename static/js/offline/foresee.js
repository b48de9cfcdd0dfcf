// What the class will look like once the board has the taps that wait here. Pure: the board's last word, the taps in
// their order and the time go in; what a screen may show comes out. The board's own answer always wins.

import { apply } from './fold.js';
import { further, heading, reach } from './heading.js';
import { holds, lets, mayOpen } from './rules.js';
import { afterCure, isDoneWith, standing } from './standing.js';
import { furthestOpened, indexOf, isOpen, makesCandle, tableOf, wax } from './table.js';

/**
 * @typedef {import('./table.js').Known} Known
 * @typedef {import('./table.js').Step} Step
 * @typedef {import('./table.js').Table} Table
 * @typedef {{command: import('../box.js').Command, seq?: number}} Tap seq: once the board has answered it
 * @typedef {{seat: number, name: string, phase: string, step: string, canFinish: boolean, finished: string[],
 *   poured: boolean, judged: boolean, paused: boolean, shares: number, helper: string, claimed: string,
 *   firm: number, since: number}} SeatShown
 *   step: what a tap is about; helper: who is on the way now; claimed: who went and has not said "sorted";
 *   firm: when its candle may first be firm, as far as the board said; since: when a tap of ours last moved it, else 0
 * @typedef {{seat: number, step: string, finish: string, paused: boolean, stays: boolean}} Left
 *   finish: the step whose tap brings it up to the others
 * @typedef {{closed: boolean, at: string, opened: string, since: number, seats: SeatShown[], notDone: number[],
 *   earlier: number[], done: number, of: number, next: string, mayOpen: boolean, behind: Left[]}} Shown
 *   at: the step under which the class stands; opened: the furthest led step that is open; notDone: who is at that step;
 *   earlier: who is at one before it
 */

/**
 * @param {Step[]} steps of the plan
 * @param {import('../carried.js').Traits} traits of commands
 * @param {Known} known the board's last word
 * @param {Tap[]} taps in their order; those that the board's word already holds are left out
 * @param {number} now in ms since 1970
 * @returns {Shown}
 */
export function foresee(steps, traits, known, taps, now) {
  const table = tableOf(steps, known);
  const moved = new Map();
  let come = { upToCure: known.upToCure, whole: known.whole, tried: known.tried };
  let at = heading(table, come, now);
  let since = 0;
  for (const { command, seq = 0 } of taps) {
    if (seq > 0 && seq <= known.seq) continue;
    const when = command.at ? Date.parse(command.at) : now;
    if (!lets(table, traits, command, when)) continue;
    const before = places(table);
    apply(table, command, when, seq);
    for (const [seat, place] of places(table)) if (before.get(seat) !== place) moved.set(seat, when);
    come = command.type === 'undo' ? reach(table) : further(come, reach(table));
    const on = heading(table, come, when);
    if (on !== at) since = when;
    at = on;
  }
  return shown(table, heading(table, come, now), since, moved, now);
}

/** @param {Table} table @returns {Map<number, string>} where each seat is, in one word */
function places(table) {
  return new Map([...table.seats.values()].map((seat) => {
    const { phase, step } = standing(table, seat);
    return [seat.seat, `${phase} ${step?.id ?? ''}`];
  }));
}

/** @returns {Shown} */
function shown(table, at, since, moved, now) {
  const all = [...table.seats.values()];
  const stands = new Map(all.map((seat) => [seat.seat, standing(table, seat)]));
  const seats = all.map((seat) => seatShown(table, seat, stands.get(seat.seat), moved.get(seat.seat) ?? 0, now));
  const makers = all.filter(makesCandle);
  const step = table.closed ? undefined : table.steps[at];
  const position = (number) => {
    const its = seats.find((seat) => seat.seat === number).step;
    return its ? indexOf(table, its) : table.steps.length;
  };
  const numbers = makers.map((seat) => seat.seat);
  const there = step ? numbers.filter((seat) => position(seat) === at) : [];
  const earlier = step ? numbers.filter((seat) => position(seat) < at) : [];
  const next = table.closed ? undefined : table.steps.slice(furthestOpened(table) + 1).find((s) => s.led);
  return {
    closed: table.closed !== 0,
    at: step?.id ?? '',
    opened: table.steps[furthestOpened(table)]?.id ?? '',
    since,
    seats,
    notDone: step?.tap ? there : [],
    earlier,
    done: step ? makers.length - there.length - earlier.length : 0,
    of: makers.length,
    next: next?.id ?? '',
    mayOpen: next !== undefined && mayOpen(table, next.id),
    behind: next ? leftBehind(table, makers, stands, indexOf(table, next.id)) : [],
  };
}

/** @returns {SeatShown} */
function seatShown(table, seat, stands, since, now) {
  const finishing = afterCure(table, seat, stands, now);
  const step = finishing ?? stands.step;
  const { poured, judged } = wax(table, seat.candle);
  const canFinish = step !== null && !table.closed && (finishing !== undefined || stands.phase === 'working'
    || (stands.phase === 'paused' && isOpen(table, step) && step.tap));
  return {
    seat: seat.seat,
    name: seat.name,
    phase: stands.phase,
    step: step?.id ?? '',
    canFinish,
    finished: table.steps.map((s) => s.id).filter((id) => id in seat.candle.finishes),
    poured: poured > 0,
    judged: judged > 0,
    paused: seat.candle.paused > 0,
    shares: seat.shares,
    helper: holds(seat.candle.claim, now) ? seat.candle.claim.helper : '',
    claimed: seat.candle.claim?.helper ?? '',
    firm: seat.firm,
    since,
  };
}

/** @returns {Left[]} */
function leftBehind(table, makers, stands, index) {
  const before = table.steps.slice(0, index).filter((step) => step.tap);
  return makers
    .filter((seat) => before.some((step) => !isDoneWith(table, stands.get(seat.seat), indexOf(table, step.id))))
    .map((seat) => {
      const { phase, step } = stands.get(seat.seat);
      const open = before.filter((s) => isOpen(table, s) && !(s.id in seat.candle.finishes));
      return {
        seat: seat.seat,
        step: step?.id ?? '',
        finish: open.at(-1)?.id ?? '',
        paused: phase === 'paused',
        stays: step !== null && seat.candle.still.includes(step.id),
      };
    });
}
