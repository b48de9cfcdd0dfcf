// Sends taps. A tap becomes a command with an id of its own, is kept in the box until the board itself has answered it, and
// is sent in order, one at a time. The id makes repeating harmless: the board counts it once.

import { jsonOf, problemIn } from './api.js';
import { drop, keep, kept, note, rewrite, still, waiting, waitsAlready, whenOthersChange } from './box.js';
import * as clock from './clock.js';
import * as lease from './lease.js';
import { onOpen } from './live.js';
import { forget, isKept } from './offline/shell.js';
import { say, tell } from './status.js';
import { token } from './token.js';

/**
 * @typedef {import('./box.js').Command} Command
 * @typedef {import('./box.js').Kept} Kept
 * @typedef {{status: number, text: string, waitMs: number}} Reply
 * @typedef {(waiting: Kept[], settled?: Command, takenBack?: boolean) => void} Watcher
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
/** The key of the tap that is being sent now. */
let onItsWay = '';
/** When taps were made whose time was in doubt, by key, on the browser's count. @type {Map<string, number>} */
const doubted = new Map();
/** @type {Watcher[]} */
const watchers = [];

export { kept, waiting };

/** @param {Watcher} watcher told what is unsent, whenever that changes */
export function watchTaps(watcher) {
  watchers.push(watcher);
}

/**
 * Puts a command in the box and starts sending.
 * @param {Omit<Command, 'commandId'>} wish made now, if it does not say when
 * @returns {boolean} false if the very same wish waits already, or an evening is only played back
 */
export function send(wish) {
  const played = document.getElementById('playback');
  if (played) {
    tell(played.dataset.told); // and nothing is kept of it
    return false;
  }
  if (waitsAlready(wish)) return false;
  const key = keep({ commandId: token(), ...clock.reading(), ...wish });
  if (!clock.sure()) doubted.set(key, performance.now());
  flush(); // on its way before the page shows that it is
  changed();
  return true;
}

/**
 * Takes a tap back that waits, the last one if none is named. One that surely never left is dropped; one that may have reached the board stays in
 * the box until the board has answered it, and is undone there then.
 * @returns {{command: Command, dropped: boolean} | undefined} what was taken back; nothing if no tap waits
 */
export function takeBack(key = '') {
  const last = key ? waiting().find((tap) => tap.key === key) : waiting().pop();
  if (!last) return undefined;
  // Another page of this browser that sends just now may have this very tap in its hands.
  const dropped = !last.tried && last.key !== onItsWay && lease.take();
  if (dropped) {
    drop(last.key);
    doubted.delete(last.key);
    if (!sending) lease.giveBack();
  } else {
    note(last.key, { takenBack: true });
  }
  changed(last.command, true);
  tellIfFewer();
  return { command: last.command, dropped };
}

/** @param {Command} [settled] @param {boolean} [takenBack] here, just now */
function changed(settled, takenBack = false) {
  const now = waiting();
  for (const watcher of watchers) watcher(now, settled, takenBack);
  if (kept().length === 0) say('taps', '');
}

/** Says how many taps wait, once it has taken longer than a blink. */
function tellUnsent() {
  const all = kept().length;
  const taps = waiting().length;
  const words = taps === 0 ? '' : taps === 1 ? '1 tap not sent yet.' : `${taps} taps not sent yet.`;
  say('taps', all > taps ? `${words} Undo not sent yet.`.trim() : words);
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
  if (tap.takenBack && !tap.tried) return settle(tap);
  let reply;
  onItsWay = tap.key;
  // What fails while the device has no network at all never left it; any other failure may be of the answer only.
  if (navigator.onLine) note(tap.key, { tried: true });
  try {
    reply = await post(tap);
  } catch {
    const now = still(tap.key);
    return now?.takenBack && !now.tried ? settle(tap) : retryLater();
  } finally {
    onItsWay = '';
  }
  const { status, text, waitMs } = reply;
  const { seq } = jsonOf(text);
  const takenBack = still(tap.key)?.takenBack;
  if (status === 200 && Number.isInteger(seq)) return takenBack ? undoThere(tap, seq) : accepted(tap, seq);
  const { problem, words } = problemIn(text);
  if (status === 401 && problem) return pairAgain();
  // What does not speak as the board does is something on the way, such as the sign-in page of a network.
  if (!problem || status === 429 || status === 408 || status >= 500) return retryLater(waitMs);
  if (Object.hasOwn(NOT_FROM_HERE, problem)) {
    say('kept', NOT_FROM_HERE[problem]);
    return retryLater(LONGEST_WAIT_MS);
  }
  if (problem === 'outside-class' && tap.command.at) return withoutTime(tap);
  if (!takenBack && !QUIET_REFUSALS.includes(problem)) tell(words);
  return settle(tap);
}

/** @param {Kept} tap @param {number} seq the number of its event @returns {true} */
function accepted(tap, seq) {
  document.dispatchEvent(new CustomEvent('board:answered', { detail: { command: tap.command, seq } }));
  if (!tap.command.at) {
    const whose = tap.command.seat ? `Seat ${tap.command.seat}: the` : 'The';
    tell(`${whose} tap counts from when it reached the board, as this device had another time.`);
  }
  return settle(tap);
}

/** The time of the tap cannot be, but the tap can: it is sent once more and the board takes its own time. */
function withoutTime({ key, command: { at, ...rest } }) {
  clock.doubt();
  const takenBack = still(key)?.takenBack;
  rewrite(key, takenBack ? { ...rest, takenBack } : rest);
  return true;
}

/** The board has a tap that was taken back meanwhile: its undo takes its place. @param {Kept} tap @param {number} seq */
function undoThere({ key }, seq) {
  rewrite(key, { commandId: token(), at: clock.now().toISOString(), type: 'undo', seq });
  doubted.delete(key);
  return true;
}

/** @returns {false} */
function pairAgain() {
  unpaired = true;
  forget();
  tellUnsent();
  say('pairing', 'This device is no longer paired.', { href: '/', words: 'Pair this device again' });
  return false;
}

/** @returns {boolean} whether the board could not be reached when a tap was last sent */
export function failing() {
  return tries > 0;
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

/**
 * Not by api.js: the queue tells a tap that got no answer from one that may have, and waits as long as the board says.
 * @param {Kept} tap @returns {Promise<Reply>} what was answered; throws if nothing was, or if it led elsewhere
 */
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
      text: await answer.text(),
      waitMs: Number(answer.headers.get('Retry-After')) * 1000,
    };
  } finally {
    clearTimeout(timer);
  }
}

/** @param {number} [wait] in ms @returns {false} */
function retryLater(wait) {
  tries += 1;
  changed();
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
  window.addEventListener('beforeunload', (event) => {
    // the taps would wait in this browser, but the page could not be opened again to make the next
    if (kept().length > 0 && failing() && !unpaired && !isKept()) event.preventDefault();
  });
  flush();
}
