// What the board's words leave out while taps wait: the count of the step and the dialogue of the next one name the seats
// whose ticks only this browser knows.

import { waiting, watchTaps } from './taps.js';

const PLACES = '[data-unsent-of], [data-unsent-leaves], [data-unsent-seat]';

/** @returns {Map<number, string>} the step last ticked at each seat, of the ticks not sent yet */
function ticked() {
  const ticks = waiting().map((tap) => tap.command).filter((command) => command.type === 'finish-step' && command.seat);
  return new Map(ticks.map(({ seat, step }) => [seat, step]));
}

/** @param {Element} place @param {string} words */
function put(place, words) {
  if (place.textContent !== words) place.textContent = words;
}

/** @param {ParentNode} [part] */
function show(part = document) {
  const ticks = ticked();
  for (const place of part.querySelectorAll('[data-unsent-of]')) {
    const count = [...ticks.values()].filter((step) => step === place.dataset.unsentOf).length;
    put(place, count > 0 ? ` +${count} not sent yet` : '');
  }
  for (const place of part.querySelectorAll('[data-unsent-leaves]')) {
    put(place, ticks.size > 0 ? `${ticks.size} done, not sent yet` : '');
  }
  for (const place of part.querySelectorAll('[data-unsent-seat]')) {
    put(place, ticks.has(Number(place.dataset.unsentSeat)) ? 'done, not sent yet' : '');
  }
}

export function start() {
  watchTaps(() => show());
  // A part that waited for its dialogue comes without a stamp.
  document.addEventListener('htmx:sseMessage', ({ target }) => { if (target.querySelector(PLACES)) show(target); });
}
