// The hand test while taps wait: what a tap may say of a candle without asking first, as the board's own tiles do.

/**
 * @typedef {import('./foresee.js').SeatShown} SeatShown
 * @typedef {import('./table.js').Step} Step
 */

/** Of a candle whose range the board has not told yet. */
const UNHEARD = 'unheard';
const ALWAYS = 'always';

/** @param {SeatShown} seat before when the tap "tried by hand" asks first; empty if a hand has decided already */
export function testedFrom(seat) {
  if (seat.judged) return '';
  if (!seat.poured) return ALWAYS;
  return seat.firm ? new Date(seat.firm).toISOString() : UNHEARD;
}

/** @param {Step[]} steps @param {string} id */
function isAfterCure(steps, id) {
  const cure = steps.findIndex((step) => step.kind === 'cure');
  return cure >= 0 && steps.findIndex((step) => step.id === id) > cure;
}

/** @param {Step[]} steps @param {SeatShown} seat whether a hand has decided on its candle: nobody trims liquid wax */
export function isSettled(steps, seat) {
  return seat.judged || seat.finished.some((id) => isAfterCure(steps, id));
}

/** @param {Step[]} steps @param {SeatShown} seat @param {string} step the same for the tap that finishes a step */
export function triedFrom(steps, seat, step) {
  const pours = seat.poured || steps.some((s) => s.kind === 'pour');
  return pours && isAfterCure(steps, step) && !isSettled(steps, seat) ? testedFrom(seat) : '';
}

/**
 * What a tap on the tile finishes, and whether it asks: a candle that sets is finished with a tap and a yes.
 * @param {Step[]} steps @param {{closed: boolean, opened: string}} shown @param {SeatShown} seat
 * @returns {{step: string, canFinish: boolean, triedFrom: string}}
 */
export function tapOf(steps, shown, seat) {
  const after = seat.phase === 'curing' && !seat.canFinish && !shown.closed ? afterCure(steps, shown.opened) : undefined;
  const step = after?.id ?? seat.step;
  const canFinish = seat.canFinish || after !== undefined;
  return { step, canFinish, triedFrom: canFinish ? triedFrom(steps, seat, step) : '' };
}

/** @param {Step[]} steps @param {string} opened the furthest led step that is open */
function afterCure(steps, opened) {
  const next = steps.slice(steps.findIndex((s) => s.kind === 'cure') + 1).find((s) => s.tap);
  return next?.led && steps.indexOf(next) <= steps.findIndex((s) => s.id === opened) ? next : undefined;
}
