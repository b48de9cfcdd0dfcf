// A seat leaves early: the candle gets its place on the shelf and a claim word, then the seat leaves. Needs the board at
// hand: two devices may want one place, and only the board can tell.

import { season } from './clock.js';
import { tell } from './status.js';
import { token } from './token.js';

let commandId = '';

const dialog = () => document.getElementById('leave-dialog');
const body = () => document.getElementById('leave-body');

const classPath = () => encodeURIComponent(document.body.dataset.class);

/** @param {number} seat */
async function fetchForm(seat) {
  const answer = await fetch(`/classes/${classPath()}/seats/${seat}/leave`,
    { credentials: 'same-origin', headers: { Accept: 'text/html' } });
  if (!answer.ok) throw new Error(String(answer.status));
  const parsed = new DOMParser().parseFromString(await answer.text(), 'text/html');
  body().replaceChildren(...parsed.body.childNodes);
}

/** @param {number} seat */
async function open(seat) {
  try {
    await fetchForm(seat);
  } catch {
    tell(`Seat ${seat} cannot leave by the shelf just now: the board cannot be reached.`);
    return;
  }
  commandId = token();
  document.getElementById('seat-sheet')?.close();
  dialog().showModal();
  document.getElementById('leave-place')?.focus();
}

/** The places and the word afresh, what was typed kept. */
async function again(seat, words) {
  commandId = token(); // what is sent next is another wish
  const name = document.getElementById('leave-name')?.value ?? '';
  const day = document.getElementById('leave-collect-by')?.value ?? '';
  await fetchForm(seat);
  const nameField = document.getElementById('leave-name');
  if (nameField) nameField.value = name;
  const dayField = document.getElementById('leave-collect-by');
  if (dayField && day) dayField.value = day;
  document.getElementById('leave-answer').textContent = words;
}

/** @param {HTMLFormElement} form */
async function submit(form) {
  const seat = form.dataset.seat;
  const place = form.elements.place;
  const wish = {
    commandId,
    shelf: place.selectedOptions[0].dataset.shelf,
    place: Number(place.value),
    claim: form.elements.claim.value.trim(),
    name: form.elements.name.value.trim(),
    collectBy: form.elements.collectBy.value,
  };
  const button = form.querySelector('[type=submit]');
  button.disabled = true;
  try {
    const answer = await fetch(`/api/classes/${classPath()}/seats/${seat}/leave`, {
      method: 'POST',
      headers: { 'Content-Type': 'application/json', Accept: 'application/json' },
      body: JSON.stringify(wish),
      credentials: 'same-origin',
    });
    const said = await answer.json();
    if (answer.ok) return done(said);
    const words = said.detail ?? said.title ?? 'That was not possible.';
    if (answer.status === 409) await again(seat, words);
    else document.getElementById('leave-answer').textContent = words;
  } catch {
    document.getElementById('leave-answer').textContent = 'The board cannot be reached just now; nothing was lost. Try again.';
  } finally {
    button.disabled = false;
  }
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
  try {
    const answer = await fetch('/api/shelf/claim-words', { credentials: 'same-origin' });
    if (answer.ok) document.getElementById('leave-claim').value = (await answer.json()).claim;
  } catch { /* the word that is there will do */ }
}

export function start() {
  document.addEventListener('click', (event) => {
    const opener = event.target.closest('[data-leave-seat]');
    if (opener) open(Number(opener.dataset.leaveSeat));
    if (event.target.closest('#leave-draw')) draw();
  });
  document.addEventListener('submit', (event) => {
    if (event.target.id !== 'leave-form') return;
    event.preventDefault();
    submit(event.target);
  });
}
