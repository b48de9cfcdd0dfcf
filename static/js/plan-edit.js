// The page that edits a plan: its parts, each in plans/edit-*.js, put together.

import { ask } from './api.js';
import * as dialogue from './dialogue.js';
import { onSubmit, submit } from './submit.js';
import * as check from './plans/edit-check.js';
import * as draft from './plans/edit-draft.js';
import * as preview from './plans/edit-preview.js';
import * as rows from './plans/edit-rows.js';
import * as save from './plans/edit-save.js';

const page = document.getElementById('edit-form');
const answer = document.getElementById('edit-answer');

function changed() {
  check.checkSoon();
  draft.keepSoon();
  save.sayUnsaved();
}

/** Grams or ounces: the page comes anew, with what was changed. @param {Event & {target: HTMLSelectElement}} event */
function chooseUnits({ target }) {
  draft.keepNow();
  const goOn = draft.unsaved() ? '?go-on' : '';
  submit(target, answer, () => ask('/api/units', { method: 'PUT', body: { [target.dataset.measure]: target.value } }), () => {
    draft.leaveBy(() => { window.location.assign(window.location.pathname + goOn); });
  });
}

function edit() {
  rows.start(page, changed);
  page.addEventListener('input', changed);
  page.addEventListener('change', changed);
  check.start(({ plan }) => preview.show(plan));
  draft.start(page.dataset.plan, () => {
    rows.describeAll();
    changed();
  });
  save.start();
  check.check();
}

dialogue.start();
rows.describeAll();
for (const select of document.querySelectorAll('[data-measure]')) select.addEventListener('change', chooseUnits);
save.copyOnPress(document.getElementById('edit-copy'));
save.bringBackOnPress(document.getElementById('edit-bring-back'));
if (document.getElementById('edit-save')) edit();
else preview.show(JSON.parse(page.dataset.whole));
