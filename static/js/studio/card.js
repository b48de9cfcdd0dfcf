// The card of the start page on which the studio is said for the first time. It waits where somebody chose "Later" on this
// device; the page of its own is always there.

import * as stored from '../stored.js';
import { submit } from '../submit.js';
import * as studio from './form.js';

const LATER = 'later';

export function start() {
  const card = document.getElementById('your-studio');
  if (!card || stored.read(stored.KEYS.studio) === LATER) return;
  card.hidden = false;
  studio.start();
  studio.form().addEventListener('submit', (event) => {
    event.preventDefault();
    studio.say('');
    submit(studio.form(), null, () => studio.save(studio.typed()), () => location.reload(), ({ words }) => studio.say(words));
  });
  document.getElementById('studio-later').addEventListener('click', () => {
    stored.write(stored.KEYS.studio, LATER);
    card.hidden = true;
    document.getElementById('studio-link')?.focus();
  });
}
