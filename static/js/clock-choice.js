// Which clock is right, said with one tap.

import { ask } from './api.js';
import { submit } from './submit.js';

/** @param {() => void} done @param {(refusal: import('./api.js').Refused) => void} [refused] else it is said below the buttons */
export function start(done, refused) {
  document.addEventListener('click', (event) => {
    const button = event.target.closest('button[data-clock-choice]');
    if (!button) return;
    const { clockChoice: choice, clockClass } = button.dataset;
    submit(button.parentElement, document.getElementById('clocks-answer'),
      () => ask('/api/clock', { method: 'POST', body: { choice, ...(clockClass && { class: clockClass }) } }), done, refused);
  });
}
