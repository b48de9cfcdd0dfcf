// Only one page of a browser sends at a time. Should two slip through, the command ids make it harmless.

import * as stored from './stored.js';
import { token } from './token.js';

const LEASE_MS = 15_000;

const key = stored.senderOf(document.body.dataset.class);
const page = token();

/** @returns {boolean} whether this page may send now; longer than any one request may take */
export function take() {
  const [owner, until] = stored.read(key).split(' ');
  const left = Number(until) - Date.now();
  // One that reaches further than any page would ask was written before the device's clock was set back.
  if (owner && owner !== page && left > 0 && left < 2 * LEASE_MS) return false;
  stored.write(key, `${page} ${Date.now() + LEASE_MS}`);
  return true;
}

export function giveBack() {
  if (stored.read(key).startsWith(page)) stored.drop(key);
}
