// The pickup shelf: buttons on rows, handing over by claim word, the settings. Every change is asked of the board at
// once, which tells when another device was quicker.

import { token } from './token.js';

const answerLine = document.getElementById('shelf-answer');

/** @param {string} id */
function openDialog(id) {
  const dialog = document.getElementById(id);
  if (dialog && !dialog.open) dialog.showModal();
}

/**
 * @param {string} path
 * @param {object} body
 * @param {string} [method]
 */
async function ask(path, body, method = 'POST') {
  const answer = await fetch(path, {
    method,
    headers: { 'Content-Type': 'application/json', Accept: 'application/json' },
    body: JSON.stringify(body),
    credentials: 'same-origin',
  });
  let said = {};
  try {
    said = await answer.json();
  } catch { /* no words came with it */ }
  if (!answer.ok) throw Object.assign(new Error(said.detail ?? said.title ?? 'That was not possible.'), { type: said.type });
  return said;
}

const wordsOf = (failure) => (failure instanceof TypeError ? 'The board cannot be reached just now.' : failure.message);

/** Collects; what is still setting is asked about first. */
async function collect(path, wish) {
  const body = { commandId: token(), ...wish };
  try {
    const entry = await ask(path, body);
    location.assign(`/shelf#candle-${entry.id}`);
    location.reload();
  } catch (failure) {
    if (!String(failure.type ?? '').endsWith('still-setting')) throw failure;
    document.getElementById('tested-words').textContent = failure.message;
    document.getElementById('tested-yes').onclick = () => {
      document.getElementById('tested-dialog').close();
      collect(path, { ...wish, handTested: true }).catch(tell);
    };
    openDialog('tested-dialog');
  }
}

function tell(failure) {
  answerLine.textContent = wordsOf(failure);
  answerLine.scrollIntoView({ block: 'nearest' });
}

/** @type {{entry: string, action: string}} what the dialogue of places is for */
let wanted = { entry: '', action: '' };

function choosePlace(entry, action, words) {
  wanted = { entry, action };
  document.getElementById('move-answer').textContent = words;
  openDialog('move-dialog');
}

async function act(entry, action) {
  const path = `/api/shelf/${entry}/${action}`;
  try {
    if (action === 'collect') return await collect(path, {});
    if (action === 'move') return choosePlace(entry, 'move', '');
    await ask(path, { commandId: token() });
    location.reload();
  } catch (failure) {
    if (action === 'undo' && String(failure.type ?? '').endsWith('place-taken')) choosePlace(entry, 'undo', failure.message);
    else tell(failure);
  }
}

document.addEventListener('click', (event) => {
  const button = event.target.closest('[data-shelf-action]');
  if (button) act(button.closest('[data-entry]').dataset.entry, button.dataset.shelfAction);
  const opener = event.target.closest('[data-open]');
  if (opener) openDialog(opener.dataset.open);
  if (event.target.closest('[data-dismiss]')) event.target.closest('dialog')?.close();
  if (event.target.closest('#print')) window.print();
});

document.getElementById('hand-over').addEventListener('click', () => {
  const field = document.getElementById('find');
  if (field.value.trim() === '') field.focus();
  else collect('/api/shelf/collect', { claim: field.value.trim() }).catch(tell);
});

/** Sends a form of a dialogue and says beside it why it failed. */
function onSubmit(id, answerId, action) {
  document.getElementById(id)?.addEventListener('submit', async (event) => {
    event.preventDefault();
    const place = document.getElementById(answerId);
    place.textContent = '';
    try {
      await action(event.target);
      location.reload();
    } catch (failure) {
      place.textContent = wordsOf(failure);
    }
  });
}

onSubmit('move-form', 'move-answer', (form) => {
  const choice = form.elements.place.selectedOptions[0];
  if (!choice) throw new Error('No place is free.');
  return ask(`/api/shelf/${wanted.entry}/${wanted.action}`,
    { commandId: token(), shelf: choice.dataset.shelf, place: Number(choice.value) });
});

/** "Upper 12" on each line. @param {string} text */
function shelves(text) {
  return text.split('\n').map((line) => line.trim()).filter(Boolean).map((line) => {
    const [, name, places] = /^(.*\S)\s+(\d{1,3})$/.exec(line) ?? [];
    if (!name) throw new Error(`"${line}" needs a name and a number of places, such as "Upper 12".`);
    return { name, places: Number(places) };
  });
}

onSubmit('settings-form', 'settings-answer', (form) => ask('/api/shelf/settings', {
  shelves: shelves(form.elements.shelves.value),
  readyMarginMinutes: Number(form.elements.readyMarginMinutes.value),
  collectWithinDays: Number(form.elements.collectWithinDays.value),
  eraseAfterDays: Number(form.elements.eraseAfterDays.value),
}, 'PUT'));

// A page that was hidden may be old: another device may have been at the shelf.
document.addEventListener('visibilitychange', () => {
  if (!document.hidden && !document.querySelector('dialog[open]') && document.getElementById('find').value === document.getElementById('find').defaultValue) {
    location.reload();
  }
});
