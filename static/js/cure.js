// The page of vessels and waxes works without a script; only forgetting what a room has taught needs one.

async function forget(button) {
  const answer = document.getElementById('room-answer');
  if (button.dataset.sure !== 'yes') {
    button.dataset.sure = 'yes';
    button.textContent = 'Forget it for good';
    return;
  }
  button.disabled = true;
  try {
    const told = await fetch('/api/rooms/reset', {
      method: 'POST',
      headers: { 'Content-Type': 'application/json', Accept: 'application/json' },
      body: JSON.stringify({ room: button.dataset.resetRoom }),
      credentials: 'same-origin',
    });
    if (!told.ok) throw new Error((await told.json()).detail);
    button.closest('.lesson').remove();
    answer.textContent = 'Forgotten.';
  } catch (refusal) {
    answer.textContent = refusal instanceof TypeError ? 'The board cannot be reached just now.' : refusal.message;
    button.disabled = false;
  }
}

document.addEventListener('click', (event) => {
  const button = event.target.closest('[data-reset-room]');
  if (button) forget(button);
});
