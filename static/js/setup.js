// Setting a class up: the table is drawn while it is chosen, guests are typed, pasted or read from a file, and nothing that
// was typed is lost by a refusal.

import { ask, refused as notAsked } from './api.js';
import { carried } from './carried.js';
import { drawing } from './setup/drawing.js';
import * as guests from './setup/guests.js';
import { say, submit } from './submit.js';

const { plans, roster } = carried('carried');
const form = document.getElementById('setup-form');
const { elements } = form;
const classId = form.dataset.class;
const address = `/api/classes/${encodeURIComponent(classId)}`;

const count = () => Number(elements.seats.value);
const plan = () => plans[elements.planId.value];

function draw() {
  drawing({ table: elements.table.value, seats: count(), numbering: elements.numbering.value }, guests.all(count()));
}

/** What the chosen plan brings along, where nobody has said otherwise. @param {object} before the plan chosen until now */
function planChosen(before) {
  const now = plan();
  for (const field of ['name', 'place', 'seats', 'table']) {
    if (before && String(elements[field].value) === String(before[field])) elements[field].value = now[field];
  }
  document.getElementById('ends-hint').textContent = now.promise;
  guests.offer(now.candles);
  guests.show(count());
  draw();
}

let chosen = plan();
elements.planId.addEventListener('change', () => {
  const before = chosen;
  chosen = plan();
  planChosen(before);
});
for (const field of ['seats', 'table', 'numbering']) {
  elements[field].addEventListener('input', () => { guests.show(count()); draw(); });
}
document.getElementById('guests').addEventListener('input', draw);

// ---- lists of guests

const told = document.getElementById('guests-answer');

/** @param {{guests: object[], told: string[]}} seated */
function seatedAnew(seated) {
  const unknown = guests.take(seated.guests, count());
  told.replaceChildren(...[...seated.told, ...unknown].map((words) => {
    const line = document.createElement('p');
    line.textContent = words;
    return line;
  }));
  if (seated.guests.length > 0 && told.childElementCount === 0) told.textContent = `${seated.guests.length} at the table.`;
  draw();
}

/** @param {object} list */
const seat = (list) => ask('/api/guests', { method: 'POST', body: { ...list, seats: count(), table: elements.table.value } });

document.getElementById('take').addEventListener('click', (event) => {
  const file = document.getElementById('file').files[0];
  submit(event.target, told, async () => {
    const listed = file ? await guests.fileOf(file) : { text: document.getElementById('list').value };
    return listed ? seat(listed) : notAsked(guests.TOO_LONG);
  }, (seated) => {
    seatedAnew(seated);
    document.getElementById('file').value = '';
  });
});

document.getElementById('together').addEventListener('click', (event) => {
  submit(event.target, told, () => seat({ text: guests.asList(count()) }), seatedAnew);
});

// ---- saving

/** Which field a sentence of the board is about. */
const ABOUT = [[/"seats"|but there (is|are)/i, 'seats'], [/promised end|"ends"/i, 'ends'], [/"begins"|"startsAt"/, 'begins'],
  [/"name"/, 'name'], [/"place"|the place/, 'place'], [/plan/i, 'plan']];

function clearFaults() {
  for (const fault of form.querySelectorAll('.fault')) fault.remove();
  for (const field of form.querySelectorAll('[aria-invalid]')) field.removeAttribute('aria-invalid');
}

/** At its field, if it is about one. @param {import('./api.js').Refused} refusal */
function refused({ words, status, tag }) {
  if (status === 412) {
    form.dataset.tag = tag; // told, whoever saves once more means it
    return say(document.getElementById('setup-answer'), words);
  }
  const row = guests.rowIn(words);
  const field = row ?? document.getElementById(ABOUT.find(([of]) => of.test(words))?.[1] ?? '');
  if (!field) return say(document.getElementById('setup-answer'), words);
  field.setAttribute('aria-invalid', 'true');
  const fault = document.createElement('p');
  fault.className = 'fault';
  fault.textContent = words;
  (field.closest('.guest') ?? field.closest('.field')).after(fault);
  field.focus();
}

form.addEventListener('submit', (event) => {
  event.preventDefault();
  clearFaults();
  const body = {
    ...(elements.planId.value && { planId: elements.planId.value }),
    name: elements.name.value.trim(),
    begins: elements.begins.value,
    ends: elements.ends.value,
    place: elements.place.value.trim(),
    seats: count(),
    table: elements.table.value,
    numbering: elements.numbering.value,
    roster: guests.all(count()),
  };
  submit(form, document.getElementById('setup-answer'), () => (classId ? ask(`${address}/setup`, { method: 'PUT', body, match: form.dataset.tag })
    : ask('/api/classes', { method: 'POST', body })), ({ id }) => {
    unsaved = false;
    location.assign(`/classes/${encodeURIComponent(id)}/${elements.begins.value ? 'prep' : 'instructor'}`);
  }, refused);
});

let unsaved = false;
form.addEventListener('input', () => { unsaved = true; });
window.addEventListener('beforeunload', (event) => { if (unsaved) event.preventDefault(); });

// ---- deleting

document.getElementById('delete')?.addEventListener('click', (event) => {
  submit(event.target, document.getElementById('delete-answer'), () => ask(address, { method: 'DELETE', body: {} }), () => {
    unsaved = false;
    form.hidden = true;
    event.target.hidden = true;
    const deleted = document.getElementById('deleted');
    deleted.hidden = false;
    deleted.focus();
  });
});

document.getElementById('delete-undo')?.addEventListener('click', (event) => {
  submit(event.target, document.getElementById('delete-answer'), () => ask(`${address}/restore`, { method: 'POST', body: {} }),
    () => location.reload());
});

guests.offer(plan().candles);
guests.take(roster, count());
planChosen();
