// The class as the board last told it to this page, and as the page writes on while the board is out of reach. No DOM, no
// clock: what is tried here in a browser against the board's own fold is what runs on the tablet.

/**
 * @typedef {{id: string, name: string, kind: string, led: boolean, tap: boolean, minutes: number, say: string,
 *   caution: string}} Step
 * @typedef {{at: number, seq: number}} Mark when, in ms since 1970, and by which event; 0 for one the board lacks yet
 * @typedef {{finishes: Record<string, Mark>, paused: number, again: number, judged: number, skin: number,
 *   claim: {helper: string, at: number} | null, hint: string, still: string[]}} Candle times in ms since 1970, 0 for never
 * @typedef {Candle & {seat: number, name: string, presence: string, shares: number, firm: number}} KnownSeat
 *   shares: the seat whose candle it shares, 0 for none; firm: when its candle may first be firm, 0 if not known
 * @typedef {{seq: number, closed: number, upToCure: number, whole: number, tried: boolean,
 *   opened: Record<string, Mark>, seats: KnownSeat[]}} Known
 *   closed: the event that closed the class, 0 while it runs; upToCure, whole: the step to which
 *   the class has come, the led steps after the cure left out, or counted; tried: a candle was
 *   judged set or is past the cure
 * @typedef {{seat: number, name: string, presence: string, shares: number, firm: number, candle: Candle}} Seat
 * @typedef {{steps: Step[], closed: number, opened: Record<string, Mark>, seats: Map<number, Seat>}} Table
 */

/** Closed by a tap that the board does not have. */
export const HERE = -1;

/** @returns {Candle} a candle of which nothing was told */
export function fresh() {
  return { finishes: {}, paused: 0, again: 0, judged: 0, skin: 0, claim: null, hint: '', still: [] };
}

/** @param {Step[]} steps @param {Known} known @returns {Table} of its own, to be written on */
export function tableOf(steps, known) {
  const seats = known.seats.map(({ seat, name, presence, shares, firm, ...candle }) => [seat,
    { seat, name, presence, shares, firm, candle: { ...candle, finishes: { ...candle.finishes }, still: [...candle.still] } }]);
  return { steps, closed: known.closed, opened: { ...known.opened }, seats: new Map(seats) };
}

/** @param {Table} table @param {string} id */
export function indexOf(table, id) {
  return table.steps.findIndex((step) => step.id === id);
}

/** @param {Table} table @returns {number} position of the furthest led step that is open; -1 before the first */
export function furthestOpened(table) {
  return Math.max(-1, ...Object.keys(table.opened).map((id) => indexOf(table, id)));
}

/** @param {Table} table @param {Candle} candle @returns {number} position of the furthest finished step; -1 if none */
export function furthestFinished(table, candle) {
  return Math.max(-1, ...Object.keys(candle.finishes).map((id) => indexOf(table, id)));
}

/** @param {Table} table @param {string} id @returns {string} the led step, not open nor passed over, that keeps it closed */
export function closedBefore(table, id) {
  const between = table.steps.slice(furthestOpened(table) + 1, Math.max(0, indexOf(table, id)));
  return between.find((step) => step.led)?.id ?? '';
}

/** A led step passed over counts as open, so that nobody is locked out. @param {Table} table @param {Step} step */
export function isOpen(table, step) {
  if (!step.led) return closedBefore(table, step.id) === '';
  return step.id in table.opened || (step.tap && indexOf(table, step.id) < furthestOpened(table));
}

/** @param {Seat} seat whether the class waits for a candle of its own */
export function makesCandle(seat) {
  return seat.presence === 'present' && seat.shares === 0;
}

/**
 * What holds of the wax now in the vessel: nothing told of it is older than the pour.
 * @param {Table} table @param {Candle} candle
 * @returns {{poured: number, judged: number, skin: number}}
 */
export function wax(table, candle) {
  const pour = table.steps.findIndex((step) => step.kind === 'pour');
  const first = pour < 0 ? undefined : table.steps.slice(pour).find((step) => step.id in candle.finishes);
  const at = first ? candle.finishes[first.id].at : 0;
  const poured = at && candle.again >= at ? candle.again : at;
  const since = (/** @type {number} */ seen) => (poured && seen >= poured ? seen : 0);
  return { poured, judged: since(candle.judged), skin: since(candle.skin) };
}
