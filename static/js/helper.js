// The helper's page: who holds this phone, and the two taps.

import * as alerts from './alerts.js';
import * as awake from './awake.js';
import * as commands from './commands.js';
import * as dialogue from './dialogue.js';
import * as follow from './follow.js';
import * as live from './live.js';
import * as taps from './taps.js';
import * as shell from './offline/shell.js';
import * as stored from './stored.js';

live.start();
awake.start();
shell.start();
commands.start();
taps.start();
alerts.start();
follow.start();

function initials() {
  return stored.read(stored.KEYS.initials) || document.body.dataset.initials;
}

function show() {
  for (const place of document.querySelectorAll('[data-initials-shown]')) place.textContent = initials() || '…';
}

document.getElementById('me-form').addEventListener('submit', () => {
  const value = document.getElementById('me-initials').value.trim().toUpperCase();
  if (!value) return;
  document.body.dataset.initials = value;
  stored.write(stored.KEYS.initials, value);
  show();
});

commands.askInitials(async () => {
  if (!initials()) await dialogue.closed('me-dialog');
  return initials();
});
show();
