// The page of the wait: buttons that change the plan, and a soft cue when something begins.

import * as commands from './commands.js';
import * as cue from './cue.js';
import * as live from './live.js';
import * as taps from './taps.js';
import * as undo from './undo.js';

live.start();
commands.start();
undo.start();
taps.start();
cue.start();

document.addEventListener('keydown', (event) => {
  if (event.ctrlKey || event.metaKey || event.altKey || event.repeat || event.target.closest('input, select, textarea')) return;
  if (event.key === 'u' || event.key === 'U') undo.press();
  if (event.key === 's' || event.key === 'S') document.getElementById('sound')?.click();
});
