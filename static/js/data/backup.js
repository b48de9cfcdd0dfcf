// Makes a backup, says how far it is, and offers the file.

import { ask } from '../api.js';
import { say, submit } from '../submit.js';

const AGAIN_MS = 700;

/** @typedef {{state: 'none' | 'making' | 'ready' | 'failed', words: string, name?: string, url?: string}} Standing */

/** @param {Standing} standing */
function show({ state, words, name, url }) {
  document.getElementById('backup-state').textContent = state === 'failed' ? '' : words;
  say(document.getElementById('backup-answer'), state === 'failed' ? words : '');
  const fetch = document.getElementById('backup-fetch');
  fetch.hidden = state !== 'ready';
  if (state !== 'ready') return;
  fetch.href = url;
  fetch.textContent = `Save ${name}`;
}

const moment = () => new Promise((done) => { setTimeout(done, AGAIN_MS); });

/** @param {Standing} standing @returns {Promise<import('../api.js').Outcome<Standing>>} once it is not being made any more */
async function followed(standing) {
  show(standing);
  if (standing.state !== 'making') return { ok: true, value: standing, tag: '' };
  await moment();
  const outcome = await ask('/api/backup');
  return outcome.ok ? followed(outcome.value) : outcome;
}

function follow(begin) {
  return submit(document.getElementById('backup-make'), document.getElementById('backup-answer'), async () => {
    const begun = await begin();
    return begun.ok ? followed(begun.value) : begun;
  }, ({ state }) => {
    if (state === 'ready') {
      document.getElementById('backup-last').textContent = 'The last backup was made just now.';
      document.querySelector('.due')?.remove();
      document.getElementById('backup-fetch').focus();
    }
  });
}

export function start() {
  const make = document.getElementById('backup-make');
  make?.addEventListener('click', () => follow(() => ask('/api/backup', { method: 'POST', body: {} })));
  if (make && document.getElementById('backup').dataset.making === 'true') follow(() => ask('/api/backup'));
}
