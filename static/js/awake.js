// Keeps the screen on while the class runs. A browser lets a page hold the screen only where the page came over TLS or
// from the device itself; elsewhere a small silent film of our own, playing out of sight, keeps most screens on. Where
// neither works the page says so, as a dark tablet tells nobody anything. The film is ten seconds of a black 16 x 16
// picture without sound, drawn by ffmpeg (color=c=black:s=16x16:r=2:d=10, as H.264 and as VP8).

import { say } from './status.js';

const RUNS = new Set(['running', 'setting', 'finishing']);
const FILMS = [['/static/img/awake.mp4', 'video/mp4'], ['/static/img/awake.webm', 'video/webm']];

/** @type {WakeLockSentinel | undefined} */
let lock;
/** @type {HTMLVideoElement | undefined} */
let film;
/** One question at a time: a second lock beside the first would be let go by nobody. @type {Promise<boolean> | undefined} */
let asking;

function runs() {
  return RUNS.has(document.body.dataset.stage);
}

function letGo() {
  lock?.release();
  lock = undefined;
  film?.pause();
  say('awake', '');
}

/** @returns {Promise<boolean>} */
async function holds() {
  if (!navigator.wakeLock) return false;
  if (lock && !lock.released) return true;
  asking ??= locked().finally(() => { asking = undefined; });
  return asking;
}

/** @returns {Promise<boolean>} */
async function locked() {
  try {
    const fresh = await navigator.wakeLock.request('screen');
    if (runs()) lock = fresh; else fresh.release(); // the class was closed meanwhile
    return true;
  } catch {
    return false; // the device saves its battery, or the page is not looked at
  }
}

/** @returns {Promise<boolean>} */
async function plays() {
  film ??= made();
  try {
    await film.play();
    return true;
  } catch {
    return false; // not before the page was touched, or this browser plays neither
  }
}

function made() {
  const video = document.createElement('video');
  Object.assign(video, { muted: true, loop: true, playsInline: true, className: 'awake' });
  video.setAttribute('aria-hidden', 'true');
  video.tabIndex = -1;
  for (const [src, type] of FILMS) video.append(Object.assign(document.createElement('source'), { src, type }));
  document.body.append(video);
  return video;
}

async function look() {
  if (!runs()) return letGo();
  if (document.hidden) return;
  const stays = await holds() || await plays();
  if (runs()) say('awake', stays ? '' : 'This screen may go dark: set it to stay on.');
}

export function start() {
  document.addEventListener('board:stamp', (event) => { if (event.detail === 'state') look(); });
  document.addEventListener('visibilitychange', look);
  // Some browsers let nothing play before the page was touched.
  document.addEventListener('pointerdown', () => { if (film?.paused) look(); });
}
