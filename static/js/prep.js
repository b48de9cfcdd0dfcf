// The prep page: lists that are ticked off by several devices at once, and a plan's figures for other numbers of seats.

import { ask } from './api.js';
import * as clock from './clock.js';
import * as dialogue from './dialogue.js';
import * as live from './live.js';
import * as choices from './prep/choices.js';
import * as stopwatch from './prep/stopwatch.js';
import * as ticks from './prep/ticks.js';
import { tell } from './status.js';

dialogue.start();
stopwatch.start();
if (document.body.dataset.class) {
  live.start();
  ticks.start();
} else {
  clock.start();
  choices.start();
}

document.getElementById('print')?.addEventListener('click', () => window.print());

/** What is folded on the screen is unfolded on paper by the style sheet; the region is one for the whole board. */
document.addEventListener('change', async (event) => {
  if (!event.target.matches('[data-region]')) return;
  const outcome = await ask('/api/prep/region', { method: 'PUT', body: { region: event.target.value } });
  if (!outcome.ok) tell(outcome.words);
  else if (!document.body.dataset.class) choices.again();
});
