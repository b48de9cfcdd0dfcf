// What this page foresees while its taps wait: the board's last word, the taps in their order, and what comes of both.

import { carried, traits } from '../carried.js';
import * as clock from '../clock.js';
import { isLive } from '../live.js';
import { failing, waiting, watchTaps } from '../taps.js';
import { foresee } from './foresee.js';

/**
 * @typedef {import('./foresee.js').Shown} Shown
 * @typedef {import('./foresee.js').Tap} Tap
 * @typedef {import('./table.js').Step} Step
 * @typedef {{steps: Step[], base: Shown, shown: Shown, taps: Tap[]}} Foreseen base: by the board's word alone
 */

/** A tap on a good network is answered sooner than this: nothing flickers with every tap. */
const BLINK_MS = 1_500;
const AGAIN_MS = 5_000;

/** Taps that the board has answered and whose effect has not come down the stream yet. @type {Tap[]} */
let answered = [];
/** Since when a tap waits, on the browser's count; 0 while none does. */
let waitsSince = 0;
let showing = false;
let timer = 0;
/** @type {(() => void)[]} */
const watchers = [];

/** @returns {boolean} whether taps have waited for longer than a blink, so that the page shows what they come to */
export function isAhead() {
  return showing;
}

/** @returns {boolean} whether the board is out of reach, as far as this page can tell */
export function isAway() {
  return failing() || !navigator.onLine || !isLive();
}

/** @returns {Foreseen | undefined} */
export function foreseen() {
  const steps = carried('plan-steps');
  const known = carried('known');
  if (!steps || !known) return undefined;
  answered = answered.filter((tap) => tap.seq > known.seq);
  const taps = [...answered, ...waiting().map(({ command }) => ({ command }))];
  const now = clock.now().getTime();
  const seen = (/** @type {Tap[]} */ those) => foresee(steps, traits(), known, those, now);
  return { steps, taps, base: seen([]), shown: seen(taps) };
}

/** @param {() => void} watcher told whenever what is foreseen may have changed */
export function watch(watcher) {
  watchers.push(watcher);
}

function look() {
  clearTimeout(timer);
  const taps = waiting().length;
  if (taps === 0) waitsSince = 0; else waitsSince ||= performance.now();
  const long = waitsSince > 0 && performance.now() - waitsSince >= BLINK_MS;
  const unseen = showing && foreseen()?.taps.length > 0; // answered, and the screen not told yet
  showing = taps > 0 && (long || isAway() || showing) || unseen;
  for (const watcher of watchers) watcher();
  if (taps > 0 || showing) timer = setTimeout(look, long || showing ? AGAIN_MS : BLINK_MS);
}

export function start() {
  watchTaps(look);
  document.addEventListener('board:answered', (event) => {
    answered.push(event.detail);
  });
  document.addEventListener('board:stamp', look);
  window.addEventListener('offline', look);
  look();
}
