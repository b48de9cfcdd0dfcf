// The shop's own stop-watch: what a melt took says how much of the melter's heat reaches the wax, and can be kept.

import { ask } from '../api.js';
import { submit } from '../submit.js';

/** @param {HTMLFormElement} form @param {boolean} keep */
function measure(form, keep) {
  const { grams, minutes, watts } = form.elements;
  return ask(`${form.closest('[data-stopwatch]').dataset.stopwatch}/${form.dataset.melter}`, {
    method: 'POST',
    body: { grams: Number(grams.value), minutes: Number(minutes.value), watts: Number(watts.value), keep },
  });
}

/** @param {HTMLFormElement} form @param {Element} pressed @param {boolean} keep */
function run(form, pressed, keep) {
  const answer = form.querySelector('[data-answer]');
  submit(pressed, answer, () => measure(form, keep), ({ words, mayKeep }) => {
    answer.textContent = words;
    form.querySelector('[data-keep]').hidden = !mayKeep;
  });
}

export function start() {
  document.addEventListener('submit', (event) => {
    const form = event.target;
    if (!form.matches('[data-melter]')) return;
    event.preventDefault();
    run(form, form, false);
  });
  document.addEventListener('click', (event) => {
    const button = event.target.closest('[data-keep]');
    if (button) run(button.form, button, true);
  });
}
