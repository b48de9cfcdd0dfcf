// The page of vessels and waxes works without a script; only forgetting what a room has taught needs one.

import { ask } from './api.js';
import { say, submit } from './submit.js';

/** @param {HTMLButtonElement} button */
function forget(button) {
  if (button.dataset.sure !== 'yes') {
    button.dataset.sure = 'yes';
    button.textContent = 'Forget it for good';
    return;
  }
  const place = document.getElementById('room-answer');
  submit(button, place, () => ask('/api/rooms/reset', { method: 'POST', body: { room: button.dataset.resetRoom } }), () => {
    button.closest('.lesson').remove();
    say(place, 'Forgotten.');
  });
}

document.addEventListener('click', (event) => {
  const button = event.target.closest('[data-reset-room]');
  if (button) forget(button);
});
