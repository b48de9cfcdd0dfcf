// The helper's page: who holds this phone, and the two taps.

import * as alerts from './alerts.js';
import * as awake from './awake.js';
import * as commands from './commands.js';
import * as follow from './follow.js';
import * as live from './live.js';
import * as taps from './taps.js';
import * as shell from './offline/shell.js';

const KEY = 'benchpace.initials';

live.start();
awake.start();
shell.start();
commands.start();
taps.start();
alerts.start();
follow.start();

function stored() {
  try {
    return localStorage.getItem(KEY) ?? '';
  } catch {
    return '';
  }
}

function initials() {
  return stored() || document.body.dataset.initials;
}

function show() {
  for (const place of document.querySelectorAll('[data-initials-shown]')) place.textContent = initials() || '…';
}

/** @param {string} value */
function remember(value) {
  document.body.dataset.initials = value;
  try {
    localStorage.setItem(KEY, value);
  } catch { /* remembered while the page is open */ }
  show();
}

const dialog = document.getElementById('me-dialog');
const field = document.getElementById('me-initials');
/** @type {((value: string) => void) | undefined} */
let answer;

document.getElementById('me-form').addEventListener('submit', () => {
  const value = field.value.trim().toUpperCase();
  if (value) remember(value);
});
dialog.addEventListener('close', () => { answer?.(initials()); answer = undefined; });

commands.askInitials(() => {
  if (initials()) return Promise.resolve(initials());
  dialog.showModal();
  return new Promise((resolve) => { answer = resolve; });
});
show();
