// An evening that is played back: the band that marks it, the ways to move it along, and the sentence that a tap gets. Its
// time comes down the stream like any class's; this module only asks the board for another speed or place.

import { ask } from './api.js';
import * as clock from './clock.js';
import * as dialogue from './dialogue.js';
import { tell } from './status.js';
import { submit } from './submit.js';

/** @typedef {{at: string, flag: boolean, note: boolean, words: string}} Mark something to look at, and when */
/** @typedef {{at?: string, speed?: number, paused?: boolean}} Wish */
/** @typedef {{rate: number, speed: number, paused: boolean, turn: number}} Playing */

/** What would change a class: it is shown as it was, and does nothing. */
const TAPS = '[data-command], [data-leave-seat], [data-open="note-dialog"], [data-open="close-dialog"], [data-open="next-dialog"]';
/** So near a thing that happened one is at it, in ms of its time. */
const AT_IT_MS = 500;
/** How often the bar follows, in ms. */
const FOLLOWS_MS = 250;
/** How long the bar waits while it is drawn along, so that the board is not asked for every pixel, in ms. */
const DRAGGED_MS = 150;
/** So long a remark stays, in ms of real time: it is longer than the name of a step, and there to be read. */
const READ_MS = 5000;
const SVG = 'http://www.w3.org/2000/svg';

const band = () => document.getElementById('playback');
const bar = () => document.getElementById('playback-at');
const id = () => document.body.dataset.playback;

/** @type {Mark[]} */
let marks = [];
/** @type {Playing | undefined} */
let playing;
let dragging = false;
let dragTimer = 0;
/** What is to be asked once what is asked now has been answered. @type {Wish | undefined} */
let wanted;
let asking = false;

const from = () => Date.parse(band().dataset.from);
const until = () => Date.parse(band().dataset.until);

/** @param {Wish} wish the newest of each kind counts */
async function set(wish) {
  wanted = { ...wanted, ...wish };
  if (asking) return;
  asking = true;
  while (wanted) {
    const body = wanted;
    wanted = undefined;
    const outcome = await ask(`/api/playbacks/${encodeURIComponent(id())}`, { method: 'PUT', body });
    if (!outcome.ok) tell(outcome.words);
  }
  asking = false;
}

/** @param {number} at in ms */
function moveTo(at) {
  set({ at: new Date(Math.min(until(), Math.max(from(), at))).toISOString() });
}

function stands() {
  return playing ? playing.rate === 0 : Number(band().dataset.rate) === 0;
}

/** At its end playing begins again. */
function play() {
  const over = clock.now().getTime() >= until();
  set(over ? { at: band().dataset.from, paused: false } : { paused: !stands() });
}

/** @param {1 | -1} way */
function toMark(way) {
  const at = clock.now().getTime();
  // while it plays, what it has just passed is what one is at
  const near = AT_IT_MS * Math.max(1, 2 * (playing?.rate ?? 0));
  const found = way > 0 ? marks.find((mark) => Date.parse(mark.at) > at + AT_IT_MS)
    : marks.filter((mark) => Date.parse(mark.at) < at - near).pop();
  moveTo(found ? Date.parse(found.at) : way > 0 ? until() : from());
}

/** @param {1 | -1} way */
function faster(way) {
  const speeds = document.getElementById('playback-speed');
  const next = Math.min(speeds.options.length - 1, Math.max(0, speeds.selectedIndex + way));
  if (next === speeds.selectedIndex) return;
  speeds.selectedIndex = next;
  set({ speed: Number(speeds.value) });
}

/** @type {Record<string, () => void>} */
const KEYS = {
  p: play,
  n: () => toMark(1),
  b: () => toMark(-1),
  '+': () => faster(1),
  '-': () => faster(-1),
  Home: () => moveTo(from()),
  End: () => moveTo(until()),
};

/** Before the page's own keys: there is nothing to tap with them. @param {KeyboardEvent} event */
function pressed(event) {
  if (event.ctrlKey || event.metaKey || event.altKey || event.target.closest('input, select, textarea') || dialogue.anyOpen()) return;
  const key = event.key.length === 1 ? event.key.toLowerCase() : event.key;
  if (!Object.hasOwn(KEYS, key)) return;
  event.preventDefault();
  event.stopImmediatePropagation();
  KEYS[key]();
}

/** Before whatever else listens. @param {Event} event */
function tapped(event) {
  const tap = event.target.closest(TAPS);
  if (!tap || (event.type === 'click' && tap instanceof HTMLFormElement && !event.target.closest('[type=submit]'))) return;
  event.preventDefault();
  event.stopImmediatePropagation();
  tell(band().dataset.told);
}

