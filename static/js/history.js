// Past classes side by side: it prints, and adds by itself what is still being worked out, without taking away what
// somebody reads or stands on.

import { page } from './api.js';
import './print.js';

const EVERY_MS = 5_000;

/** @returns {HTMLElement} what changes when a class has been worked out; the choice above it does not */
const found = () => document.getElementById('found');

/** Whether somebody is at a link in it, or has marked some of its words. */
function inUse() {
  const marked = document.getSelection();
  return found().contains(document.activeElement) || (marked !== null && !marked.isCollapsed);
}

async function look() {
  if (document.hidden || inUse()) return;
  const outcome = await page(`${location.pathname}${location.search}`);
  const fresh = outcome.ok ? outcome.value.getElementById('found') : null;
  if (fresh && !inUse()) found().replaceWith(document.adoptNode(fresh));
  if (found().dataset.toCome !== 'true') clearInterval(timer);
}

const timer = found().dataset.toCome === 'true' ? setInterval(look, EVERY_MS) : 0;
