// What a class would have saved with one thing changed: asked for once the look back is there, and made in a copy of the
// plan at a press.

import { ask, page } from './api.js';
import { say, submit } from './submit.js';

const section = document.getElementById('what-if');
const { classId } = section?.dataset ?? {};
const answers = document.getElementById('what-if-answers');
const answer = document.getElementById('what-if-answer');

async function show() {
  const outcome = await page(`/classes/${classId}/report/what-if`);
  if (outcome.ok) answers.replaceChildren(...outcome.value.body.childNodes);
  else say(answers, outcome.words);
}

section?.addEventListener('click', (event) => {
  const button = event.target.closest('[data-change]');
  if (!button) return;
  submit(button, answer, () => ask(`/api/classes/${classId}/what-if/${button.dataset.change}/plan`, { method: 'POST' }),
    ({ page: address, name }) => {
      const link = Object.assign(document.createElement('a'), { href: address, textContent: name });
      const made = Object.assign(document.createElement('p'), { className: 'what-if__done' });
      made.append('Made: ', link);
      for (const other of section.querySelectorAll('[data-change]')) {
        if (other.dataset.change === button.dataset.change) (other.closest('.ask__buttons') ?? other).replaceWith(made.cloneNode(true));
      }
      answer.textContent = `The plan "${name}" is among your plans. The class and its own plan stay as they are; delete the copy on the page of plans if you do not want it.`;
      section.querySelector(`.what-if__done a[href="${address}"]`)?.focus();
    });
});

if (section) show();
