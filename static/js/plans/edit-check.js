// The live check: what is in the form is read by the board after every change, by the same rules as a plan file, and each
// problem is told beside its field. Only the newest answer counts.

import { ask } from '../api.js';
import * as form from './edit-form.js';
import { tell } from './edit-rows.js';

const REST_MS = 250;
const problemsBox = document.getElementById('edit-problems');
const count = document.getElementById('edit-problems-count');
const links = document.getElementById('edit-problems-list');

/** @typedef {{place: string, sentence: string}} Problem */
/** @typedef {{problems: Problem[], plan?: object, beside: Record<string, string>}} Looked plan: if nothing is wrong with it */

let asked = 0;
let resting;
/** @type {Promise<import('../api.js').Outcome<Looked>>} */
let latest;
/** @type {(looked: Looked) => void} */
let looked = () => {};
let told = 0;

/** @param {HTMLElement} fault @param {string} words @param {any} [control] */
function say(fault, words, control) {
  if (fault.textContent !== words) fault.textContent = words;
  if (!control) return;
  if (words) control.setAttribute('aria-invalid', 'true');
  else control.removeAttribute('aria-invalid');
}

/** What a problem is told at: by the places of fields, else the row, else the section, else the page. */
function places() {
  /** @type {Map<string, HTMLElement>} */
  const map = new Map();
  for (const section of form.sections()) {
    const list = form.listOf(section);
    for (const part of list ? form.rowsOf(list) : [section.querySelector('.edit-single')]) {
      const place = form.placeOf(part);
      map.set(place, list ? part : section);
      for (const one of form.fieldsOf(part)) {
        for (const at of [one.dataset.at, ...one.dataset.also.split(' ')]) {
          if (at && !(one.hidden && map.has(`${place}/${at}`))) map.set(`${place}/${at}`, one);
        }
      }
    }
    if (list) map.set(list.dataset.list, section);
  }
  map.delete('');
  return map;
}

/** @param {Map<string, HTMLElement>} map @param {string} place @returns {HTMLElement | undefined} */
function nearest(map, place) {
  for (let at = place; at !== ''; at = at.slice(0, at.lastIndexOf('/'))) {
    const one = map.get(at);
    // a field that is not there just now cannot tell anything
    if (one && !one.hidden) return one;
  }
  return undefined;
}

/** @param {HTMLElement} one */
const faultOf = (one) => (one.matches('.edit-field') ? one.querySelector('.fault')
  : one.matches('.edit-row') ? one.querySelector('.edit-row__body > .fault') : one.querySelector('.edit-section__body > .fault'));

/** @param {HTMLElement} one @returns {string} "Steps, 3 Wicks, Length" */
function whereabouts(one) {
  const row = one.closest('.edit-row');
  return [one.closest('.edit-section').querySelector('h2').textContent,
    row && `${row.querySelector('.edit-row__number').textContent} ${form.nameOf(row)}`.trim(),
    one.matches('.edit-field') && form.wordsOf(one)].filter(Boolean).join(', ');
}

/** @param {HTMLElement} one opened, and the focus in it */
export function goTo(one) {
  for (let box = one.closest('details'); box; box = box.parentElement.closest('details')) box.open = true;
  const within = one.matches('.edit-row, .edit-section') ? one.querySelector('details') : null;
  if (within) within.open = true;
  (one.matches('.edit-field') ? form.control(one) : one.querySelector('summary')).focus();
  one.scrollIntoView({ block: 'center' });
}

/** @param {Problem[]} problems */
function show(problems) {
  const map = places();
  /** @type {Map<HTMLElement, string[]>} */
  const faults = new Map();
  const entries = problems.map(({ place, sentence }) => {
    const one = nearest(map, place);
    if (one) faults.set(one, [...(faults.get(one) ?? []), sentence]);
    const item = document.createElement('li');
    const link = Object.assign(document.createElement('button'), { type: 'button', className: 'edit-problems__to' });
    link.textContent = one ? `${whereabouts(one)}: ${sentence}` : sentence;
    if (one) link.addEventListener('click', () => goTo(one));
    item.append(link);
    return item;
  });
  for (const one of new Set([...map.values(), ...form.sections()])) {
    const words = (faults.get(one) ?? []).join(' ');
    say(faultOf(one), words, one.matches('.edit-field') ? form.control(one) : undefined);
  }
  links.replaceChildren(...entries);
  problemsBox.hidden = problems.length === 0;
  count.textContent = problems.length === 1 ? '1 thing to mend' : `${problems.length} things to mend`;
  countWithin('.edit-row', '.edit-row__faults');
  countWithin('.edit-section', '.edit-section__faults');
  for (const link of document.querySelectorAll('.edit-nav a')) {
    const within = document.querySelector(link.hash);
    const faulty = within ? faultsWithin(within) : 0;
    link.querySelector('.edit-nav__count')?.replaceChildren(faulty ? `${faulty} to mend` : '');
  }
  if (problems.length !== told) tell(problems.length === 0 ? 'Nothing to mend.' : count.textContent);
  told = problems.length;
}

/** @param {Element} part */
const faultsWithin = (part) => [...part.querySelectorAll('p.fault')].filter((fault) => fault.textContent !== '').length;

/** @param {string} part @param {string} place */
function countWithin(part, place) {
  for (const one of document.querySelectorAll(part)) {
    const faulty = faultsWithin(one);
    one.querySelector(place).textContent = faulty ? `${faulty} to mend` : '';
  }
}

/** What a figure comes to, in the unit or by the convention that was not typed. @param {Record<string, string>} beside by place */
function showBeside(beside) {
  const map = places();
  const said = new Map(Object.entries(beside).map(([place, words]) => [map.get(place), words]));
  for (const one of document.querySelectorAll('.edit-field')) {
    const note = one.querySelector('.edit-field__beside');
    const words = said.get(one) ?? '';
    if (note.textContent !== words) note.textContent = words;
    note.hidden = words === '';
  }
}

/** @returns {Promise<import('../api.js').Outcome<Looked>>} the form as it is now, read by the board */
export function check() {
  clearTimeout(resting);
  asked += 1;
  const mine = asked;
  latest = ask('/api/plans/form', {
    method: 'POST', body: { id: document.getElementById('edit-form').dataset.plan, form: form.form() },
  });
  latest.then((outcome) => {
    if (mine !== asked || !outcome.ok) return;
    show(outcome.value.problems);
    showBeside(outcome.value.beside);
    looked(outcome.value);
  });
  return latest;
}

/** After a short rest: fast typing is one change. */
export function checkSoon() {
  clearTimeout(resting);
  resting = setTimeout(check, REST_MS);
}

/** Opens the list of problems and goes to the first. */
export function goToFirst() {
  links.querySelector('button')?.click();
}

/** @param {(value: Looked) => void} whenLooked with each newest answer */
export function start(whenLooked) {
  looked = whenLooked;
}
