// What is typed of whose room it is: the two ways to say a colour go together, what becomes of it is told at once, and what
// is wrong is told at its field.

import { ask, jsonOf } from '../api.js';

/** A colour that is being dragged about is asked about once it rests, in ms. */
const REST_MS = 150;
const FIELDS = ['name', 'place', 'colour'];

/** @typedef {{paper: string, card: string, ink: string, lead: string, onLead: string}} InLight */
/** @typedef {{colour: string, day: InLight, night: InLight, told: string, apart?: string}} Look */
/** @typedef {{name: string, place: string, colour: string}} Studio */

/** @returns {HTMLFormElement | null} */
export const form = () => document.getElementById('studio-form');

/** @returns {Studio} */
export function typed() {
  const { name, place, colour } = form().elements;
  return { name: name.value.trim(), place: place.value.trim(), colour: colour.value.trim() };
}

/** @param {Studio} studio */
export function fill(studio) {
  for (const field of FIELDS) form().elements[field].value = studio[field];
  form().dispatchEvent(new Event('input', { bubbles: true }));
  tellColour();
}

/** The sheet that gives every page its colour, asked for once more. */
function recolour() {
  const sheet = document.querySelector('link[href^="/studio.css"]');
  if (sheet) sheet.setAttribute('href', `/studio.css?${encodeURIComponent(form().dataset.tag)}`);
}

/** @param {Studio} studio */
export async function save(studio) {
  const outcome = await ask('/api/studio', { method: 'PUT', body: studio, match: form().dataset.tag });
  if (outcome.tag) form().dataset.tag = outcome.tag;
  const wrong = outcome.ok ? [] : outcome.problems;
  for (const field of FIELDS) {
    const found = wrong.find(({ place }) => place === `/${field}`);
    document.getElementById(`studio-${field}-wrong`).textContent = found ? `It ${found.sentence}.` : '';
    form().elements[field].toggleAttribute('aria-invalid', Boolean(found));
  }
  if (wrong.length > 0) form().querySelector('[aria-invalid]')?.focus();
  if (outcome.ok) recolour();
  return outcome;
}

/** @param {string} words an empty text says nothing */
export function say(words) {
  const place = document.getElementById('studio-answer');
  place.textContent = words;
  place.hidden = words === '';
}

// ---- the colour

/** @param {(look: Look) => void} shown */
let whenTold = (shown) => {};
let waiting = 0;

/** @param {Look} look */
function told(look) {
  document.getElementById('studio-told').textContent = look.told;
  document.getElementById('studio-apart').textContent = look.apart ?? '';
  document.getElementById('studio-picker').value = look.colour;
  whenTold(look);
}

/** Nothing is told of what is no colour yet: it may become one. */
async function tellColour() {
  const asked = typed().colour;
  const outcome = await ask(`/api/studio/colour?of=${encodeURIComponent(asked)}`);
  if (outcome.ok && asked === typed().colour) told(outcome.value);
}

/** @param {(look: Look) => void} shown told how the colour looks, at once and whenever it changes */
export function start(shown = () => {}) {
  whenTold = shown;
  const picker = document.getElementById('studio-picker');
  const colour = form().elements.colour;
  const changed = () => {
    clearTimeout(waiting);
    waiting = setTimeout(tellColour, REST_MS);
  };
  picker.addEventListener('input', () => {
    colour.value = picker.value;
    changed();
  });
  colour.addEventListener('input', changed);
  document.getElementById('studio-usual').addEventListener('click', () => {
    colour.value = '';
    tellColour();
  });
  whenTold(jsonOf(form().dataset.look));
}
