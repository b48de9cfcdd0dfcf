// The list of plans: copying, deleting with a way back, importing. What another device did shows when this page is looked
// at again. On the page of one version: bringing it back.

import { ask, page, refused } from './api.js';
import * as dialogue from './dialogue.js';
import { onSubmit, submit } from './submit.js';

/** As the board takes, in bytes. */
const LARGEST_PLAN = 512 * 1024;
const answerLine = document.getElementById('plans-answer');

/** The lists as the board has them now; what is said above them stays. */
async function refresh() {
  const outcome = await page('/plans');
  const now = outcome.ok && outcome.value.getElementById('plans-lists');
  if (!now) return;
  const lists = document.getElementById('plans-lists');
  const open = document.getElementById('deleted-plans')?.open ?? false;
  if (lists.innerHTML === now.innerHTML) return;
  lists.replaceWith(now);
  const deleted = document.getElementById('deleted-plans');
  if (deleted) deleted.open = open;
}

let undo = () => {};

/**
 * Says what was done, with a way back where there is one, or a way on.
 * @param {string} words @param {(() => void) | null} [back] @param {string} [made] the id of a plan that was made
 */
function tell(words, back = null, made = '') {
  document.getElementById('said-words').textContent = words;
  const edit = document.getElementById('said-edit');
  edit.hidden = !made;
  edit.href = `/plans/${made}`;
  const button = document.getElementById('said-undo');
  button.hidden = !back;
  undo = back ?? (() => {});
  const said = document.getElementById('said');
  said.hidden = false;
  (back ? button : said).focus();
}

/** @param {Element} pressed @param {string} id @param {string} name */
function restore(pressed, id, name) {
  return submit(pressed, answerLine, () => ask(`/api/plans/${id}/restore`, { method: 'POST', body: {} }), async () => {
    await refresh();
    tell(`"${name}" is back.`);
  });
}

/** Told what stands now, a refusal of an old look leaves the list as it is now. @param {import('./api.js').Refused} refusal */
async function staleOr(refusal) {
  answerLine.textContent = refusal.words;
  if (refusal.status === 412 || refusal.status === 404) await refresh();
}

let copying = '';

/** @type {Record<string, (button: HTMLButtonElement, plan: DOMStringMap) => unknown>} */
const actions = {
  'copy': (_, { plan, name }) => {
    copying = plan;
    document.getElementById('copy-name').value = `Copy of ${name}`.slice(0, 80);
    dialogue.open('copy-dialog');
    document.getElementById('copy-name').select();
  },
  'delete': (button, { plan, name, tag }) => submit(button, answerLine,
    () => ask(`/api/plans/${plan}`, { method: 'DELETE', match: tag }), async () => {
      await refresh();
      tell(`"${name}" is deleted.`, () => restore(document.getElementById('said-undo'), plan, name));
    }, staleOr),
  'restore': (button, { plan, name }) => restore(button, plan, name),
  'bring-back': (button, { plan, number, tag }) => submit(button, answerLine,
    () => ask(`/api/plans/${plan}/versions/${number}/bring-back`, { method: 'POST', body: {}, match: tag }),
    () => location.assign(`/plans/${plan}/versions`)),
};

document.addEventListener('click', (event) => {
  const button = event.target.closest('button[data-act]');
  if (button) actions[button.dataset.act](button, button.closest('[data-plan]').dataset);
});
document.getElementById('said-undo')?.addEventListener('click', () => undo());
dialogue.start();

onSubmit('copy-form', 'copy-answer', ({ elements }) => ask(`/api/plans/${copying}/copy`,
  { method: 'POST', body: { name: elements.name.value.trim() } }), async (made) => {
  dialogue.close('copy-dialog');
  await refresh();
  tell(`"${made.name}" is one of your plans now.`, null, made.id);
});

onSubmit('new-form', 'new-answer', ({ elements }) => ask('/api/plans/new', { method: 'POST', body: {
  name: elements.name.value.trim(),
  seats: Number(elements.seats.value),
  candle: elements.candle.value,
  minutes: Number(elements.minutes.value),
  venue: elements.venue.value,
  pouring: elements.pouring.value,
  atOnce: Number(elements.atOnce.value),
} }), async (made) => {
  document.getElementById('new-form').reset();
  dialogue.close('new-dialog');
  await refresh();
  tell([`"${made.name}" is one of your plans now.`, ...made.remarks].join(' '), null, made.id);
});

/** @param {import('./api.js').Finding[]} problems */
function list(problems) {
  const place = document.getElementById('import-problems');
  place.hidden = problems.length === 0;
  place.replaceChildren(...problems.map(({ place: where, sentence }) => {
    const item = document.createElement('li');
    const code = document.createElement('code');
    code.textContent = where;
    item.append(...(where ? [code, ' '] : []), sentence);
    return item;
  }));
}

/** @param {HTMLFormElement} form @returns {Promise<import('./api.js').Outcome<any>>} */
async function imported({ elements }) {
  list([]);
  const file = elements.file.files[0];
  if (file && file.size > LARGEST_PLAN) return refused(`"${file.name}" is too large: a plan has at most 512 KiB.`);
  const text = file ? await file.text() : elements.text.value;
  if (text.trim() === '') return refused(file ? `"${file.name}" is empty.` : 'Choose a file, or put its text in.');
  const outcome = await ask('/api/plans', { method: 'POST', text });
  if (outcome.ok || outcome.problems.length === 0) return outcome;
  list(outcome.problems);
  return { ...outcome, words: `It was not imported: ${outcome.problems.length === 1 ? 'one thing is' : `${outcome.problems.length} things are`} wrong with it.` };
}

onSubmit('import-form', 'import-answer', imported, async (made) => {
  document.getElementById('import-form').reset();
  dialogue.close('import-dialog');
  await refresh();
  tell(`"${made.name}" is one of your plans now.`, null, made.id);
});

// what was chosen wins over what was typed: so only one of them is there
document.getElementById('import-file')?.addEventListener('change', () => { document.getElementById('import-text').value = ''; });
document.getElementById('import-text')?.addEventListener('input', () => { document.getElementById('import-file').value = ''; });

if (document.getElementById('plans-lists')) {
  document.addEventListener('visibilitychange', () => { if (!document.hidden) refresh(); });
  window.addEventListener('focus', refresh);
  window.addEventListener('pageshow', (event) => { if (event.persisted) refresh(); });
}
