// Taps of a page that was closed before they were sent: they are kept in this browser, and sent by whichever page of the
// board is opened on it next, the start page too.

import { tell } from '../status.js';
import * as stored from '../stored.js';

/** On a page that is of no class. */
export async function start() {
  const left = stored.classWithTaps();
  const { class: shown, role } = document.body.dataset;
  if (!left || shown || role === 'guest') return; // one that is not paired sends nothing
  document.body.dataset.class = left; // what sends taps asks the page for its class
  const taps = await import('../taps.js');
  const count = taps.kept().length;
  let told = false;
  taps.watchTaps(() => {
    if (told || taps.kept().length > 0) return;
    told = true;
    tell(count === 1 ? 'A tap that had not been sent was sent.' : `${count} taps that had not been sent were sent.`);
  });
  taps.start();
}
