// The board's time in the browser. The device's own clock is never trusted, for it may be wrong and may be set at any
// moment: the board's time is the browser's count of passing time plus an offset, the median of the last few stamps that
// came down the stream. That count never jumps but may stand still while the device sleeps, so after a sleep the time is
// doubted until the next stamp. Everything that ticks on a page is redrawn from here.

const SAMPLES = 9;
const LOST_AFTER_MS = 30_000;
const MINUTE_MS = 60_000;
const HOUR_MS = 60 * MINUTE_MS;
const JUMP_MS = 2_000;
/** An evening that is played back passes a minute in a second. */
const QUICK_MS = 250;
const FIGURES = /(\d[\d:]*)/;

/** @type {number[]} server time minus the browser's count, in ms, the newest last */
const offsets = [];
let heardAt = performance.now();
/** The device's clock minus the browser's count when a stamp last came, in ms: they part by a sleep or a set clock. */
let apartAt = apart();
let doubtful = true;
let lost = false;
/** @type {number | undefined} */
let clocks;
/** So many times as fast as the clock in the room the board's time goes on: 1, but for an evening that is played back. */
let rate = 1;
/** Changes whenever an evening that is played back goes on in another way. */
let turn = 0;
/** No later than that, in ms: an evening that is played back stands still at its end. */
let last = Infinity;

function apart() {
  return Date.now() - performance.now();
}

/**
 * @param {string} stamp the server's time, RFC 3339
 * @param {number} [setRight] how often the class's clock was set right so far
 * @param {{rate: number, turn: number}} [playback] how an evening that is played back goes on from there
 */
export function heard(stamp, setRight, playback) {
  const at = Date.parse(stamp);
  if (Number.isNaN(at)) return;
  if (setRight !== undefined && setRight !== clocks) {
    clocks = setRight; // stamps of the wrong clock mean nothing any more
    offsets.length = 0;
  }
  if (playback && (playback.turn !== turn || playback.rate !== rate)) {
    ({ rate, turn } = playback); // it goes on otherwise than the stamps before said
    offsets.length = 0;
  }
  heardAt = performance.now();
  const offset = at - heardAt * rate;
  // After a sleep, or when the board's own clock moved, older samples no longer mean anything.
  if (!sure() || (offsets.length > 0 && Math.abs(offset - median()) > JUMP_MS * Math.max(1, rate))) offsets.length = 0;
  offsets.push(offset);
  if (offsets.length > SAMPLES) offsets.shift();
  apartAt = apart();
  doubtful = false;
}

/** @returns {{at: string, clocks: number | undefined}} the board's time, RFC 3339, and by which of the class's clocks; none while no stamp said so */
export function reading() {
  return { at: now().toISOString(), clocks };
}

/** The device may have slept: the next stamp counts alone. */
export function doubt() {
  doubtful = true;
}

/** @returns {boolean} a stamp has come since the device may last have slept */
export function sure() {
  return !doubtful && Math.abs(apart() - apartAt) < JUMP_MS;
}

function median() {
  const sorted = [...offsets].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)];
}

/** @returns {Date} the board's time; after a sleep too early rather than too late until the next stamp */
export function now() {
  return new Date(offsets.length === 0 ? Date.now() : Math.min(last, performance.now() * rate + median()));
}

/** @returns {boolean} no stamp has come for so long that a countdown may be wrong */
export function outOfTouch() {
  return performance.now() - heardAt > LOST_AFTER_MS || Math.abs(apart() - apartAt) > LOST_AFTER_MS;
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
  const { countStyle } = element.dataset;
  if (countStyle === 'open') return minutes >= 1 ? `open ${words(minutes)}` : 'just opened';
  return minutes >= 1 ? words(minutes) : countStyle === 'silent' ? '' : 'just begun';
}

/**
 * The minutes are rounded up: nothing has begun before its instant. Up to it a mute countdown says nothing.
 * @param {Element} element with data-count-to
 * @param {number} at
 */
