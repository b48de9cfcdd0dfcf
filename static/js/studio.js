// The studio's page: said, seen as it will look, saved, and had back as it was before.

import * as studio from './studio/form.js';
import { submit } from './submit.js';

const preview = document.getElementById('preview');
const undo = document.getElementById('studio-undo');

/** What stood before it was saved last. @type {import('./studio/form.js').Studio | undefined} */
let before;

/** What is typed, where it will stand; what is not said is named, and does not stand there. */
function showWords() {
  for (const [field, words] of Object.entries(studio.typed())) {
    for (const place of preview.querySelectorAll(`[data-shown="${field}"]`)) {
      place.textContent = words;
      place.dir = 'auto';
    }
  }
}

/** @param {import('./studio/form.js').Look} look */
function showColour(look) {
  for (const figure of preview.querySelectorAll('[data-light]')) {
    const { paper, card, ink, lead, onLead } = look[figure.dataset.light];
    for (const [name, value] of Object.entries({ paper, card, ink, lead, 'on-lead': onLead })) {
      figure.style.setProperty(`--${name}`, value);
    }
  }
}

/** @param {import('./studio/form.js').Studio} wanted @param {Element} pressed @param {(was: import('./studio/form.js').Studio) => void} done */
function save(wanted, pressed, done) {
  studio.say('');
  submit(pressed, null, () => studio.save(wanted), (value) => done(value.before), ({ words }) => studio.say(words));
}

studio.start(showColour);
showWords();
studio.form().addEventListener('input', showWords);

studio.form().addEventListener('submit', (event) => {
  event.preventDefault();
  save(studio.typed(), studio.form(), (was) => {
    before = was;
    undo.hidden = false;
    studio.say('Saved. Every screen shows it.');
  });
});

undo.addEventListener('click', () => save(before, undo, () => {
  studio.fill(before);
  undo.hidden = true;
  studio.form().elements.name.focus();
  studio.say('It is as it was before.');
}));
