// The pickup shelf: buttons on rows, handing over by claim word, the settings. Every change is asked of the board at
// once, which tells when another device was quicker.

import { ask, command, refused } from './api.js';
import * as dialogue from './dialogue.js';
import { onSubmit, say, submit } from './submit.js';

const answerLine = document.getElementById('shelf-answer');

/** Collects; what is still setting is asked about first. @returns {Promise<import('./api.js').Outcome<any>>} */
async function collected(path, wish) {
  const outcome = await command(path, wish);
  if (outcome.ok || outcome.problem !== 'still-setting') return outcome;
  document.getElementById('tested-words').textContent = outcome.words;
  return await dialogue.asked('tested-dialog') ? command(path, { ...wish, handTested: true }) : refused('');
}

/** @param {HTMLButtonElement} button @param {string} path @param {object} wish */
function collect(button, path, wish) {
  submit(button, answerLine, () => collected(path, wish), (entry) => {
    location.assign(`/shelf#candle-${entry.id}`);
    location.reload();
  });
}

/** @type {{entry: string, action: string}} what the dialogue of places is for */
let wanted = { entry: '', action: '' };

function choosePlace(entry, action, words) {
  wanted = { entry, action };
  say(document.getElementById('move-answer'), words);
  dialogue.open('move-dialog');
}

/** @param {HTMLButtonElement} button @param {string} entry @param {string} action */
function act(button, entry, action) {
  const path = `/api/shelf/${entry}/${action}`;
  if (action === 'collect') return collect(button, path, {});
  if (action === 'move') return choosePlace(entry, 'move', '');
  return submit(button, answerLine, () => command(path, {}), () => location.reload(), ({ problem, words }) => {
    if (action === 'undo' && problem === 'place-taken') choosePlace(entry, 'undo', words);
    else say(answerLine, words);
  });
}

document.addEventListener('click', (event) => {
  const button = event.target.closest('[data-shelf-action]');
  if (button) act(button, button.closest('[data-entry]').dataset.entry, button.dataset.shelfAction);
  if (event.target.closest('#print')) window.print();
});
dialogue.start();

document.getElementById('hand-over').addEventListener('click', (event) => {
  const field = document.getElementById('find');
  if (field.value.trim() === '') field.focus();
  else collect(event.currentTarget, '/api/shelf/collect', { claim: field.value.trim() });
});

onSubmit('move-form', 'move-answer', (form) => {
  const choice = form.elements.place.selectedOptions[0];
  if (!choice) return refused('No place is free.');
  return command(`/api/shelf/${wanted.entry}/${wanted.action}`, { shelf: choice.dataset.shelf, place: Number(choice.value) });
}, () => location.reload());

const SHELF = /^(.*\S)\s+(\d{1,3})$/;

onSubmit('settings-form', 'settings-answer', ({ elements }) => {
  const lines = elements.shelves.value.split('\n').map((line) => line.trim()).filter(Boolean);
  const odd = lines.find((line) => !SHELF.test(line));
  if (odd) return refused(`"${odd}" needs a name and a number of places, such as "Upper 12".`);
  return ask('/api/shelf/settings', { method: 'PUT', body: {
    shelves: lines.map((line) => SHELF.exec(line)).map(([, name, places]) => ({ name, places: Number(places) })),
    readyMarginMinutes: Number(elements.readyMarginMinutes.value),
    collectWithinDays: Number(elements.collectWithinDays.value),
    eraseAfterDays: Number(elements.eraseAfterDays.value),
  } });
}, () => location.reload());

// A page that was hidden may be old: another device may have been at the shelf.
document.addEventListener('visibilitychange', () => {
  const find = document.getElementById('find');
  if (!document.hidden && !dialogue.anyOpen() && find.value === find.defaultValue) location.reload();
});
