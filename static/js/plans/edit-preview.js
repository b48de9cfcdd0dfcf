// What the plan comes to: drawn by the board whenever the form is sound, and the odds after it, which take longer. Only the
// newest counts.

import { page } from '../api.js';

const parts = document.getElementById('preview-parts');
const odds = document.getElementById('preview-odds');
const AGAIN_MS = 300;
let asked = 0;
/** The plan that is drawn, or being drawn. */
let wanted = '';

/** @param {HTMLElement} place @param {Document} content */
const put = (place, content) => place.replaceChildren(...content.body.childNodes);

/** @param {string} words */
function failed(words) {
  parts.replaceChildren(Object.assign(document.createElement('p'), { className: 'missing', textContent: words }));
}

/** Asks until all evenings were gone through. @param {object} plan @param {number} mine */
async function draw(plan, mine) {
  const outcome = await page('/api/plans/odds', { method: 'POST', body: { plan } });
  if (mine !== asked) return;
  if (!outcome.ok) {
    odds.replaceChildren(Object.assign(document.createElement('p'), { className: 'missing', textContent: outcome.words }));
    return;
  }
  put(odds, outcome.value);
  if (odds.querySelector('[data-unfinished]')) setTimeout(() => { if (mine === asked) draw(plan, mine); }, AGAIN_MS);
}

/** @param {object | undefined} plan nothing if something is wrong with it: then what was drawn stays, and says so */
export async function show(plan) {
  const note = document.getElementById('preview-note');
  note.hidden = plan !== undefined;
  if (!plan) return;
  const text = JSON.stringify(plan);
  if (text === wanted) return;
  wanted = text;
  asked += 1;
  const mine = asked;
  parts.setAttribute('aria-busy', 'true');
  const outcome = await page('/api/plans/preview', { method: 'POST', body: { plan } });
  if (mine !== asked) return;
  parts.removeAttribute('aria-busy');
  if (!outcome.ok) {
    wanted = '';
    failed(outcome.words);
    return;
  }
  put(parts, outcome.value);
  await draw(plan, mine);
}
