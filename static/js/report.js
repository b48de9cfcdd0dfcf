// A class looked back on: it prints, and what past classes taught can be taken over or taken back.

import { ask } from './api.js';
import './print.js';
import { submit } from './submit.js';

document.addEventListener('click', (event) => {
  const button = event.target.closest('[data-lesson]');
  if (!button) return;
  const { classId, lesson: method } = button.dataset;
  submit(button, document.getElementById('lesson-answer'), () => ask(`/api/classes/${classId}/step-lesson`, { method }),
    () => location.reload());
});