function countDown(element, at) {
  const { countTo, countStyle, after, until, past, words: clockWords } = element.dataset;
  if (lost) return countStyle === 'mute' ? '' : clockWords;
  const left = Date.parse(countTo) - at;
  if (left <= 0) return at >= Date.parse(until) ? past : after;
  const minutes = Math.ceil(left / MINUTE_MS);
  const said = minutes < 2 ? 'a minute' : words(minutes);
  switch (countStyle) {
    case 'in': return `in ${said}`;
    case 'try': return `try in ${said}`;
    case 'tried': return `can be tried in ${said}`;
    case 'sentence': return `Can be tried in ${said}`;
    case 'start': return `We begin in ${said}`;
    case 'mute': return '';
    default: return said;
  }
}

/** @param {Element} element @param {string} text */
function write(element, text) {
  const apart = 'figures' in element.dataset && FIGURES.test(text);
  if (element.textContent === text && (!apart || element.firstElementChild)) return;
  if (apart) element.replaceChildren(...text.split(FIGURES).filter(Boolean).map(part)); else element.textContent = text;
}

/** Figures become an element of their own, where the page wants them larger than the words. @param {string} words */
function part(words) {
  if (!FIGURES.test(words)) return words;
  const figures = document.createElement('b');
  figures.textContent = words;
  return figures;
}

/** @type {((root: ParentNode, at: number) => void)[]} */
const others = [];

/** @param {(root: ParentNode, at: number) => void} action what else ticks on a page; at in ms since 1970 */
export function onTick(action) {
  others.push(action);
}

let clockFormat;

/**
 * When clocks are set back, the clock in the room shows an hour twice: then it is said which is meant, as WallClock does.
 * @param {Date} at
 * @param {(at: Date) => string} shown
 * @returns {'' | ' summer' | ' winter'}
 */
export function season(at, shown) {
  const words = shown(at);
  return shown(new Date(at.getTime() + HOUR_MS)) === words ? ' summer'
    : shown(new Date(at.getTime() - HOUR_MS)) === words ? ' winter' : '';
}

/** @param {Date} at @returns {string} as the clock in the room shows it */
export function clockWords(at) {
  clockFormat ??= new Intl.DateTimeFormat('en-GB',
    { hour: '2-digit', minute: '2-digit', timeZone: document.body.dataset.zone });
  return clockFormat.format(at) + season(at, (time) => clockFormat.format(time));
}

/**
 * Redraws what ticks inside a part of the page, at once.
 * @param {ParentNode} root
 */
export function tick(root = document) {
  const at = now();
  for (const element of root.querySelectorAll('[data-count-from]')) write(element, countUp(element, at.getTime()));
  for (const element of root.querySelectorAll('[data-count-to]')) write(element, countDown(element, at.getTime()));
  for (const also of others) also(root, at.getTime());
  for (const element of root.querySelectorAll('[data-clock]')) {
    write(element, clockWords(new Date(at.getTime() + Number(element.dataset.clockAhead ?? 0))));
  }
}

/** Starts the ticking. @param {(lost: boolean) => void} [onTouch] told when the stream's time is lost or found again */
export function start(onTouch = () => {}) {
  const { now: written, kept } = document.body.dataset;
  if (written && kept) {
    // kept by the service worker: only the device knows how long ago, until the board says more
    heard(new Date(Date.parse(written) + Date.now() - Number(kept)).toISOString());
    doubt();
  } else if (written) {
    const played = document.getElementById('playback')?.dataset;
    if (played) last = Date.parse(played.until);
    heard(played?.at ?? written, undefined, played && { rate: Number(played.rate), turn: Number(played.turn) });
  }
  document.addEventListener('htmx:sseMessage', (event) => tick(event.target));
  const beat = () => {
    if (outOfTouch() !== lost) {
      lost = !lost;
      document.body.classList.toggle('is-out-of-touch', lost);
      onTouch(lost);
    }
    tick();
  };
  // the first words of a time of day cost a slow tablet a tenth of a second: a turn of their own, once the page is there
  if (document.querySelector('[data-clock]')) setTimeout(() => clockWords(now()));
  setTimeout(beat);
  setInterval(beat, document.getElementById('playback') ? QUICK_MS : 1_000);
}
