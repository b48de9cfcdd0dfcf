// The start page: pairing, and setting up a class.

import { ask, refused } from './api.js';
import * as clock from './clock.js';
import * as clockChoice from './clock-choice.js';
import * as dialogue from './dialogue.js';
import { namesIn, seated } from './names.js';
import * as leftOver from './offline/left-over.js';
import { forget } from './offline/shell.js';
import * as next from './start/next.js';
import * as stored from './stored.js';
import * as studio from './studio/card.js';
import { onSubmit, say } from './submit.js';
import * as watch from './watch.js';

/** @param {{pin: string} | {key: string}} by @param {string} initials empty if not said */
function pair(by, initials) {
  return ask('/api/pair', { method: 'POST', body: { ...by, ...(initials && { initials }) } });
}

/** @param {string} initials those of whoever holds this device; empty if not said */
function remember(initials) {
  if (initials) stored.write(stored.KEYS.initials, initials);
}

/** @param {string} id of a field @returns {string} */
const initialsIn = (id) => document.getElementById(id).value.trim().toUpperCase();

onSubmit('pair-form', 'pair-answer', (form) => pair({ pin: form.elements.pin.value.trim() }, initialsIn('pair-initials')),
  ({ role }) => {
    remember(initialsIn('pair-initials'));
    if (role === 'wall') location.assign('/wall'); else location.reload();
  });

/**
 * A link from the console or a QR code carries its key behind the #, where no server log sees it. It stays there until the
 * board has answered: a page that is loaded anew before goes on with it.
 */
async function pairByLink() {
  const [, kind, key] = /^#(key|helper)=([\w-]{16,})$/.exec(location.hash) ?? [];
  if (!key || !document.getElementById('pair-first')) return; // also the script of a page that was not found
  const role = document.body.dataset.role;
  if (role === 'instructor' || (role === 'helper' && kind === 'helper')) {
    dropKey();
    return;
  }
  tellOfLink('Pairing this device…');
  const outcome = await (kind === 'helper' ? pairHelper(key) : pair({ key }, ''));
  const wrong = outcome.problem === 'wrong-pin';
  if (outcome.ok || wrong) dropKey();
  if (outcome.ok) location.reload();
  else tellOfLink(outcome.words, { failed: true, again: !wrong });
}

const dropKey = () => history.replaceState(null, '', location.pathname);

/** @param {string} words @param {{failed?: boolean, again?: boolean}} [how] the page asks to be paired only once it failed */
function tellOfLink(words, { failed = false, again = false } = {}) {
  const place = document.getElementById('pair-first');
  place.hidden = false;
  say(place, words);
  document.getElementById('pair-again').hidden = !again;
  const asking = document.querySelector('.card--pair');
  if (asking) asking.hidden = !failed;
}

/** Whoever helps is asked who they are once the link is known to be right, and then paired once. @param {string} key */
async function pairHelper(key) {
  if (!ownInitials()) {
    const right = await ask('/api/pair/link', { method: 'POST', body: { key } });
    if (!right.ok) return right;
    await dialogue.closed('link-dialog');
    remember(initialsIn('link-initials'));
  }
  return ownInitials() ? pair({ key }, ownInitials()) : refused('This device is paired once you say who you are.');
}

const ownInitials = () => stored.read(stored.KEYS.initials);

document.querySelector('#pair-again button')?.addEventListener('click', pairByLink);

onSubmit('sign-out-form', 'sign-out-answer', () => ask('/api/unpair', { method: 'POST', body: {} }), () => {
  forget();
  location.assign('/');
});

dialogue.start();
pairByLink();
window.addEventListener('hashchange', pairByLink); // a link put into the address of this very page loads nothing anew
leftOver.start();
watch.start();

onSubmit('set-up-form', 'set-up-answer', ({ elements }) => {
  const startsAt = elements.startsAt.value;
  const names = namesIn(elements.names.value);
  return ask('/api/classes', { method: 'POST', body: {
    planId: elements.planId.value,
    name: elements.name.value.trim(),
    seats: Number(elements.seats.value),
    ...(names.length > 0 && { names }),
    ...(startsAt && { startsAt: new Date(startsAt).toISOString() }),
  } });
}, (made) => location.assign(`/classes/${encodeURIComponent(made.id)}/instructor`));

document.getElementById('class-names')?.addEventListener('input', (event) => {
  document.getElementById('names-echo').textContent = seated(namesIn(event.target.value));
});

document.getElementById('plan')?.addEventListener('change', (event) => {
  const plan = event.target.selectedOptions[0];
  document.getElementById('class-seats').value = plan.dataset.seats;
  document.getElementById('class-name').value = plan.dataset.name;
});

clockChoice.start(() => location.reload());

next.start();
studio.start();
if (document.querySelector('[data-clock], #next')) clock.start();
