// Which clock is right, said with one tap.

/**
 * @param {HTMLElement} button with data-clock-choice and data-clock-class
 * @returns {Promise<string>} why it could not be; empty once it is so
 */
async function choose({ dataset }) {
  try {
    const answer = await fetch('/api/clock', {
      method: 'POST',
      headers: { 'Content-Type': 'application/json', Accept: 'application/json' },
      body: JSON.stringify({ choice: dataset.clockChoice, ...(dataset.clockClass && { class: dataset.clockClass }) }),
      credentials: 'same-origin',
    });
    return answer.ok ? '' : (await answer.json()).detail ?? 'That was not possible.';
  } catch {
    return 'The board cannot be reached just now.';
  }
}

/** @param {() => void} done @param {(words: string) => void} refused */
export function start(done, refused) {
  document.addEventListener('click', async (event) => {
    const button = event.target.closest('button[data-clock-choice]');
    if (!button) return;
    const buttons = button.parentElement.querySelectorAll('button');
    for (const each of buttons) each.disabled = true;
    const words = await choose(button);
    for (const each of buttons) each.disabled = false;
    if (words) refused(words); else done();
  });
}
