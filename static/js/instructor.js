// The instructor's page: taps on tiles, the sheet, and the keys.

import * as awake from './awake.js';
import * as ahead from './offline/ahead.js';
import * as alerts from './alerts.js';
import * as clockChoice from './clock-choice.js';
import * as commands from './commands.js';
import * as degrees from './degrees.js';
import * as dialogue from './dialogue.js';
import * as follow from './follow.js';
import * as lines from './lines.js';
import * as live from './live.js';
import * as ownTaps from './own-taps.js';
import * as sheet from './sheet.js';
import * as taps from './taps.js';
import * as tiles from './tiles.js';
import { tell } from './status.js';
import * as undo from './undo.js';
import * as shell from './offline/shell.js';

live.start();
awake.start();
shell.start();
commands.start();
commands.askInitials(async () => document.body.dataset.initials || 'Lead');
degrees.start();
sheet.start();
tiles.start();
undo.start();
ownTaps.start();
ahead.start();
taps.start();
lines.start();
alerts.start();
follow.start();
clockChoice.start(() => document.getElementById('clocks').replaceChildren(), ({ words }) => tell(words));

const DIGITS_MS = 700;
let digits = '';
let digitsTimer = 0;

/** Two digits typed quickly are one seat number. @param {string} digit */
function seatKey(digit) {
  digits += digit;
  clearTimeout(digitsTimer);
  const open = () => { const seat = Number(digits); digits = ''; if (seat > 0) sheet.openSheet(seat); };
  const more = document.querySelector(`[data-place^="${digits}"]:not([data-place="${digits}"])`);
  if (more) digitsTimer = setTimeout(open, DIGITS_MS); else open();
}

document.addEventListener('keydown', (event) => {
  if (event.ctrlKey || event.metaKey || event.altKey || event.repeat) return;
  if (event.target.closest('input, select, textarea') || dialogue.anyOpen()) return;
  if (/^[0-9]$/.test(event.key)) return seatKey(event.key);
  if (event.key === 'n' || event.key === 'N') return document.querySelector('#next-unsent:not([hidden]) button, #next-button')?.click();
  if (event.key === 'u' || event.key === 'U') return undo.press();
  if (event.key === 'm' || event.key === 'M') return dialogue.open('menu-dialog');
  if (event.key === '?') dialogue.open('keys-dialog');
});
