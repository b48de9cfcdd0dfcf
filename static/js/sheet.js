// The seat sheet: everything about one seat, fetched when opened and again after every change of the class.

import * as clock from './clock.js';
import * as degrees from './degrees.js';
import { tell } from './status.js';

let seat = 0;
let asked = 0;

const dialog = () => document.getElementById('seat-sheet');
const body = () => document.getElementById('sheet-body');

/** @param {number} number */
export async function openSheet(number) {
  if (!document.querySelector(`[data-place="${number}"]`)) return;
  const fresh = number !== seat || !dialog().open;
  seat = number;
  if (fresh) body().replaceChildren();
  if (!dialog().open) dialog().showModal();
  await refresh(fresh);
}

/** @param {boolean} fresh a sheet just opened, with nothing typed into it */
async function refresh(fresh) {
  const turn = ++asked;
  try {
    const answer = await fetch(`/classes/${encodeURIComponent(document.body.dataset.class)}/seats/${seat}/sheet`,
      { credentials: 'same-origin', headers: { Accept: 'text/html' } });
    if (!answer.ok) throw new Error(String(answer.status));
    const html = await answer.text();
    if (turn === asked && dialog().open) show(html, fresh);
  } catch {
    if (turn !== asked || !fresh) return;
    dialog().close();
    tell(`The sheet of seat ${seat} cannot be fetched just now.`);
  }
}

/** Puts the new sheet in place, keeping what was typed, what was unfolded and where the focus was. */
function show(html, fresh) {
  const typed = new Map();
  const unfolded = new Set();
  const focus = document.activeElement?.id;
  if (!fresh) {
    for (const field of body().querySelectorAll('input, select, textarea')) {
      const initial = field.defaultValue ?? field.querySelector('option')?.value;
      if (field.id && field.value !== initial) typed.set(field.id, field.value);
    }
    for (const part of body().querySelectorAll('details[open]')) unfolded.add(part.id);
  }
  // The server's own escaped template, the same that htmx swaps elsewhere.
  const parsed = new DOMParser().parseFromString(html, 'text/html');
  body().replaceChildren(...parsed.body.childNodes);
  for (const [id, value] of typed) { const field = document.getElementById(id); if (field) field.value = value; }
  for (const id of unfolded) document.getElementById(id)?.setAttribute('open', '');
  clock.tick(body());
  degrees.show(body());
  if (fresh) document.getElementById('sheet-close')?.focus();
  else if (focus) document.getElementById(focus)?.focus({ preventScroll: true });
}

export function start() {
  document.addEventListener('click', (event) => {
    const opener = event.target.closest('[data-open-seat]');
    if (opener) openSheet(Number(opener.dataset.openSeat));
  });
  // A note or a corrected tap changes the sheet but not the tile, so every change of the class fetches it anew.
  document.addEventListener('board:stamp', (event) => {
    if (event.detail === 'state' && dialog().open) refresh(false);
  });
}
