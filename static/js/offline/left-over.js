// Taps of a page that was closed before they were sent: they are kept in this browser, and sent by whichever page of the
// board is opened on it next, the start page too.

import { tell } from '../status.js';

const TAP = /^benchpace\.tap\.(.+)\.\d{15}-/;

/** @returns {string} a class with such taps; empty if there is none */
function classWithTaps() {
  try {
    return Object.keys(localStorage).map((key) => TAP.exec(key)?.[1]).find(Boolean) ?? '';
  } catch {
    return ''; // no storage, nothing left over
  }
}

/** On a page that is of no class. */
export async function start() {
  const left = classWithTaps();
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
