// What is ticked off. A press shows at once and is sent; what could not be sent waits, also over a reload, and goes out as
// soon as the board is back. What the board says of everything else wins.

import { ask } from '../api.js';
import { carried } from '../carried.js';
import * as clock from '../clock.js';
import * as live from '../live.js';
import { say, tell } from '../status.js';
import * as stored from '../stored.js';

/** @typedef {{revision: number, ticks: Record<string, {by: string, at: string}>}} Ticked */

const RETRY_MS = 5_000;
const classId = document.body.dataset.class;
const KEY = stored.prepOf(classId);

/** @type {Ticked} */
let board = { revision: 0, ticks: {} };
/** What was pressed here and is not acknowledged, by item. @type {Map<string, boolean>} */
const waiting = new Map();
/** @type {Set<string>} */
const underWay = new Set();
/** Answers of a board that was started anew count from the beginning. */
let answered = 0;

function recall() {
  try {
    for (const [item, done] of Object.entries(JSON.parse(stored.read(KEY) || '{}'))) waiting.set(item, done === true);
  } catch {
    stored.drop(KEY); // nothing of ours
  }
}

function keep() {
  stored.write(KEY, waiting.size > 0 ? JSON.stringify(Object.fromEntries(waiting)) : '');
  const words = waiting.size === 1 ? 'One thing on the lists is not sent yet.'
    : `${waiting.size} things on the lists are not sent yet.`;
  say('taps', waiting.size > 0 && !live.isLive() ? words : '');
}

/** @param {Ticked} ticked */
function heard(ticked) {
  if (ticked.revision < answered) return; // on its way when a newer answer was given
  board = ticked;
  show();
}

/** @param {{by: string, at: string}} tick */
function who({ by, at }) {
  return `${by || 'a helper'}, ${clock.clockWords(new Date(at))}`;
}

function show() {
  for (const box of document.querySelectorAll('[data-tick]')) {
    const item = box.dataset.tick;
    const done = waiting.get(item) ?? item in board.ticks;
    if (box.checked !== done) box.checked = done;
    const words = waiting.has(item) ? (live.isLive() ? '' : 'not sent yet') : done ? who(board.ticks[item]) : '';
    const place = box.parentElement.querySelector('[data-who]');
    if (place.textContent !== words) place.textContent = words;
  }
  for (const tally of document.querySelectorAll('[data-tally]')) {
    const boxes = [...tally.parentElement.nextElementSibling.querySelectorAll('[data-tick]')];
    const words = `${boxes.filter((box) => box.checked).length} of ${boxes.length} done`;
    if (tally.textContent !== words) tally.textContent = words;
  }
}

/** @param {string} item */
async function send(item) {
  if (underWay.has(item)) return;
  underWay.add(item);
  const done = waiting.get(item);
  const outcome = await ask(`/api/classes/${classId}/prep/ticks/${encodeURIComponent(item)}`,
    done ? { method: 'PUT', body: {} } : { method: 'DELETE' });
  underWay.delete(item);
  if (outcome.ok) {
    answered = Math.max(answered, outcome.value.revision);
    if (waiting.get(item) === done) waiting.delete(item);
    heard(outcome.value);
  } else if (outcome.status >= 400 && outcome.status < 500) {
    waiting.delete(item);
    tell(outcome.words);
  }
  keep();
  show();
  if (outcome.ok && waiting.has(item)) send(item); // pressed again meanwhile
}

function sendAll() {
  for (const item of waiting.keys()) send(item);
}

export function start() {
  recall();
  board = carried('ticks') ?? board;
  document.addEventListener('change', (event) => {
    if (!event.target.matches('[data-tick]')) return;
    waiting.set(event.target.dataset.tick, event.target.checked);
    keep();
    show();
    send(event.target.dataset.tick);
  });
  document.addEventListener('htmx:sseMessage', (event) => {
    if (event.target.id === 'ticks') heard(carried('ticks') ?? board); else show();
  });
  live.onOpen(() => { answered = 0; sendAll(); keep(); show(); });
  setInterval(() => { if (waiting.size > 0) sendAll(); }, RETRY_MS);
  sendAll();
  keep();
  show();
}
