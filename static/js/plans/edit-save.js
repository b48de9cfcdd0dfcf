// Saving: checked first, so that nothing is sent that the board would refuse; by the version that this page began from, so
// that nobody's work is overwritten unseen.

import { ask } from '../api.js';
import * as dialogue from '../dialogue.js';
import { say, submit } from '../submit.js';
import * as check from './edit-check.js';
import * as draft from './edit-draft.js';
import * as form from './edit-form.js';
import { tell } from './edit-rows.js';

const page = document.getElementById('edit-form');
const state = document.getElementById('edit-state');
const answer = document.getElementById('edit-answer');

/** What was to be saved when another had saved first. @type {object | undefined} */
let refused;

export function sayUnsaved() {
  const unsaved = draft.unsaved();
  page.querySelector('.edit-save').classList.toggle('is-unsaved', unsaved);
  if (unsaved) state.textContent = 'Not saved yet.';
}

/** @returns {Promise<import('../api.js').Outcome<{version: number, name: string}>>} */
async function save() {
  const sent = JSON.stringify(form.form());
  const looked = await check.check();
  if (!looked.ok) return looked;
  const { problems, plan } = looked.value;
  if (!plan) {
    check.goToFirst();
    return { ok: false, problem: '', status: 422, words: problems.length === 1
      ? 'Not saved: one thing is to be mended first.' : `Not saved: ${problems.length} things are to be mended first.` };
  }
  refused = plan;
  const outcome = await ask(`/api/plans/${page.dataset.plan}`, { method: 'PUT', body: plan, match: `"${page.dataset.version}"` });
  if (outcome.ok) {
    page.dataset.version = `${outcome.value.version}`;
    draft.isSaved(sent);
  }
  return outcome;
}

/** @param {{version: number, name: string}} kept */
function saved({ version, name }) {
  const clock = new Date().toLocaleTimeString('en-GB', { hour: '2-digit', minute: '2-digit' });
  state.textContent = `Saved ${clock}, version ${version}.`;
  document.getElementById('edit-title').textContent = name;
  say(answer, '');
  sayUnsaved();
}

/** @param {import('../api.js').Refused} refusal */
async function notSaved(refusal) {
  if (refusal.status === 412) {
    draft.keepNow();
    state.textContent = 'Not saved.';
    document.getElementById('stale-words').textContent = refusal.words + await byWhom();
    dialogue.open('stale-dialog');
  } else {
    state.textContent = refusal.words;
    if (refusal.status !== 422) say(answer, refusal.words);
    tell(refusal.words);
  }
}

/** What is mine goes under a name of its own; the page goes there. @param {Element} button @param {object} plan @param {string} name */
function copy(button, plan, name) {
  submit(button, answer, () => ask('/api/plans', { method: 'POST', body: { ...plan, name } }), ({ id }) => {
    draft.isSaved();
    draft.leaveBy(() => { window.location.href = `/plans/${id}`; });
  });
}

/** The starter plan that is looked at, under an id of its own. @param {HTMLButtonElement} button */
export function copyOnPress(button) {
  button?.addEventListener('click', () => submit(button, answer, () => ask(`/api/plans/${page.dataset.plan}/copy`,
    { method: 'POST', body: {} }), ({ id }) => { window.location.href = `/plans/${id}`; }));
}

/** The version that is looked at becomes the newest. @param {HTMLButtonElement} button */
export function bringBackOnPress(button) {
  const { plan, version, current } = page.dataset;
  button?.addEventListener('click', () => submit(button, answer, () => ask(`/api/plans/${plan}/versions/${version}/bring-back`,
    { method: 'POST', body: {}, match: `"${current}"` }), () => { window.location.href = `/plans/${plan}`; }));
}

/** Who saved meanwhile, as far as the board knows. */
async function byWhom() {
  const outcome = await ask(`/api/plans/${page.dataset.plan}/versions`);
  const newest = outcome.ok ? outcome.value[0] : undefined;
  if (!newest) return '';
  const by = newest.by === 'folder' ? 'a file in the board\'s folder of plans' : newest.device ? `"${newest.device}"` : 'another page or device';
  return ` Version ${newest.version} is by ${by}.`;
}

export function start() {
  page.addEventListener('submit', (event) => {
    event.preventDefault();
    submit(page, null, save, saved, notSaved);
  });
  document.getElementById('stale-copy').addEventListener('click', ({ target }) => {
    dialogue.close('stale-dialog');
    if (refused) copy(target, refused, `${refused.name} (copy)`.slice(0, 80));
  });
  document.addEventListener('keydown', (event) => {
    if ((event.ctrlKey || event.metaKey) && event.key === 's') {
      event.preventDefault();
      page.requestSubmit();
    }
  });
}

