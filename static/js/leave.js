// A seat leaves early: the candle gets its place on the shelf and a claim word, then the seat leaves. Needs the board at
// hand: two devices may want one place, and only the board can tell.

import { ask, command, page } from './api.js';
import { season } from './clock.js';
import * as dialogue from './dialogue.js';
import { say, submit } from './submit.js';

const AWAY = 'The board cannot be reached just now; nothing was lost. Try again.';
/** What the instructor types there and the board does not know. */
const TYPED = ['leave-name', 'leave-collect-by'];

const body = () => document.getElementById('leave-body');
const answer = () => document.getElementById('leave-answer');

/** @param {string} seat */
const addressOf = (seat) => `/classes/${encodeURIComponent(document.body.dataset.class)}/seats/${seat}/leave`;

/** @param {string} seat @returns {Promise<boolean>} whether the board was there to ask for it */
async function showForm(seat) {
  const form = await page(addressOf(seat));
  if (form.ok) body().replaceChildren(...form.value.body.childNodes);
  return form.ok;
}

/** @param {string} seat @returns {Promise<boolean>} whether the board was there to ask for it */
export async function open(seat) {
  if (!await showForm(seat)) return false;
  dialogue.close('seat-sheet');
  dialogue.open('leave-dialog');
  document.getElementById('leave-place')?.focus();
  return true;
}

/** The places and the word afresh, what was typed kept. @param {string} seat @param {string} words why */
async function again(seat, words) {
  const typed = TYPED.map((id) => [id, document.getElementById(id)?.value ?? '']);
  if (!await showForm(seat)) return say(answer(), AWAY);
  for (const [id, value] of typed) {
    const field = document.getElementById(id);
    if (field && value) field.value = value;
  }
  return say(answer(), words);
}

/** @param {HTMLFormElement} form */
function send({ dataset: { seat }, elements }) {
  return command(`/api${addressOf(seat)}`, {
    shelf: elements.place.selectedOptions[0].dataset.shelf,
    place: Number(elements.place.value),
    claim: elements.claim.value.trim(),
    name: elements.name.value.trim(),
    collectBy: elements.collectBy.value,
  });
}

/** @param {HTMLFormElement} form @param {import('./api.js').Refused} refusal */
function refusedFor(form, { status, words }) {
  return status === 409 ? again(form.dataset.seat, words) : say(answer(), status === 0 ? AWAY : words);
}

function day(stamp, withTime) {
  const form = { weekday: 'short', day: 'numeric', month: 'short', timeZone: document.body.dataset.zone };
  const time = { hour: '2-digit', minute: '2-digit' };
  const format = new Intl.DateTimeFormat('en-GB', withTime ? { ...form, ...time } : form);
  const which = withTime ? season(new Date(stamp), (at) => format.format(at)) : '';
  return format.format(new Date(stamp)) + (which && `${which} time`);
}

function done(entry) {
  body().querySelector('.leave__form').hidden = true;
  document.getElementById('leave-done-place').textContent = `${entry.shelf} ${entry.place}`;
  document.getElementById('leave-done-word').textContent = entry.claim;
  document.getElementById('leave-done-ready').textContent = day(entry.readyFrom, true);
  document.getElementById('leave-done-by').textContent = day(entry.collectBy, false);
  document.getElementById('leave-tag').href = entry.tag;
  document.getElementById('leave-done').hidden = false;
  document.getElementById('leave-tag').focus();
}

async function draw() {
  const word = await ask('/api/shelf/claim-words');
  if (word.ok) document.getElementById('leave-claim').value = word.value.claim; // else the word that is there will do
}

export function start() {
  document.addEventListener('click', (event) => {
    if (event.target.closest('#leave-draw')) draw();
  });
  document.addEventListener('submit', (event) => {
    const form = event.target;
    if (form.id !== 'leave-form') return;
    event.preventDefault();
    submit(form, answer(), () => send(form), done, (refusal) => refusedFor(form, refusal));
  });
}
