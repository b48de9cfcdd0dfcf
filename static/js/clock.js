// The board's time in the browser. The device's own clock is never trusted: its offset from the server is the median of
// the last few stamps that came down the stream. Everything that ticks on a page is redrawn from here.

const SAMPLES = 9;
const LOST_AFTER_MS = 30_000;
const MINUTE_MS = 60_000;

/** @type {number[]} server time minus device time, in ms, the newest last */
const offsets = [];
let heardAt = performance.now();
let lost = false;

/** @param {string} stamp the server's time, RFC 3339 */
export function heard(stamp) {
  const at = Date.parse(stamp);
  if (Number.isNaN(at)) return;
  const offset = at - Date.now();
  // The device's clock was set while the page was open: older samples no longer mean anything.
  if (offsets.length > 0 && Math.abs(offset - median()) > MINUTE_MS) offsets.length = 0;
  offsets.push(offset);
  if (offsets.length > SAMPLES) offsets.shift();
  heardAt = performance.now();
}

function median() {
  const sorted = [...offsets].sort((a, b) => a - b);
  return sorted.length === 0 ? 0 : sorted[Math.floor(sorted.length / 2)];
}

/** @returns {Date} the board's time */
export function now() {
  return new Date(Date.now() + median());
}

/** @returns {boolean} no stamp has come for so long that a countdown may be wrong */
export function outOfTouch() {
  return performance.now() - heardAt > LOST_AFTER_MS;
}

/**
 * Whole minutes in words, as Phrases.length says them.
 * @param {number} minutes
 */
function words(minutes) {
  if (minutes < 60) return `${minutes} min`;
  const rest = minutes % 60;
  return rest === 0 ? `${Math.floor(minutes / 60)} h` : `${Math.floor(minutes / 60)} h ${rest} min`;
}

/**
 * @param {Element} element with data-count-from
 * @param {number} at
 */
function countUp(element, at) {
  const minutes = Math.floor((at - Date.parse(element.dataset.countFrom)) / MINUTE_MS);
  return minutes < 1 ? 'just begun' : words(minutes);
}

/**
 * @param {Element} element with data-count-to
 * @param {number} at
 */
function countDown(element, at) {
  const { countTo, countStyle, after, until, past, words: clockWords } = element.dataset;
  if (lost) return clockWords;
  const left = Date.parse(countTo) - at;
  if (left < MINUTE_MS / 2) return at >= Date.parse(until) ? past : after;
  const minutes = Math.round(left / MINUTE_MS);
  const said = minutes < 2 ? 'a minute' : words(minutes);
  switch (countStyle) {
    case 'left': return `${said} left`;
    case 'in': return `in ${said}`;
    case 'start': return `We begin in ${said}`;
    default: return said;
  }
}

/** @param {Element} element @param {string} text */
function write(element, text) {
  if (element.textContent !== text) element.textContent = text;
}

let clockFormat;

/** @param {Date} at */
function clockWords(at) {
  clockFormat ??= new Intl.DateTimeFormat('en-GB',
    { hour: '2-digit', minute: '2-digit', timeZone: document.body.dataset.zone });
  return clockFormat.format(at);
}

/**
 * Redraws what ticks inside a part of the page, at once.
 * @param {ParentNode} root
 */
export function tick(root = document) {
  const at = now();
  for (const element of root.querySelectorAll('[data-count-from]')) write(element, countUp(element, at.getTime()));
  for (const element of root.querySelectorAll('[data-count-to]')) write(element, countDown(element, at.getTime()));
  for (const element of root.querySelectorAll('[data-clock]')) write(element, clockWords(at));
}

/** Starts the ticking. @param {(lost: boolean) => void} [onTouch] told when the stream's time is lost or found again */
export function start(onTouch = () => {}) {
  if (document.body.dataset.now) heard(document.body.dataset.now);
  document.addEventListener('htmx:sseMessage', (event) => tick(event.target));
  const beat = () => {
    if (outOfTouch() !== lost) {
      lost = !lost;
      document.body.classList.toggle('is-out-of-touch', lost);
      onTouch(lost);
    }
    tick();
  };
  beat();
  setInterval(beat, 1000);
}
