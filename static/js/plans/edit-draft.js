// What was changed and not saved: kept on this device, offered after a reload, and asked about before the page is left.

import * as dialogue from '../dialogue.js';
import { draftOf, drop, read, write } from '../stored.js';
import { jsonOf } from '../api.js';
import * as form from './edit-form.js';

const REST_MS = 400;
const page = document.getElementById('edit-form');
const offer = document.getElementById('edit-offer');
let planId = '';
let saved = '';
let resting;
let leaving = false;

/** @returns {boolean} whether something is not saved */
export function unsaved() {
  return saved !== '' && JSON.stringify(form.form()) !== saved;
}

function keep() {
  if (unsaved()) write(draftOf(planId), JSON.stringify({ at: Date.now(), version: page.dataset.version, form: form.form() }));
  else drop(draftOf(planId));
}

/** Keeps what is there now at once. */
export function keepNow() {
  clearTimeout(resting);
  keep();
}

export function keepSoon() {
  clearTimeout(resting);
  resting = setTimeout(keep, REST_MS);
}

/** What the form says now is what the board has. @param {string} [then] the form as it was sent */
export function isSaved(then = JSON.stringify(form.form())) {
  saved = then;
  keepNow();
}

/** Leaves without asking. @param {() => void} go */
export function leaveBy(go) {
  leaving = true;
  go();
}

/** @param {MouseEvent} event a link that leads off the page */
async function clicked(event) {
  const link = event.target.closest('a[href]');
  if (!link || link.target || event.ctrlKey || event.metaKey || event.shiftKey || event.button !== 0) return;
  if (link.getAttribute('href').startsWith('#') || leaving || !unsaved()) return;
  event.preventDefault();
  keepNow();
  if (await dialogue.asked('leave-dialog')) leaveBy(() => { window.location.href = link.href; });
}

/** @param {() => void} taken what follows once the draft stands in the form */
function offerKept(taken) {
  const kept = jsonOf(read(draftOf(planId)));
  if (typeof kept.form !== 'object' || kept.form === null) return;
  const older = typeof kept.version === 'string' && kept.version !== page.dataset.version;
  const take = () => {
    offer.hidden = true;
    // what somebody saved since is not overwritten: the board is told from which version these changes began
    if (older) page.dataset.version = kept.version;
    form.fill(kept.form);
    taken();
  };
  const params = new URLSearchParams(window.location.search);
  if (params.has('go-on')) {
    window.history.replaceState(null, '', window.location.pathname);
    take();
    return;
  }
  document.getElementById('edit-offer-when').textContent = new Date(Number(kept.at) || 0).toLocaleString('en-GB',
    { weekday: 'long', day: 'numeric', month: 'long', hour: '2-digit', minute: '2-digit' });
  document.getElementById('edit-offer-older').hidden = !older;
  offer.hidden = false;
  document.getElementById('edit-offer-take').addEventListener('click', take);
  document.getElementById('edit-offer-drop').addEventListener('click', () => {
    offer.hidden = true;
    drop(draftOf(planId));
  });
}

/** @param {string} id of the plan @param {() => void} taken */
export function start(id, taken) {
  planId = id;
  saved = JSON.stringify(form.form());
  offerKept(taken);
  document.addEventListener('click', clicked);
  window.addEventListener('beforeunload', (event) => {
    if (leaving || !unsaved()) return;
    keepNow();
    event.preventDefault();
    event.returnValue = '';
  });
}
