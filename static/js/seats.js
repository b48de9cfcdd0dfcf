// Seats and names of a class that has begun: each change is one command, told and taken back in its place.

import { ask, command, page } from './api.js';
import * as dialogue from './dialogue.js';
import { onSubmit, submit } from './submit.js';

const id = encodeURIComponent(document.getElementById('seats-page').dataset.of);
const answer = () => document.getElementById('seats-answer');
/** The event that undo takes back. */
let last = 0;

/** @param {string} words @param {{seq: number}} [event] which can be taken back; none after an undo */
async function told(words, event) {
  const fresh = await page(location.pathname);
  if (fresh.ok) document.getElementById('seats-list').replaceWith(fresh.value.getElementById('seats-list'));
  last = event?.seq ?? 0;
  document.getElementById('said-words').textContent = words;
  document.getElementById('said-undo').hidden = !last;
  const said = document.getElementById('said');
  said.hidden = false;
  said.focus();
}

/** @param {object} wish */
const wish = (wish) => command(`/api/classes/${id}/commands`, wish);

/** @param {HTMLFormElement} form @param {string} field */
const typed = (form, field) => form.elements[field]?.value.trim() ?? '';

document.getElementById('seats-page').addEventListener('submit', (event) => {
  event.preventDefault();
  const form = event.target;
  const add = form.id === 'add-form';
  const seat = Number(add ? typed(form, 'seat') : form.dataset.seat);
  const guest = { seat, name: typed(form, 'name'), party: typed(form, 'party'), note: typed(form, 'note') };
  submit(form, answer(), () => wish(add ? { type: 'add-seat', ...guest, candle: typed(form, 'candle') }
    : { type: 'correct-guest', ...guest }), (done) => told(add ? `Seat ${seat} is added.` : `Seat ${seat} is saved.`, done));
});

document.addEventListener('click', (event) => {
  const button = event.target.closest('[data-take-away]');
  if (!button) return;
  const seat = Number(button.dataset.takeAway);
  submit(button, answer(), () => wish({ type: 'take-away-seat', seat }), (done) => told(`Seat ${seat} is taken away.`, done));
});

document.getElementById('said-undo').addEventListener('click', (event) => {
  submit(event.target, answer(), () => wish({ type: 'undo', seq: last }), () => told('That is taken back.'));
});

onSubmit('delete-form', 'delete-answer', (form) => ask(`/api/classes/${id}`, { method: 'DELETE', body: { confirm: typed(form, 'confirm') } }),
  () => location.assign('/'));

dialogue.start();
