// A plan's prep page for other numbers of seats: worked out by the board as they are typed, and asked for again while its
// evenings are being simulated.

import { page } from '../api.js';
import { say } from '../submit.js';

const TYPING_MS = 250;
const AGAIN_MS = 700;

const form = document.getElementById('seats-form');
let timer = 0;
let asked = 0;

/** @returns {string} the address of this page for what is typed */
function address() {
  const query = new URLSearchParams({ seats: form.elements.seats.value });
  const candles = [...form.querySelectorAll('[data-candle]')].filter((field) => Number(field.value) > 0)
    .map((field) => `${field.dataset.candle}=${field.value}`);
  if (candles.length > 0) query.set('candles', candles.join(','));
  return `${form.getAttribute('action')}?${query}`;
}

/** @param {Document} fresh */
function swap(fresh) {
  for (const part of fresh.querySelectorAll('#prep-next, #sheet [id^="prep-"]')) {
    const here = document.getElementById(part.id);
    const open = [...here.querySelectorAll('details')].map((details) => details.open);
    if (here.innerHTML === part.innerHTML) continue;
    if (here.contains(document.activeElement) && part.id !== 'prep-checks') continue; // somebody types there
    here.replaceChildren(...part.childNodes);
    here.querySelectorAll('details').forEach((details, i) => details.toggleAttribute('open', open[i] ?? false));
  }
  say(document.getElementById('seats-answer'), fresh.getElementById('seats-answer').textContent);
  const when = fresh.querySelector('.prep__when');
  if (when) document.querySelector('.prep__when').textContent = when.textContent;
  if (document.querySelector('[data-under-way]')) later(AGAIN_MS);
}

/** @param {number} ms */
function later(ms) {
  clearTimeout(timer);
  timer = setTimeout(again, ms);
}

/** Asks for the sheet as it is now. */
export async function again() {
  const own = ++asked;
  const at = address();
  const outcome = await page(at);
  if (own !== asked) return; // something else was typed meanwhile
  if (!outcome.ok) {
    say(document.getElementById('seats-answer'), outcome.words);
    return;
  }
  history.replaceState(null, '', at);
  swap(outcome.value);
}

export function start() {
  form.addEventListener('input', () => { if (form.checkValidity()) later(TYPING_MS); });
  form.addEventListener('submit', (event) => { event.preventDefault(); again(); });
  if (document.querySelector('[data-under-way]')) later(AGAIN_MS);
}
