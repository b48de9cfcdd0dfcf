// A soft tone when something that is called out begins: off until asked for, and once an event, also after a reload.

import * as clock from './clock.js';
import * as stored from './stored.js';

const SOUNDED_LATE_MS = 90_000;
const MOST_KEPT = 60;
const playedKey = stored.cuesOf(document.body.dataset.class);

/** @type {AudioContext | undefined} */
let audio;
let on = false;

/** @type {Set<string>} */
const played = new Set(stored.read(playedKey).split('\n').filter(Boolean));

/** Two soft notes, a fifth apart; quiet enough to talk over. */
function tone() {
  if (!audio || audio.state !== 'running') return;
  [[523.25, 0], [783.99, 0.22]].forEach(([hertz, delay]) => {
    const note = audio.createOscillator();
    const gain = audio.createGain();
    const from = audio.currentTime + delay;
    note.type = 'sine';
    note.frequency.value = hertz;
    gain.gain.setValueAtTime(0, from);
    gain.gain.linearRampToValueAtTime(0.12, from + 0.04);
    gain.gain.exponentialRampToValueAtTime(0.0001, from + 0.9);
    note.connect(gain).connect(audio.destination);
    note.start(from);
    note.stop(from + 1);
  });
}

function show() {
  const button = document.getElementById('sound');
  const words = document.getElementById('sound-words');
  if (!button || !words) return;
  const asleep = on && audio?.state !== 'running';
  button.setAttribute('aria-pressed', String(on));
  words.textContent = !on ? 'Sound is off' : asleep ? 'Sound: tap the page' : 'Sound is on';
}

async function wake() {
  if (!on) return;
  audio ??= new AudioContext();
  try {
    await audio.resume();
  } catch { /* the browser wants a tap first */ }
  show();
}

function look() {
  const now = clock.now().getTime();
  let due = false;
  for (const call of document.querySelectorAll('[data-cue-key]')) {
    const at = Date.parse(call.dataset.cueAt);
    if (now < at || played.has(call.dataset.cueKey)) continue;
    played.add(call.dataset.cueKey);
    due ||= now - at < SOUNDED_LATE_MS;
    stored.write(playedKey, [...played].slice(-MOST_KEPT).join('\n'));
  }
  if (due && on) {
    tone();
    document.dispatchEvent(new CustomEvent('board:cue'));
  }
}

export function start() {
  on = stored.read(stored.KEYS.sound) === 'on';
  document.getElementById('sound')?.addEventListener('click', async () => {
    on = !on;
    stored.write(stored.KEYS.sound, on ? 'on' : '');
    await wake();
    show();
    if (on) tone();
  });
  document.addEventListener('pointerdown', () => { if (on && audio?.state !== 'running') wake(); });
  show();
  look();
  setInterval(look, 1_000);
}
