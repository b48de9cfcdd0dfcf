// Past classes side by side: it prints, and adds by itself what is worked out or closed meanwhile, without moving or taking
// away what somebody reads or stands on.

import { page } from './api.js';
import './print.js';

/** While some are being worked out. */
const SOON_MS = 5_000;
/** A class may be closed meanwhile. */
const NOW_AND_THEN_MS = 15_000;

/** @returns {HTMLElement} what changes when a class has been worked out; the choice above it does not */
const found = () => document.getElementById('found');

/** Whether somebody is at a link in it, or has marked some of its words. */
function inUse() {
  const marked = document.getSelection();
  return found().contains(document.activeElement) || (marked !== null && !marked.isCollapsed);
}

/** @returns {Element | undefined} what is in the middle of the window: it stays there */
function read() {
  return [...found().querySelectorAll('[id]')].filter((part) => part.getBoundingClientRect().top <= innerHeight / 2).pop();
}

/** Of what was last taken, so that the board need not draw the same again. */
let known = '';

/** @param {Document} fresh */
function take(fresh) {
  const anew = fresh.getElementById('found');
  if (!anew || anew.isEqualNode(found())) return;
  const { id, top } = { id: read()?.id, top: read()?.getBoundingClientRect().top };
  found().replaceWith(document.adoptNode(anew));
  document.getElementById('count').textContent = fresh.getElementById('count').textContent;
  const stays = id && document.getElementById(id);
  if (stays) scrollBy({ top: stays.getBoundingClientRect().top - top, behavior: 'instant' });
}

async function look() {
  if (document.hidden || inUse()) return;
  const outcome = await page(`${location.pathname}${location.search}`, { known });
  if (!outcome.ok || inUse()) return;
  take(outcome.value);
  known = outcome.tag;
}

async function lookOn() {
  await look();
  setTimeout(lookOn, found().dataset.toCome === 'true' ? SOON_MS : NOW_AND_THEN_MS);
}

setTimeout(lookOn, found().dataset.toCome === 'true' ? SOON_MS : NOW_AND_THEN_MS);
document.addEventListener('visibilitychange', look);
