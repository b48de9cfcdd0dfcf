// The start page: pairing, and setting up a class.

import * as clock from './clock.js';
import * as clockChoice from './clock-choice.js';
import { namesIn, seated } from './names.js';
import * as leftOver from './offline/left-over.js';
import { forget } from './offline/shell.js';

const INITIALS_KEY = 'benchpace.initials';

/**
 * @param {string} path
 * @param {object} body
 */
async function post(path, body) {
  const answer = await fetch(path, {
    method: 'POST',
    headers: { 'Content-Type': 'application/json', Accept: 'application/json' },
    body: JSON.stringify(body),
    credentials: 'same-origin',
  });
  if (answer.status === 204) return {};
  if (answer.ok) return answer.json();
  let problem = {};
  try {
    problem = await answer.json();
  } catch { /* no words came with it */ }
  throw new Error(problem.detail ?? problem.title ?? 'That was not possible.');
}

/** Connects a form: says why it failed beside it. */
function onSubmit(formId, answerId, action) {
  const form = document.getElementById(formId);
  form?.addEventListener('submit', async (event) => {
    event.preventDefault();
    const place = document.getElementById(answerId);
    const button = form.querySelector('[type=submit]');
    button.disabled = true;
    place.textContent = '';
    try {
      await action(new FormData(form));
    } catch (refusal) {
      place.textContent = refusal instanceof TypeError ? 'The board cannot be reached just now.' : refusal.message;
    } finally {
      button.disabled = false;
    }
  });
}

onSubmit('pair-form', 'pair-answer', async (fields) => {
  const initials = String(fields.get('initials')).trim().toUpperCase();
  const { role } = await post('/api/pair', initials ? { pin: String(fields.get('pin')).trim(), initials }
    : { pin: String(fields.get('pin')).trim() });
  try {
    if (initials) localStorage.setItem(INITIALS_KEY, initials);
  } catch { /* asked again when needed */ }
  if (role === 'wall') location.assign('/wall');
  else location.reload();
});

/** A link from the console or a QR code carries its key behind the #, where no server log sees it. */
async function pairByLink() {
  const [, kind, key] = /^#(key|helper)=([\w-]{16,})$/.exec(location.hash) ?? [];
  if (!key) return;
  history.replaceState(null, '', location.pathname);
  const role = document.body.dataset.role;
  if (role === 'instructor' || (role === 'helper' && kind === 'helper')) return;
  try {
    const initials = kind === 'helper' ? await ownInitials() : '';
    await post('/api/pair', initials ? { key, initials } : { key });
    location.reload();
  } catch (refusal) {
    const place = document.getElementById('pair-answer');
    if (place) place.textContent = refusal.message;
  }
}

/** A helper who comes by a link is asked once who they are; a seat shows it to the others. */
async function ownInitials() {
  let initials = '';
  try {
    initials = localStorage.getItem(INITIALS_KEY) ?? '';
  } catch { /* asked each time */ }
  const dialog = document.getElementById('link-dialog');
  if (initials || !dialog) return initials;
  dialog.showModal();
  await new Promise((closed) => { dialog.addEventListener('close', closed, { once: true }); });
  initials = document.getElementById('link-initials').value.trim().toUpperCase();
  try {
    if (initials) localStorage.setItem(INITIALS_KEY, initials);
  } catch { /* asked each time */ }
  return initials;
}

onSubmit('sign-out-form', 'sign-out-answer', async () => {
  await post('/api/unpair', {});
  forget();
  location.assign('/');
});

document.getElementById('sign-out')?.addEventListener('click', () => document.getElementById('sign-out-dialog').showModal());
document.getElementById('sign-out-not')?.addEventListener('click', () => document.getElementById('sign-out-dialog').close());

pairByLink();
leftOver.start();

onSubmit('set-up-form', 'set-up-answer', async (fields) => {
  const startsAt = String(fields.get('startsAt') ?? '');
  const names = namesIn(String(fields.get('names') ?? ''));
  const wish = {
    planId: fields.get('planId'),
    name: String(fields.get('name')).trim(),
    seats: Number(fields.get('seats')),
    ...(names.length > 0 ? { names } : {}),
    ...(startsAt ? { startsAt: new Date(startsAt).toISOString() } : {}),
  };
  const made = await post('/api/classes', wish);
  location.assign(`/classes/${encodeURIComponent(made.id)}/instructor`);
});

document.getElementById('class-names')?.addEventListener('input', (event) => {
  document.getElementById('names-echo').textContent = seated(namesIn(event.target.value));
});

document.getElementById('plan')?.addEventListener('change', (event) => {
  const plan = event.target.selectedOptions[0];
  document.getElementById('class-seats').value = plan.dataset.seats;
  document.getElementById('class-name').value = plan.dataset.name;
});

clockChoice.start(() => location.reload(), (words) => {
  document.getElementById('clocks-answer').textContent = words;
});

if (document.querySelector('[data-clock]')) clock.start();
