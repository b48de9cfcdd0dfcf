// How long guests' names are kept. What would be forgotten at once is asked about first.

import { ask } from '../api.js';
import * as again from '../again.js';
import { asked } from '../dialogue.js';
import { onSubmit, say, submit } from '../submit.js';

const PLACE = 'days-answer';

/** @param {{days: number | null, sure?: true}} body */
const choose = (body) => ask('/api/settings/forget-guests', { method: 'PUT', body });

const reload = () => again.show('guests-title');

export function start() {
  const form = document.getElementById('days-form');
  if (!form) return;
  const place = document.getElementById(PLACE);
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    const days = form.elements.days.valueAsNumber;
    submit(form, place, () => choose({ days }), reload, async (refusal) => {
      if (refusal.problem !== 'needs-a-yes') return say(place, refusal.words);
      document.getElementById('days-ask').textContent = refusal.words;
      if (await asked('days-dialog')) {
        const sure = await choose({ days, sure: true });
        if (sure.ok) reload(); else say(place, sure.words);
      }
      return undefined;
    });
  });
  const off = document.getElementById('days-off');
  off?.addEventListener('click', () => submit(off, place, () => choose({ days: null }), reload));
}
