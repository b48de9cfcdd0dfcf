// What is next, kept as it is: the start page has no stream, so it asks for itself now and then while it is looked at.

import { page } from '../api.js';
import * as clock from '../clock.js';

const EVERY_MS = 12_000;
/** What the board wrote last. */
let written = '';

async function look() {
  if (document.hidden) return;
  const outcome = await page('/');
  const here = document.getElementById('next');
  const fresh = outcome.ok && outcome.value.getElementById('next');
  if (!fresh || !here) return; // away, or begun: the page says the rest once it is loaded again
  clock.heard(outcome.value.body.dataset.now);
  if (fresh.innerHTML !== written && !here.contains(document.activeElement)) {
    written = fresh.innerHTML;
    here.replaceChildren(...fresh.childNodes);
    clock.tick(here);
  }
}

/** Before the clock ticks: what is written there is the board's then. */
export function start() {
  if (!document.getElementById('next')) return;
  written = document.getElementById('next').innerHTML;
  setInterval(look, EVERY_MS);
  document.addEventListener('visibilitychange', look);
}
