// Before a candle's range has begun no single tap says that it was tried: the page asks. The dialogue is in the page, so
// that it asks without a network too, and the board's time decides whether it is needed.

import * as clock from './clock.js';
import { asked, isOpen } from './dialogue.js';

/**
 * Does what a tap means, at once or after a yes.
 * @param {string | undefined} from before this instant it asks, RFC 3339; "always"; "unheard" where the board has not
 *   heard of the pour yet; nothing never to ask
 * @param {string | number} seat
 * @param {() => void} act
 */
export async function whenTried(from, seat, act) {
  const dialog = document.getElementById('hand-ask');
  const at = Date.parse(from);
  if (!from || !dialog || at <= clock.now().getTime()) {
    act();
    return;
  }
  if (isOpen('hand-ask')) return;
  dialog.querySelector('[data-hand-seat]').textContent = String(seat);
  dialog.querySelector('[data-hand-from]').textContent = from === 'unheard' ? 'Its range is told when the board is back.'
    : Number.isNaN(at) ? 'Its pour was not tapped yet.' : `It is said to be ready from about ${clock.clockWords(new Date(at))} on.`;
  if (await asked('hand-ask')) act();
}
