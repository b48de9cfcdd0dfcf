// Classes that cannot be read keep names of guests: one is deleted for good, once that was asked.

import { ask } from '../api.js';
import * as again from '../again.js';
import { asked } from '../dialogue.js';
import { submit } from '../submit.js';

export function start() {
  document.getElementById('unreadable')?.addEventListener('click', async (event) => {
    const button = event.target.closest('[data-delete-class]');
    if (!button) return;
    const confirm = button.dataset.deleteClass;
    document.getElementById('unreadable-id').textContent = confirm;
    if (!await asked('unreadable-dialog')) return;
    submit(button, document.getElementById('unreadable-answer'),
      () => ask(`/api/classes/${encodeURIComponent(confirm)}`, { method: 'DELETE', body: { confirm } }), () => {
        button.closest('li').remove();
        again.show(document.querySelector('[data-delete-class]') ? 'unreadable-title' : 'guests-title');
      });
  });
}
