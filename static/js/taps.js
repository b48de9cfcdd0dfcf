// Sends taps. A tap becomes a command with an id of its own, is kept in the box until the board itself has answered it, and
// is sent in order, one at a time. The id makes repeating harmless: the board counts it once.

import { drop, keep, kept, rewrite, waitsAlready, whenOthersChange } from './box.js';
import * as clock from './clock.js';
import * as lease from './lease.js';
import { onOpen } from './live.js';
import { say, tell } from './status.js';
import { token } from './token.js';

/**
 * @typedef {import('./box.js').Command} Command
 * @typedef {import('./box.js').Kept} Kept
 * @typedef {{status: number, said: Record<string, unknown>, waitMs: number}} Reply
 */

const QUIET_REFUSALS = ['already-finished', 'already-so'];
/** Refusals of the way here, not of the tap: it is kept until there is a better way. */
const NOT_FROM_HERE = {
  'no-such-class': 'The board does not know this class; your taps stay on this device.',
  'foreign-host': 'The board does not answer to the address of this page; your taps stay on this device.',
  'foreign-origin': 'The board does not take taps from this address; they stay on this device.',
};
const TIMEOUT_MS = 10_000;
const LONGEST_WAIT_MS = 30_000;
const LEASE_WAIT_MS = 1_000;
const JUST_NOW_MS = 5_000;

let sending = false;
let tries = 0;
let retryTimer = 0;
let unpaired = false;
/** When taps were made whose time was in doubt, by key, on the browser's count. @type {Map<string, number>} */
const doubted = new Map();
/** @type {((kept: Kept[], settled?: Command) => void)[]} */
const watchers = [];

export { kept };

/** @param {(kept: Kept[], settled?: Command) => void} watcher told what is unsent, whenever that changes */
export function watchTaps(watcher) {
  watchers.push(watcher);
}

/**
 * Puts a command in the box and starts sending.
 * @param {Omit<Command, 'commandId' | 'at'>} wish
 * @returns {boolean} false if the very same wish waits already
 */
export function send(wish) {
  if (waitsAlready(wish)) return false;
  const key = keep({ commandId: token(), at: clock.now().toISOString(), ...wish });
  if (!clock.sure()) doubted.set(key, performance.now());
  changed();
  flush();
  return true;
}

/** @param {Command} [settled] */
function changed(settled) {
  const now = kept();
  for (const watcher of watchers) watcher(now, settled);
  if (now.length === 0) say('taps', '');
}

/** Says how many taps wait, once it has taken longer than a blink. */
function tellUnsent() {
  const waiting = kept().length;
  say('taps', waiting === 0 ? '' : waiting === 1 ? '1 tap not sent yet.' : `${waiting} taps not sent yet.`);
}

/** Sends what is in the box until it is empty or the board cannot be reached. */
export async function flush() {
  if (sending || unpaired) return;
  sending = true;
  clearTimeout(retryTimer);
  const slow = setTimeout(tellUnsent, 1_500);
  try {
    for (let next = kept()[0]; next; next = kept()[0]) {
      if (!lease.take()) {
        retryTimer = setTimeout(flush, LEASE_WAIT_MS);
        return;
      }
      if (!await deliver(next)) return;
      tries = 0;
    }
  } finally {
    clearTimeout(slow);
    lease.giveBack();
    sending = false;
  }
}

/**
 * @param {Kept} tap
 * @returns {Promise<boolean>} whether to go on with the next one
 */
async function deliver(tap) {
  let reply;
  try {
    reply = await post(tap);
  } catch {
    return retryLater();
  }
  const { status, said, waitMs } = reply;
  if (status === 200 && Number.isInteger(said.seq)) return accepted(tap);
  const problem = /^urn:benchpace:([\w-]+)$/.exec(String(said.type ?? ''))?.[1];
  if (status === 401 && problem) return pairAgain();
  // What does not speak as the board does is something on the way, such as the sign-in page of a network.
  if (!problem || status === 429 || status === 408 || status >= 500) return retryLater(waitMs);
  if (Object.hasOwn(NOT_FROM_HERE, problem)) {
    say('kept', NOT_FROM_HERE[problem]);
    return retryLater(LONGEST_WAIT_MS);
  }
  if (problem === 'outside-class' && tap.command.at) return withoutTime(tap);
  if (!QUIET_REFUSALS.includes(problem)) tell(said.detail ?? said.title ?? 'That was not possible.');
  return settle(tap);
}

/** @param {Kept} tap @returns {true} */
function accepted(tap) {
  if (!tap.command.at) {
    const whose = tap.command.seat ? `Seat ${tap.command.seat}: the` : 'The';
    tell(`${whose} tap counts from when it reached the board, as this device had another time.`);
  }
  return settle(tap);
}

/** The time of the tap cannot be, but the tap can: it is sent once more and the board takes its own time. */
function withoutTime({ key, command: { at, ...rest } }) {
  clock.doubt();
  rewrite(key, rest);
  return true;
}

/** @returns {false} */
function pairAgain() {
  unpaired = true;
  tellUnsent();
  say('pairing', 'This device is no longer paired.', { href: '/', words: 'Pair this device again' });
  return false;
}

/** @param {Kept} tap @returns {true} */
function settle(tap) {
  drop(tap.key);
  doubted.delete(tap.key);
  say('kept', '');
  changed(tap.command);
  tellIfFewer();
  return true;
}

function tellIfFewer() {
  if (document.getElementById('status-words')?.textContent.includes('not sent yet')) tellUnsent();
}

/** A tap made just now, before the board's time was known again, goes without one: the board's own is nearer. */
function asSent({ key, command }) {
  const { at, ...timeless } = command;
  return performance.now() - (doubted.get(key) ?? -Infinity) < JUST_NOW_MS ? timeless : command;
}

/** @param {Kept} tap @returns {Promise<Reply>} what was answered; throws if nothing was, or if it led elsewhere */
async function post(tap) {
  const stop = new AbortController();
  const timer = setTimeout(() => stop.abort(), TIMEOUT_MS);
  try {
    const answer = await fetch(`/api/classes/${encodeURIComponent(document.body.dataset.class)}/commands`, {
      method: 'POST',
      headers: { 'Content-Type': 'application/json', Accept: 'application/json' },
      body: JSON.stringify(asSent(tap)),
      credentials: 'same-origin',
      redirect: 'error',
      signal: stop.signal,
    });
    return {
      status: answer.status,
      said: read(await answer.text()),
      waitMs: Number(answer.headers.get('Retry-After')) * 1000,
    };
  } finally {
    clearTimeout(timer);
  }
}

/** @param {string} text @returns {Record<string, unknown>} nothing for what is no JSON */
function read(text) {
  try {
    return JSON.parse(text) ?? {};
  } catch {
    return {};
  }
}

/** @param {number} [wait] in ms @returns {false} */
function retryLater(wait) {
  tries += 1;
  tellUnsent();
  const backOff = Math.min(LONGEST_WAIT_MS, 1_000 * 2 ** Math.min(tries - 1, 6));
  clearTimeout(retryTimer);
  retryTimer = setTimeout(flush, wait > 0 ? wait : backOff);
  return false;
}

/** Shows what an earlier visit left unsent and sends it. */
export function start() {
  changed();
  if (kept().length > 0) tellUnsent();
  onOpen(() => { unpaired = false; say('pairing', ''); flush(); });
  window.addEventListener('online', () => flush());
  whenOthersChange((settled) => { changed(settled); flush(); });
  window.addEventListener('pagehide', lease.giveBack);
  flush();
}
