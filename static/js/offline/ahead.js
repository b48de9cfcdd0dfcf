// Keeps the instructor's page going while the board is out of reach: shows what the waiting taps come to, plainly marked
// as not sent, and gives the place back to the board's own words as soon as they are there.

import { tell } from '../status.js';
import { takeBack } from '../taps.js';
import { wordsOf } from '../words.js';
import * as faces from './faces.js';
import * as foreseen from './foreseen.js';
import * as lead from './lead.js';

function paint() {
  const all = foreseen.isAhead() ? foreseen.foreseen() : undefined;
  faces.paint(all);
  lead.paint(all);
}

/** @param {MouseEvent} event */
function clicked(event) {
  const key = event.target.closest?.('[data-take-back]')?.dataset.takeBack;
  const taken = key ? takeBack(key) : undefined;
  if (taken) tell(`Taken back: ${wordsOf(taken.command)}.`);
}

export function start() {
  foreseen.watch(paint);
  document.addEventListener('htmx:sseMessage', ({ target }) => faces.putBack(target));
  document.addEventListener('click', clicked);
  foreseen.start();
}
