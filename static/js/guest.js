// Keeps a guest's page true: asks again while it is looked at, and as soon as the phone comes out of the pocket or is back
// on the network. One small page every ten seconds, never two at once, and none while nobody looks.

import { page } from './api.js';

const EVERY_MS = 10_000;
const PATIENCE_MS = 8_000;
const LOST_AFTER = 2;

const main = document.getElementById('guest');
const lost = document.getElementById('guest-lost');
let asking = false;
let failures = 0;

async function refresh() {
  if (document.hidden || asking) return;
  asking = true;
  const outcome = await page(location.pathname, { patience: PATIENCE_MS });
  asking = false;
  failures = outcome.ok ? 0 : failures + 1; // out of reach: what is shown stays until it is back
  const fresh = outcome.ok ? outcome.value.getElementById('guest') : null;
  // a button that is pressed just now is not taken from under the finger
  if (fresh && fresh.innerHTML !== main.innerHTML && !main.querySelector('button:active')) {
    main.replaceChildren(...fresh.childNodes);
  }
  lost.hidden = failures < LOST_AFTER;
}

if (main && lost) {
  setInterval(refresh, EVERY_MS);
  document.addEventListener('visibilitychange', refresh);
  window.addEventListener('online', refresh);
  window.addEventListener('pageshow', (event) => { if (event.persisted) refresh(); });
}
