// A class looked back on: it prints, and what past classes taught can be taken over or taken back.

import './print.js';

/** @param {HTMLButtonElement} button */
async function settle(button) {
  const answer = document.getElementById('lesson-answer');
  button.disabled = true;
  try {
    const told = await fetch(`/api/classes/${button.dataset.classId}/step-lesson`, {
      method: button.dataset.lesson,
      headers: { Accept: 'application/json' },
      credentials: 'same-origin',
    });
    if (!told.ok) throw new Error((await told.json()).detail);
    window.location.reload();
  } catch (refusal) {
    answer.textContent = refusal instanceof TypeError ? 'The board cannot be reached just now.' : refusal.message;
    button.disabled = false;
  }
}

document.addEventListener('click', (event) => {
  const button = event.target.closest('[data-lesson]');
  if (button) settle(button);
});
