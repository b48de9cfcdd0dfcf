// A question closes once it has no point any more: the step it asks about was opened elsewhere, or the class was closed. What
// would stand in its place is another question, under a finger that is on its way. Fetched with the first question.

import * as dialogue from './dialogue.js';
import { tell } from './status.js';

const MOVED_ON = 'The class has moved on: look at the next step again.';

/** @param {string} id */
const step = (id) => document.getElementById(id)?.dataset.step ?? '';

/** The button says at once what is next; the question that belongs to it comes later. */
function nextIsShown() {
  if (!dialogue.isOpen('next-dialog') || step('next-button') === step('ask-open')) return;
  dialogue.close('next-dialog');
  tell(MOVED_ON);
}

function stateIsShown() {
  if (document.body.dataset.stage !== 'closed' || !dialogue.isOpen('close-dialog')) return;
  dialogue.close('close-dialog');
  tell('This class was closed.');
}

document.addEventListener('htmx:sseMessage', (event) => { if (event.target.id === 'next') nextIsShown(); });
document.addEventListener('board:stamp', stateIsShown);
