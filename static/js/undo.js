// The undo of a tap that the board does not have yet. While one waits, the button in the bar means that tap, and says so;
// else it means what the board knows as the latest.

import { tell } from './status.js';
import { takeBack, waiting, watchTaps } from './taps.js';
import { wordsOf } from './words.js';

/** A tap on a good network is answered sooner than this: the button does not flicker with every tap. */
const BLINK_MS = 300;

const board = () => document.getElementById('undo');
const own = () => document.getElementById('undo-own');

/** An undo is no tap to take back: pressed again for want of an answer, it would be called off. */
const lastIsUndo = () => waiting().pop()?.command.type === 'undo';

/** @returns {boolean} whether a tap waited, so that nothing is to be asked of the board */
export function undoUnsent() {
  if (lastIsUndo()) return true;
  const taken = takeBack();
  if (!taken) return false;
  const words = wordsOf(taken.command);
  const how = taken.dropped ? 'it was not sent.' : 'should the board have it, it is undone there.';
  tell(`${words.charAt(0).toUpperCase()}${words.slice(1)}: taken back; ${how}`);
  return true;
}

/** Presses whichever of the two buttons shows. */
export function press() {
  const place = own()?.hidden === false ? own() : board();
  place?.querySelector('button')?.click();
}

function show() {
  const last = waiting().pop();
  const [shown, away] = last ? [own(), board()] : [board(), own()];
  const focused = away.contains(document.activeElement);
  shown.hidden = false;
  away.hidden = true;
  const button = document.getElementById('undo-unsent');
  button.disabled = lastIsUndo();
  document.getElementById('undo-unsent-words').textContent =
    lastIsUndo() ? 'not sent yet' : last ? `${wordsOf(last.command)}, not sent yet` : '';
  if (focused) shown.querySelector('button')?.focus();
}

export function start() {
  if (!own()) return;
  let later = 0;
  watchTaps((unsent) => {
    clearTimeout(later);
    if (unsent.length === 0 || !own().hidden) show(); else later = setTimeout(show, BLINK_MS);
  });
}
