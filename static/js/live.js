// Keeps the page live. htmx and its extension open the stream and swap what comes; this module watches over it: says
// softly when it is down, opens it anew when it went silent, and lets it rest while the page is hidden.

import { ask } from './api.js';
import * as clock from './clock.js';
import { forget, warning } from './offline/shell.js';
import * as parts from './parts.js';
import { say } from './status.js';

const SILENT_MS = 25_000;
const GIVE_UP_MS = 40_000;
const HIDDEN_MS = 120_000;
const RETRY_MS = 5_000;
/** Nothing ran on this page for so long: the device slept. */
const GAP_MS = 10_000;
/** How long the first tap after a sleep waits for the board. */
const WAKING_MS = 2_500;
/** Until what came down the stream is on the screen. */
const SWAP_MS = 60;

/** @type {EventSource | undefined} */
let source;
let heardAt = performance.now();
let openedAt = 0;
let resting = false;
/** What the stream last said of an evening that is played back. @type {object | undefined} */
let played;
let restTimer = 0;
/** When this page last looked, by the device's own clock, which goes on while it sleeps. */
let lookedAt = Date.now();
let hiddenAt = Date.now();
let caughtUp = true;
/** A tap has waited for the board in vain since the sleep: the next ones do not. */
let gaveUp = false;
/** @type {((current: boolean) => void)[]} */
const waking = [];
/** @type {(() => void)[]} */
const whenOpen = [];

/** @param {() => void} action to take each time the stream has opened */
export function onOpen(action) {
  whenOpen.push(action);
}

function slept() {
  caughtUp = false;
  gaveUp = false;
}

/** The device slept: what is on the screen may be of before, until the stream has spoken again. */
function woke() {
  slept();
  clock.doubt();
  if (source) reopen();
}

/** @returns {boolean} whether what is on the screen is of now, as far as this page can know */
export function isCurrent() {
  if (Date.now() - lookedAt > GAP_MS) {
    lookedAt = Date.now();
    woke();
  }
  return caughtUp || gaveUp;
}

/**
 * After a sleep the first tap waits for the board's word, but not for long.
 * @returns {Promise<boolean>} false if the board has not spoken in time: the tap is then one made without it
 */
export function inTime() {
  return new Promise((resolve) => {
    waking.push(resolve);
    setTimeout(() => { gaveUp = true; resolve(false); }, WAKING_MS);
  });
}

/** The parts of the screen come before the state they are of. */
function awakeAgain() {
  caughtUp = true;
  const now = waking.splice(0);
  setTimeout(() => { for (const resolve of now) resolve(true); }, SWAP_MS);
}

/** @returns {boolean} whether the board speaks to this page just now */
export function isLive() {
  return source !== undefined && source.readyState === EventSource.OPEN && performance.now() - heardAt < SILENT_MS;
}

/** @param {string} url */
function open(url) {
  source?.close();
  source = new EventSource(url);
  openedAt = performance.now();
  source.addEventListener('error', (event) => {
    // the browser's own word, not ours by which the stream is opened anew
    if (event.isTrusted && event.target.readyState === EventSource.CLOSED) signedOut(url);
  });
  source.addEventListener('open', () => {
    heardAt = performance.now();
    say('stream', '');
    say('pairing', '');
    clock.doubt();
    for (const action of whenOpen) action();
  });
  source.addEventListener('gone', gone);
  for (const name of ['state', 'beat']) source.addEventListener(name, stamped);
  source.addEventListener('shown', (event) => document.dispatchEvent(new CustomEvent('board:shown', { detail: event.data })));
  return source;
}

/** @param {MessageEvent} event */
function stamped(event) {
  let detail = event.type;
  heardAt = performance.now();
  try {
    const { now, stage, clocks, playback: playing, whole } = JSON.parse(event.data);
    if (whole === false) detail = 'at-once'; // what follows from the tap comes with a state of the same number
    if (stage) document.body.dataset.stage = stage;
    if (now) clock.heard(now, clocks, playing);
    if (playing) tellPlaying(playing);
  } catch {
    return; // a stamp that cannot be read tells no time; the next one will
  }
  say('stream', '');
  if (event.type === 'state') awakeAgain();
  document.dispatchEvent(new CustomEvent('board:stamp', { detail }));
}

/** The class was deleted: nothing more comes, and nothing here can be tapped to any end. */
function gone() {
  resting = true;
  source?.close();
  source = undefined;
  forget();
  say('stream', '');
  say('pairing', document.getElementById('playback')?.dataset.gone ?? 'This class was deleted.', { href: '/', words: 'To the start page' });
}

/** A stream that the board refused may have been refused because this device was signed out. @param {string} url */
async function signedOut(url) {
  const { status } = await ask(url, { method: 'HEAD' });
  if (status === 404) gone();
  if (status !== 401) return; // the board is away, which is said already
  forget();
  say('stream', '');
  say('pairing', 'This device was signed out.', { href: '/', words: 'Pair this device again' });
}

/** The extension opens a fresh stream, with all listeners, when its closed one reports an error. */
function reopen() {
  openedAt = performance.now();
  source?.close();
  source?.dispatchEvent(new Event('error'));
}

function watch() {
  if (!document.hidden && Date.now() - lookedAt > GAP_MS) woke();
  lookedAt = Date.now();
  if (resting || !source) return;
  const silent = performance.now() - heardAt;
  const tried = performance.now() - openedAt;
  const down = source.readyState !== EventSource.OPEN && tried > 2_000;
  if (down || silent > SILENT_MS) say('stream', `Not live: trying again.${warning()}`);
  const stuck = source.readyState === EventSource.OPEN ? silent > GIVE_UP_MS && tried > GIVE_UP_MS
    : source.readyState === EventSource.CLOSED ? tried > RETRY_MS
      : tried > GIVE_UP_MS;
  if (stuck) reopen();
}

function visibilityChanged() {
  clearTimeout(restTimer);
  if (!document.hidden) clock.doubt();
  if (document.hidden) {
    hiddenAt = Date.now();
    restTimer = setTimeout(() => { resting = true; source?.close(); }, HIDDEN_MS);
  } else if (resting) {
    resting = false;
    heardAt = performance.now();
    slept();
    reopen();
  } else if (Date.now() - hiddenAt > GAP_MS) {
    woke();
  } else if (source && source.readyState !== EventSource.OPEN) {
    reopen();
  }
}

/** @param {object} now how the evening that is played back goes on */
function tellPlaying(now) {
  played = now;
  document.dispatchEvent(new CustomEvent('board:playing', { detail: now }));
}

/** Fetched only where an evening is played back: what came down the stream meanwhile is told again. */
async function playBack() {
  const { start: begin } = await import('./playback.js');
  begin();
  if (played) tellPlaying(played);
}

/** Must run before htmx looks at the page: modules do, as they come before DOMContentLoaded. */
export function start() {
  if (document.body.dataset.playback) playBack();
  parts.start();
  window.htmx.createEventSource = open;
  clock.start((lost) => say('clock', lost ? 'Times may have moved since.' : ''));
  document.addEventListener('visibilitychange', visibilityChanged);
  window.addEventListener('online', () => { if (source && source.readyState !== EventSource.OPEN) reopen(); });
  window.addEventListener('pageshow', (event) => { if (event.persisted) location.reload(); });
  setInterval(watch, 1_000);
}
