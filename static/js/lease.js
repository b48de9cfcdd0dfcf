// Only one page of a browser sends at a time. Should two slip through, the command ids make it harmless.

import { token } from './token.js';

const LEASE_MS = 15_000;

const key = `benchpace.sender.${document.body.dataset.class}`;
const page = token();

/** @returns {boolean} whether this page may send now; longer than any one request may take */
export function take() {
  try {
    const [owner, until] = (localStorage.getItem(key) ?? '').split(' ');
    const left = Number(until) - Date.now();
    // One that reaches further than any page would ask was written before the device's clock was set back.
    if (owner && owner !== page && left > 0 && left < 2 * LEASE_MS) return false;
    localStorage.setItem(key, `${page} ${Date.now() + LEASE_MS}`);
  } catch { /* no storage, no other page's taps */ }
  return true;
}

export function giveBack() {
  try {
    if ((localStorage.getItem(key) ?? '').startsWith(page)) localStorage.removeItem(key);
  } catch { /* none was taken */ }
}
