// Opens an evening to be watched again: <button data-watch="ID"> that of a class, data-watch="" the recorded one that comes
// with the program, in two minutes. It opens the screen that this device is paired for.

import { ask } from './api.js';
import { submit } from './submit.js';

/** So many times as fast as it was: a class one was at oneself, to be looked through; and one to get to know the board. */
const THROUGH = 20;
const IN_TWO_MINUTES = 60;

/** @param {string} classId empty for the recorded evening */
function opened(classId) {
  const body = classId ? { classId, speed: THROUGH } : { demo: true, speed: IN_TWO_MINUTES };
  return ask('/api/playbacks', { method: 'POST', body });
}

/** Listens on the page. What could not be opened is told in the part named watch-answer. */
export function start() {
  document.addEventListener('click', (event) => {
    const button = event.target.closest('[data-watch]');
    if (!button) return;
    const screen = document.body.dataset.role === 'helper' ? 'helper' : 'instructor';
    submit(button, document.getElementById('watch-answer'), () => opened(button.dataset.watch),
      ({ id }) => location.assign(`/classes/${encodeURIComponent(id)}/${screen}`));
  });
}
