// Keeps a page at an address that stays, such as /wall, with the class that is the one to show. The page's stream tells
// which that is, whenever it is another; while no stream speaks the board is asked now and then. A wall moves on by itself. A table or a
// helper's phone is never taken from a class that still runs, nor while a dialogue is open or taps wait to be sent: there it
// offers the other class in a line of its own. A wall at a class's own address goes by the studio alone.

import { ask, jsonOf } from './api.js';
import { waiting } from './box.js';
import { anyOpen } from './dialogue.js';
import { isLive } from './live.js';

const EVERY_MS = 10_000;
/** A network that swallows a question is given up on before the next is due, so that none pile up before the taps. */
const PATIENCE_MS = 8_000;
const HANDS = new Set(['instructor', 'helper']);

/** @typedef {{id: string, name: string}} Named */
/** @typedef {{mark: string, studio: string, class?: Named, running: Named[]}} Told */

const { follows, mark, class: shown, screen } = document.body.dataset;

let asking = false;
/** What was told last. @type {Told | undefined} */
let last;
/** What is offered now, so that a line that a finger is on or that has the focus is left alone. */
let offered = '';

/** @param {Told} told */
function mayLeave(told) {
  if (!HANDS.has(screen)) return true;
  const runs = (id) => told.running.some((one) => one.id === id);
  return Boolean(told.class) && runs(told.class.id) && !runs(shown)
    && !anyOpen() && waiting().length === 0;
}

/** @param {Told} told */
function offer(told) {
  const place = document.getElementById('elsewhere');
  if (!place) return;
  const others = told.running.filter((one) => one.id !== shown);
  const next = told.class && told.class.id !== shown && others.length === 0 ? [told.class] : [];
  const now = JSON.stringify([others, next]);
  if (now === offered) return;
  offered = now;
  const links = [...others, ...next].map(({ id, name }) => {
    const link = document.createElement('a');
    link.href = `/classes/${encodeURIComponent(id)}/${screen}`;
    link.textContent = name;
    return link;
  });
  place.replaceChildren(next.length > 0 ? 'Next: ' : 'Also running: ', ...links);
  place.hidden = links.length === 0;
}

/** @param {Told} told @returns {boolean} whether another page is the one to show, and this one may go */
function goes(told) {
  return (follows ? told.mark : told.studio) !== mark && mayLeave(told);
}

/** A page that goes is fetched anew: the board is asked first whether it can be. @param {Told} told by the stream */
function heard(told) {
  last = told;
  if (goes(told)) look(); else offer(told);
}

async function look() {
  if (document.hidden || asking) return;
  if (isLive() && last && !goes(last)) return; // while one goes by the stream, what kept it from going may be over
  asking = true;
  const outcome = await ask('/api/shown', { patience: PATIENCE_MS });
  asking = false;
  if (!outcome.ok) return; // out of reach: asked again
  if (goes(outcome.value)) location.reload(); else offer(outcome.value);
}

export function start() {
  if (!mark) return;
  // a link that pairs, opened by a device that is paired already: its key is not left in the bar
  if (follows && location.hash) history.replaceState(null, '', location.pathname);
  document.addEventListener('board:shown', (event) => heard(jsonOf(event.detail)));
  setInterval(look, EVERY_MS);
  document.addEventListener('visibilitychange', look);
  window.addEventListener('online', look);
}
