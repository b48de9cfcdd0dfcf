// The box of taps that the board does not have yet, kept in this browser: it outlives the page, and every page of this
// browser that shows the class sees the same one.

/**
 * @typedef {{commandId: string, type: string, at?: string, clocks?: number, seat?: number, step?: string, seq?: number,
 *   to?: string|number, with?: number, activity?: string, helper?: string, name?: string, text?: string,
 *   celsius?: number, on?: boolean}} Command
 * @typedef {{key: string, command: Command, tried: boolean, takenBack: boolean}} Kept
 *   tried: it was sent at least once without an answer, so the board may have it;
 *   takenBack: it was undone while it may have been on its way, so whoever sends it undoes it too
 */

import { jsonOf } from './api.js';
import * as stored from './stored.js';

const DIGITS = 15;
const NUMBERED = /^\d{15}-./;

const prefix = stored.tapsOf(document.body.dataset.class);

export { drop } from './stored.js';

/** @returns {Kept[]} in the order of their taps */
export function kept() {
  /** @type {Kept[]} */
  const all = [];
  for (const key of stored.keys(prefix).filter((each) => NUMBERED.test(each.slice(prefix.length)))) {
    const tap = tapOf(key, stored.read(key));
    if (tap) all.push(tap); else stored.drop(key); // not one of ours
  }
  return all.sort((a, b) => (a.key < b.key ? -1 : 1));
}

/** @returns {Kept[]} what is still to count, in the order of the taps */
export function waiting() {
  return kept().filter((tap) => !tap.takenBack);
}

/** @param {string} key @returns {Kept | undefined} how it stands by now: another page may have taken it back */
export function still(key) {
  return kept().find((tap) => tap.key === key);
}

/** @param {string} key @param {string} value @returns {Kept | undefined} */
function tapOf(key, value) {
  const { tried = false, takenBack = false, ...command } = jsonOf(value);
  const ours = [command.commandId, command.type].every((field) => typeof field === 'string');
  return ours ? { key, command, tried, takenBack } : undefined;
}

/**
 * Keeps a command behind all that wait. Each gets the number after the highest one kept, so that the order holds whatever
 * the device's clock does meanwhile.
 * @param {Command} command
 * @returns {string} the key under which it is kept
 */
export function keep(command) {
  const numbers = kept().map((tap) => parseInt(tap.key.slice(prefix.length), 10));
  const highest = Math.max(0, ...numbers);
  const key = `${prefix}${String(highest + 1).padStart(DIGITS, '0')}-${command.commandId}`;
  stored.write(key, JSON.stringify(command));
  return key;
}

/** Keeps another command in the place of a tap. @param {string} key @param {Command} command */
export function rewrite(key, command) {
  stored.write(key, JSON.stringify(command));
}

/** Notes something about a tap that is still kept. @param {string} key @param {{tried?: true, takenBack?: true}} what */
export function note(key, what) {
  const tap = still(key);
  if (!tap) return;
  const { command, tried, takenBack } = tap;
  rewrite(key, { ...command, ...(tried && { tried }), ...(takenBack && { takenBack }), ...what });
}

/** @param {(settled?: Command) => void} action when another page of this browser put something in or took it out */
export function whenOthersChange(action) {
  stored.whenOthersWrite(prefix, (key, was, is) => {
    const now = tapOf(key, is);
    action(!now || now.takenBack ? tapOf(key, was)?.command : undefined);
  });
}

/** What may rightly be said again while the first still waits: each one counts. */
const EACH_COUNTS = new Set(['note', 'still-at-it', 'read-temperature', 'read-room', 'read-pour', 'extend-activity']);

/** What a command is about. */
function subjects({ seat, with: other, activity, seq }) {
  const named = [seat && `seat ${seat}`, other && `seat ${other}`, activity && `activity ${activity}`, seq && `tap ${seq}`]
    .filter(Boolean);
  return named.length === 0 ? ['class'] : named;
}

/**
 * Whether a wish says again what was last said about the same seat. Pause, resume, pause are three wishes.
 * @param {Omit<Command, 'commandId' | 'at'>} wish
 */
export function waitsAlready(wish) {
  if (EACH_COUNTS.has(wish.type)) return false;
  const about = subjects(wish);
  const last = waiting().filter((tap) => subjects(tap.command).some((subject) => about.includes(subject))).pop();
  return last !== undefined && bare(last.command) === bare(wish);
}

function bare({ commandId, at, clocks, ...rest }) {
  return JSON.stringify(rest, Object.keys(rest).sort());
}
