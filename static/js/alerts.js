// A chime or a vibration when a seat falls behind: only if this browser was told so, and once for each time a seat does.

import * as stored from './stored.js';

const SHAKE_MS = [120, 80, 120];
/** Two soft notes, a fourth apart, as on a table bell. Frequencies in Hz, times in seconds. */
const NOTES = [{ hertz: 659.3, at: 0 }, { hertz: 880, at: 0.16 }];
const NOTE_SECONDS = 0.7;
const LOUDNESS = 0.18;

/** @type {AudioContext | undefined} */
let audio;
/** Seats that were behind when last looked at. @type {Set<string>} */
let known = new Set();

/** @param {'chime' | 'shake'} which */
function wanted(which) {
  return stored.read(stored.KEYS[which]) === 'on';
}

/** Browsers let a page sound only after it was touched. */
function wake() {
  if (!wanted('chime')) return;
  audio ??= new AudioContext();
  if (audio.state === 'suspended') audio.resume();
}

function chime() {
  wake();
  if (!audio) return;
  for (const { hertz, at } of NOTES) {
    const start = audio.currentTime + at;
    const tone = audio.createOscillator();
    const volume = audio.createGain();
    tone.frequency.value = hertz;
    volume.gain.setValueAtTime(0, start);
    volume.gain.linearRampToValueAtTime(LOUDNESS, start + 0.02);
    volume.gain.exponentialRampToValueAtTime(0.001, start + NOTE_SECONDS);
    tone.connect(volume).connect(audio.destination);
    tone.start(start);
    tone.stop(start + NOTE_SECONDS);
  }
}

function shake() {
  navigator.vibrate?.(SHAKE_MS);
}

function behind() {
  const seats = document.querySelector('[data-behind]')?.dataset.behind ?? '';
  return new Set(seats.split(' ').filter((seat) => seat !== ''));
}

function look() {
  const now = behind();
  const fresh = [...now].some((seat) => !known.has(seat));
  known = now;
  if (!fresh || document.getElementById('playback')) return; // who was behind on an evening long past calls nobody
  document.dispatchEvent(new CustomEvent('board:alert'));
  if (wanted('chime')) chime();
  if (wanted('shake')) shake();
}

/** @param {Event} event */
function switched(event) {
  const which = event.target.dataset?.alert;
  if (which !== 'chime' && which !== 'shake') return;
  stored.write(stored.KEYS[which], event.target.checked ? 'on' : '');
  if (!event.target.checked) return;
  if (which === 'chime') chime(); else shake();
}

export function start() {
  for (const box of document.querySelectorAll('[data-alert]')) {
    box.checked = wanted(box.dataset.alert);
    if (box.dataset.alert === 'shake' && !navigator.vibrate) {
      box.disabled = true;
      box.parentElement.append(' (this device cannot)');
    }
  }
  known = behind();
  document.addEventListener('change', switched);
  document.addEventListener('pointerdown', wake);
  document.addEventListener('board:stamp', look);
}
