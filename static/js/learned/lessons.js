// What past classes taught is accepted or taken back: of a step or all steps of a plan, of a class's part in what a room
// taught. Each asks with the tag of what the page shows, so that nothing is decided unseen.

import { ask } from '../api.js';
import { submit } from '../submit.js';

/** @param {HTMLElement} taught @param {string} step empty for all @returns {string} */
function plan({ dataset: { plan: id, place } }, step) {
  return `/api/learned/plans/${encodeURIComponent(id)}?${new URLSearchParams({ place, ...(step && { step }) })}`;
}

/** @param {HTMLElement} button @param {HTMLElement} taught @returns {{path: string, method: string} | null} */
function asked({ dataset }, taught) {
  if ('lesson' in dataset) return { path: plan(taught, ''), method: dataset.lesson };
  if ('stepLesson' in dataset) return { path: plan(taught, dataset.step), method: dataset.stepLesson };
  if ('roomLesson' in dataset) {
    return { path: `/api/learned/classes/${encodeURIComponent(dataset.of)}`, method: dataset.roomLesson };
  }
  if ('acceptRoom' in dataset) {
    return { path: `/api/learned/rooms?${new URLSearchParams({ room: taught.dataset.room })}`, method: 'POST' };
  }
  return null;
}

document.addEventListener('click', (event) => {
  const button = event.target.closest('.taught button');
  const taught = button?.closest('.taught');
  const change = button && asked(button, taught);
  if (!change) return;
  const { path, method } = change;
  submit(button, taught.querySelector('.form__answer'), () => ask(path, { method, match: `"${taught.dataset.tag}"` }),
    () => location.reload());
});