/** Readers of the screen hear that a button is not for pressing. */
function dim(root = document) {
  for (const button of root.querySelectorAll(TAPS)) {
    if (!(button instanceof HTMLFormElement) && !button.hasAttribute('aria-disabled')) button.setAttribute('aria-disabled', 'true');
  }
}

/** @param {string} id @param {string} words */
function write(id, words) {
  const place = document.getElementById(id);
  if (place && place.textContent !== words) place.textContent = words;
}

function follow() {
  const at = clock.now().getTime();
  const seen = marks.filter((mark) => Date.parse(mark.at) <= at + AT_IT_MS);
  const stays = READ_MS * Math.max(1, playing?.rate || playing?.speed || 1);
  const passed = seen.filter((mark) => mark.note && at - Date.parse(mark.at) < stays).pop() ?? seen.pop();
  write('playback-said', at >= until() ? 'The evening is over.' : passed ? passed.words : '');
  if (!bar() || dragging) return;
  bar().value = String(Math.round((at - from()) / 1000));
  bar().setAttribute('aria-valuetext', clock.clockWords(new Date(at)));
}

/** @param {Playing} now */
function heard(now) {
  playing = now;
  band().classList.toggle('playback--plays', now.rate > 0);
  const button = document.getElementById('playback-play');
  button?.setAttribute('aria-label', now.rate > 0 ? 'Pause' : 'Play');
  const speeds = document.getElementById('playback-speed');
  if (speeds && document.activeElement !== speeds) speeds.value = String(now.speed);
  follow();
}

function draw() {
  const drawing = document.getElementById('playback-marks');
  if (!drawing) return;
  const whole = until() - from();
  drawing.replaceChildren(...marks.map((mark) => {
    const line = document.createElementNS(SVG, 'rect');
    line.setAttribute('class', mark.flag ? 'playback__flag' : 'playback__thing');
    line.setAttribute('x', (((Date.parse(mark.at) - from()) / whole) * 1000 - 2).toFixed(1));
    line.setAttribute('y', mark.flag ? '0' : '3');
    line.setAttribute('width', '4');
    line.setAttribute('height', mark.flag ? '10' : '7');
    return line;
  }));
}

async function look() {
  if (document.body.dataset.role !== 'instructor' && document.body.dataset.role !== 'helper') return;
  const outcome = await ask(`/api/playbacks/${encodeURIComponent(id())}`);
  if (!outcome.ok) return;
  marks = outcome.value.marks;
  draw();
  follow();
}

function dragged() {
  dragging = true;
  bar().setAttribute('aria-valuetext', clock.clockWords(new Date(from() + Number(bar().value) * 1000)));
  clearTimeout(dragTimer);
  dragTimer = setTimeout(() => moveTo(from() + Number(bar().value) * 1000), DRAGGED_MS);
}

function controls() {
  const on = (/** @type {string} */ name, /** @type {() => void} */ action) => document.getElementById(name).addEventListener('click', action);
  on('playback-play', play);
  on('playback-start', KEYS.Home);
  on('playback-end', KEYS.End);
  on('playback-earlier', KEYS.b);
  on('playback-later', KEYS.n);
  document.getElementById('playback-speed').addEventListener('change', (event) => set({ speed: Number(event.target.value) }));
  bar().addEventListener('input', dragged);
  bar().addEventListener('change', () => {
    clearTimeout(dragTimer);
    dragging = false;
    moveTo(from() + Number(bar().value) * 1000);
  });
  const stop = document.getElementById('playback-stop');
  stop.addEventListener('click', () => submit(stop, document.getElementById('playback-answer'),
    () => ask(`/api/playbacks/${encodeURIComponent(id())}`, { method: 'DELETE' }),
    () => location.assign(band().dataset.leads)));
  document.addEventListener('keydown', pressed, true);
}

/** Starts where an evening is played back; elsewhere there is nothing to do. */
export function start() {
  if (!id()) return;
  for (const kind of ['click', 'submit']) document.addEventListener(kind, tapped, true);
  dim();
  new MutationObserver((changes) => {
    for (const { target } of changes) if (target instanceof Element) dim(target);
  }).observe(document.body, { childList: true, subtree: true });
  document.addEventListener('board:playing', (event) => heard(event.detail));
  if (bar()) controls();
  band().classList.toggle('playback--plays', Number(band().dataset.rate) > 0);
  look();
  setInterval(follow, FOLLOWS_MS);
}
