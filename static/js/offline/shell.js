// Where the page is secure a service worker keeps it, so that it opens again without a network. Elsewhere the page says in
// time that it must not be loaded again while it is not live.

const SOON_MS = 2_000;
const SELDOM_MS = 10_000;
const PAGES = new Set(['instructor', 'helper', 'wait']);

let timer = 0;
let keptAt = -Infinity;

/** @returns {boolean} whether this page would open again without a network */
export function isKept() {
  return Boolean(navigator.serviceWorker?.controller) && document.body.dataset.screen !== 'wait';
}

/** @returns {string} what is to be said while the page is not live; empty where nothing is lost by loading it again */
export function warning() {
  return isKept() || document.body.dataset.playback || !PAGES.has(document.body.dataset.screen) ? ''
    : " Don't reload: without the network this page can't be fetched again.";
}

/** This device is paired no more: its pages go. */
export function forget() {
  navigator.serviceWorker?.controller?.postMessage({ forget: true });
}

/** The page that is kept is as new as the screen, by a few seconds. */
function keepSoon() {
  clearTimeout(timer);
  timer = setTimeout(() => {
    keptAt = performance.now();
    navigator.serviceWorker?.controller?.postMessage({ keep: location.pathname });
  }, Math.max(SOON_MS, keptAt + SELDOM_MS - performance.now()));
}

export function start() {
  if (!navigator.serviceWorker || document.body.dataset.playback) return; // what is played back is gone with the board
  navigator.serviceWorker.register('/sw.js').catch(() => { /* then it is a page like any other */ });
  navigator.serviceWorker.addEventListener('controllerchange', keepSoon);
  document.addEventListener('board:stamp', (event) => { if (event.detail === 'state') keepSoon(); });
}
