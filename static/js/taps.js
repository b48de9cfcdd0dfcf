// The outbox. A tap becomes a command with an id of its own, is kept in this browser until the server has it, and is sent
// in order, one at a time. The id makes repeating harmless: the server counts it once.

import * as clock from './clock.js';
import { onOpen } from './live.js';
import { say, tell } from './status.js';

/**
 * @typedef {{commandId: string, type: string, at: string, seat?: number, step?: string, seq?: number, to?: string|number,
 *   with?: number, helper?: string, name?: string, text?: string, celsius?: number, on?: boolean}} Command
 * @typedef {{key: string, command: Command}} Kept
 */

const QUIET_REFUSALS = ['already-finished', 'already-so'];
const LEASE_MS = 15_000;
const TIMEOUT_MS = 10_000;
const LONGEST_WAIT_MS = 30_000;

const classId = document.body.dataset.class;
const prefix = `benchpace.tap.${classId}.`;
const leaseKey = `benchpace.sender.${classId}`;
const page = token();

let sending = false;
let tries = 0;
let retryTimer = 0;
let unpaired = false;
/** For browsers that allow no storage: the taps of this page only. @type {Map<string, string>} */
const memory = new Map();
/** @type {((kept: Kept[], settled?: Command) => void)[]} */
const watchers = [];

/** 128 random bits. crypto.randomUUID is missing on plain http. */
function token() {
  return Array.from(crypto.getRandomValues(new Uint8Array(16)), (b) => b.toString(16).padStart(2, '0')).join('');
}

/** @param {(kept: Kept[], settled?: Command) => void} watcher told what is unsent, whenever that changes */
export function watchTaps(watcher) {
  watchers.push(watcher);
}

/** @returns {Kept[]} in the order of their taps */
export function kept() {
  /** @type {Kept[]} */
  const all = [];
  const read = (key, value) => {
    try {
      all.push({ key, command: JSON.parse(value) });
    } catch {
      drop(key); // not one of ours
    }
  };
  for (const [key, value] of memory) read(key, value);
  try {
    for (const key of Object.keys(localStorage)) {
      if (key.startsWith(prefix)) read(key, localStorage.getItem(key));
    }
  } catch { /* no storage: memory is all there is */ }
  return all.sort((a, b) => (a.key < b.key ? -1 : 1));
}

function keep(key, value) {
  try {
    localStorage.setItem(key, value);
  } catch {
    memory.set(key, value);
  }
}

function drop(key) {
  memory.delete(key);
  try {
    localStorage.removeItem(key);
  } catch { /* it was in memory */ }
}

/** The same wish twice in the box is one wish. */
function sameWish(a, b) {
  const bare = ({ commandId, at, ...rest }) => JSON.stringify(rest, Object.keys(rest).sort());
  return bare(a) === bare(b);
}

let last = 0;

/**
 * Puts a command in the box and starts sending.
 * @param {Omit<Command, 'commandId' | 'at'>} wish
 * @returns {boolean} false if the very same wish waits already
 */
export function send(wish) {
  if (wish.type !== 'note' && kept().some((k) => sameWish(k.command, wish))) return false;
  const command = { commandId: token(), at: clock.now().toISOString(), ...wish };
  // Ordered by the device's steady clock, so that taps keep their order whatever the server's time says.
  last = Math.max(last + 1, Date.now());
  keep(`${prefix}${String(last).padStart(15, '0')}-${command.commandId}`, JSON.stringify(command));
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

/** Only one page of a browser sends at a time. Should two slip through, the command ids make it harmless. */
function takeLease() {
  try {
    const [owner, until] = (localStorage.getItem(leaseKey) ?? '').split(' ');
    if (owner && owner !== page && Number(until) > Date.now() && Number(until) < Date.now() + 2 * LEASE_MS) return false;
    localStorage.setItem(leaseKey, `${page} ${Date.now() + LEASE_MS}`);
  } catch { /* no storage, no other page's taps */ }
  return true;
}

function dropLease() {
  try {
    if ((localStorage.getItem(leaseKey) ?? '').startsWith(page)) localStorage.removeItem(leaseKey);
  } catch { /* none was taken */ }
}

/** Sends what is in the box until it is empty or the server cannot be reached. */
export async function flush() {
  if (sending || unpaired) return;
  sending = true;
  clearTimeout(retryTimer);
  const slow = setTimeout(tellUnsent, 1_500);
  try {
    for (let next = kept()[0]; next; next = kept()[0]) {
      if (!takeLease()) return retryLater(1_000);
      if (!await deliver(next)) return;
      tries = 0;
    }
  } finally {
    clearTimeout(slow);
    dropLease();
    sending = false;
  }
}

/**
 * @param {Kept} tap
 * @returns {Promise<boolean>} whether to go on with the next one
 */
async function deliver(tap) {
  let answer;
  try {
    answer = await post(tap.command);
  } catch {
    return retryLater();
  }
  if (answer.ok) return settle(tap);
  if (answer.status === 401 || answer.status === 403) {
    unpaired = true;
    tellUnsent();
    say('pairing', 'This device is no longer paired.', { href: '/', words: 'Pair this device again' });
    return false;
  }
  if (answer.status === 429 || answer.status === 408 || answer.status >= 500) {
    return retryLater(Number(answer.headers.get('Retry-After')) * 1000);
  }
  await explain(answer);
  return settle(tap);
}

function settle(tap) {
  drop(tap.key);
  changed(tap.command);
  tellIfFewer();
  return true;
}

function tellIfFewer() {
  if (document.getElementById('status-words')?.textContent.includes('not sent yet')) tellUnsent();
}

async function post(command) {
  const stop = new AbortController();
  const timer = setTimeout(() => stop.abort(), TIMEOUT_MS);
  try {
    return await fetch(`/api/classes/${encodeURIComponent(classId)}/commands`, {
      method: 'POST',
      headers: { 'Content-Type': 'application/json', Accept: 'application/json' },
      body: JSON.stringify(command),
      credentials: 'same-origin',
      signal: stop.signal,
    });
  } finally {
    clearTimeout(timer);
  }
}

/** @param {Response} answer a refusal, as problem+json */
async function explain(answer) {
  let problem = {};
  try {
    problem = await answer.json();
  } catch { /* no words came with it */ }
  if (QUIET_REFUSALS.some((type) => String(problem.type ?? '').endsWith(type))) return;
  tell(problem.detail ?? problem.title ?? 'That was not possible.');
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
  window.addEventListener('storage', (event) => { if (event.key?.startsWith(prefix)) { changed(); flush(); } });
  window.addEventListener('pagehide', dropLease);
  flush();
}
