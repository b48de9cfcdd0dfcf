// The seat sheet: everything about one seat, fetched when opened and again after every change of the class.

import { page } from './api.js';
import * as clock from './clock.js';
import * as degrees from './degrees.js';
import * as dialogue from './dialogue.js';
import { isAway, watch } from './offline/foreseen.js';
import { sheetOf } from './offline/sheet.js';
import { tell } from './status.js';

/** A sheet that takes longer is made here. */
const PATIENCE_MS = 4_000;

let seat = 0;
let asked = 0;
/** What leaving early needs stands on a sheet of the board's alone, and comes with the first. @type {Promise<typeof import('./leave.js')> | undefined} */
let leaving;

const SHEET = 'seat-sheet';
const body = () => document.getElementById('sheet-body');

/** @param {number} number */
export async function openSheet(number) {
  if (!document.querySelector(`[data-place="${number}"]`)) return;
  const fresh = number !== seat || !dialogue.isOpen(SHEET);
  seat = number;
  if (fresh) body().replaceChildren();
  dialogue.open(SHEET);
  await refresh(fresh);
}

/** @param {boolean} fresh a sheet just opened, with nothing typed into it */
async function refresh(fresh) {
  const turn = ++asked;
  if (isAway() && showOwn(fresh)) fresh = false; // and perhaps the board answers all the same
  const sheet = await page(`/classes/${encodeURIComponent(document.body.dataset.class)}/seats/${seat}/sheet`,
    { patience: PATIENCE_MS });
  if (turn !== asked) return;
  if (sheet.ok) {
    leave().catch(() => {}); // asked for again at the press
    if (dialogue.isOpen(SHEET)) show([...sheet.value.body.childNodes], fresh);
  } else if (!showOwn(fresh) && fresh) {
    dialogue.close(SHEET);
    tell(`The sheet of seat ${seat} cannot be fetched just now.`);
  }
}

/** @returns {Promise<typeof import('./leave.js')>} at work once it is there; one that could not be had is tried again */
function leave() {
  leaving ??= import('./leave.js').then((it) => { it.start(); return it; });
  leaving.catch(() => { leaving = undefined; });
  return leaving;
}

/** A press waits for what it needs, unless the sheet is closed meanwhile. @param {number} number */
async function leaves(number) {
  const it = await leave().catch(() => undefined);
  if (!dialogue.isOpen(SHEET) || seat !== number || await it?.open(String(number))) return;
  tell(`Seat ${number} cannot leave by the shelf just now: the board cannot be reached.`);
}

/** Without the board the sheet is this page's own. @param {boolean} fresh @returns {boolean} whether it could be made */
function showOwn(fresh) {
  const own = sheetOf(seat);
  if (!own) return false;
  const shown = document.createElement('div');
  shown.append(own);
  // a finger may be on it
  if (dialogue.isOpen(SHEET) && shown.innerHTML !== body().innerHTML) show([...shown.childNodes], fresh);
  return true;
}

/** Puts the new sheet in place, keeping what was typed, what was unfolded and where the focus was. */
function show(nodes, fresh) {
  const typed = new Map();
  const unfolded = new Set();
  const focus = document.activeElement?.id;
  if (!fresh) {
    for (const field of body().querySelectorAll('input, select, textarea')) {
      const initial = field.defaultValue ?? field.querySelector('option')?.value;
      if (field.id && field.value !== initial) typed.set(field.id, field.value);
    }
    for (const part of body().querySelectorAll('details[open]')) unfolded.add(part.id);
  }
  body().replaceChildren(...nodes);
  for (const [id, value] of typed) { const field = document.getElementById(id); if (field) field.value = value; }
  for (const id of unfolded) document.getElementById(id)?.setAttribute('open', '');
  clock.tick(body());
  degrees.show(body());
  if (fresh) document.getElementById('sheet-close')?.focus();
  else if (focus) document.getElementById(focus)?.focus({ preventScroll: true });
}

export function start() {
  watch(() => { if (dialogue.isOpen(SHEET) && isAway()) refresh(false); });
  document.addEventListener('click', (event) => {
    const opener = event.target.closest('[data-open-seat]');
    if (opener) openSheet(Number(opener.dataset.openSeat));
    const leaver = event.target.closest('[data-leave-seat]');
    if (leaver) leaves(Number(leaver.dataset.leaveSeat));
  });
  // A note or a corrected tap changes the sheet but not the tile, so every change of the class fetches it anew.
  document.addEventListener('board:stamp', (event) => {
    if (event.detail === 'state' && dialogue.isOpen(SHEET)) refresh(false);
  });
}
