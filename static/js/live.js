// Keeps the page live. htmx and its extension open the stream and swap what comes; this module watches over it: says
// softly when it is down, opens it anew when it went silent, and lets it rest while the page is hidden.

import * as clock from './clock.js';
import { say } from './status.js';

const SILENT_MS = 25_000;
const GIVE_UP_MS = 40_000;
const HIDDEN_MS = 120_000;
const RETRY_MS = 5_000;

/** @type {EventSource | undefined} */
let source;
let heardAt = performance.now();
let openedAt = 0;
let resting = false;
let restTimer = 0;
/** @type {(() => void)[]} */
const whenOpen = [];

/** @param {() => void} action to take each time the stream has opened */
export function onOpen(action) {
  whenOpen.push(action);
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
  source.addEventListener('open', () => {
    heardAt = performance.now();
    say('stream', '');
    clock.doubt();
    for (const action of whenOpen) action();
  });
  for (const name of ['state', 'beat']) source.addEventListener(name, stamped);
  return source;
}

/** @param {MessageEvent} event */
function stamped(event) {
  heardAt = performance.now();
  try {
    const { now } = JSON.parse(event.data);
    if (now) clock.heard(now);
  } catch {
    return; // a stamp that cannot be read tells no time; the next one will
  }
  say('stream', '');
  document.dispatchEvent(new CustomEvent('board:stamp', { detail: event.type }));
}

/** The extension opens a fresh stream, with all listeners, when its closed one reports an error. */
function reopen() {
  openedAt = performance.now();
  source?.close();
  source?.dispatchEvent(new Event('error'));
}

function watch() {
  if (resting || !source) return;
  const silent = performance.now() - heardAt;
  const tried = performance.now() - openedAt;
  const down = source.readyState !== EventSource.OPEN && tried > 2_000;
  if (down || silent > SILENT_MS) say('stream', 'Not live: trying again.');
  const stuck = source.readyState === EventSource.OPEN ? silent > GIVE_UP_MS && tried > GIVE_UP_MS
    : source.readyState === EventSource.CLOSED ? tried > RETRY_MS
      : tried > GIVE_UP_MS;
  if (stuck) reopen();
}

function visibilityChanged() {
  clearTimeout(restTimer);
  if (!document.hidden) clock.doubt();
  if (document.hidden) {
    restTimer = setTimeout(() => { resting = true; source?.close(); }, HIDDEN_MS);
  } else if (resting) {
    resting = false;
    heardAt = performance.now();
    reopen();
  } else if (source && source.readyState !== EventSource.OPEN) {
    reopen();
  }
}

/** Must run before htmx looks at the page: modules do, as they come before DOMContentLoaded. */
export function start() {
  window.htmx.createEventSource = open;
  clock.start((lost) => say('clock', lost ? 'Times may have moved since.' : ''));
  document.addEventListener('visibilitychange', visibilityChanged);
  window.addEventListener('online', () => { if (source && source.readyState !== EventSource.OPEN) reopen(); });
  window.addEventListener('pageshow', (event) => { if (event.persisted) location.reload(); });
  setInterval(watch, 1_000);
}
