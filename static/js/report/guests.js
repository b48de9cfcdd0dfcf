// The guests of a class that is over are forgotten, once that was asked.

import { ask } from '../api.js';
import * as again from '../again.js';
import { submit } from '../submit.js';

export function start() {
  document.addEventListener('click', (event) => {
    const button = event.target.closest('#forget');
    if (!button) return;
    const { classId } = button.dataset;
    submit(button, document.getElementById('forget-answer'),
      () => ask(`/api/classes/${classId}/forget-guests`, { method: 'POST' }), () => {
        navigator.serviceWorker?.controller?.postMessage({ forget: true }); // its kept pages still have the names
        again.show('guests-title');
      });
  });
}
