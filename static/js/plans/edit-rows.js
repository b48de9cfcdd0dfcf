// Rows of the lists of a plan: added, removed with an undo, moved by buttons and by Alt with the arrows, and what a folded
// one says of itself.

import * as form from './edit-form.js';
import * as picture from './edit-picture.js';

const list = (/** @type {Element} */ row) => row.closest('.edit-rows');
const undo = document.getElementById('edit-undo');
/** Puts the row that was removed last back. @type {(() => void) | undefined} */
let putBack;
/** What follows from a change. @type {() => void} */
let changed = () => {};

/** @param {string} words read aloud to those who do not see it */
export function tell(words) {
  const place = document.getElementById('edit-said');
  // the same again is said again
  place.textContent = place.textContent === words ? `${words} ` : words;
}

/** @param {HTMLElement} row */
const called = (row) => form.nameOf(row) || `this ${list(row).dataset.one}`;

/** @param {HTMLElement} row @param {string} at "8 min", "soy wax"; empty for what is not asked or not filled in */
function briefly(row, at) {
  const one = form.field(row, at);
  const value = one && !one.hidden ? form.valueOf(one).trim() : '';
  if (value === '') return '';
  if (one.dataset.sort === 'choice') return form.control(one).selectedOptions[0]?.textContent.split(':')[0] ?? '';
  const unit = one.querySelector('label .hint')?.textContent ?? '';
  const bare = /^[-\d.,]+$/.test(value) && unit ? `${value} ${unit}` : value;
  return /perSeat|perClass/.test(at) ? (value === '0' ? '' : `${value} ${at === 'perSeat' ? 'a place' : 'for all'}`)
    : at === 'inStock' ? `${value} in stock` : bare;
}

/** @param {HTMLElement} row */
function describe(row) {
  form.askWhatIsNeeded(row);
  picture.show(row);
  const rows = form.rowsOf(list(row));
  const index = rows.indexOf(row);
  row.querySelector('.edit-row__number').textContent = `${index + 1}`;
  const melter = form.field(row, 'melter');
  row.querySelector('.edit-row__name').textContent = form.nameOf(row)
    || (melter && form.valueOf(melter) && form.control(melter).selectedOptions[0]?.textContent) || `New ${list(row).dataset.one}`;
  row.querySelector('.edit-row__brief').textContent = list(row).dataset.brief.split(' ')
    .map((at) => briefly(row, at)).filter(Boolean).join(' · ');
  for (const button of row.querySelectorAll('[data-move], [data-remove]')) {
    const does = button.dataset.move ? `Move ${called(row)} ${button.dataset.move}` : `Remove ${called(row)}`;
    button.setAttribute('aria-label', does);
    button.title = does;
    button.disabled = button.dataset.move === 'up' ? index === 0 : button.dataset.move === 'down' && index === rows.length - 1;
  }
}

/** @param {Element} section */
function describeList(section) {
  const rows = form.listOf(section);
  const count = rows.children.length;
  section.querySelector('.edit-section__count').textContent = count ? `${count}` : '';
  section.querySelector('.edit-rows__none').hidden = count > 0;
  const add = section.querySelector('[data-add]');
  if (add) add.disabled = count >= Number(rows.dataset.most);
  for (const row of form.rowsOf(rows)) describe(row);
}

/** Melters, circuits and waxes are chosen by name elsewhere. @param {string} sectionId @param {string} at @param {HTMLElement[]} named */
function offer(sectionId, at, named) {
  for (const row of form.rowsOf(form.listOf(document.getElementById(sectionId)))) {
    const select = form.control(form.field(row, at));
    for (const one of named) {
      const id = one.dataset.id;
      if (!id) continue;
      const option = [...select.options].find((other) => other.value === id);
      if (option) option.textContent = form.nameOf(one) || id;
      else select.add(new Option(form.nameOf(one) || id, id));
    }
    const there = named.map((one) => one.dataset.id);
    for (const option of [...select.options].slice(1)) {
      if (!there.includes(option.value) && !option.selected) option.remove();
    }
  }
}

/** Everything that rows say of themselves and of each other. */
export function describeAll() {
  const rows = (/** @type {string} */ id) => form.rowsOf(form.listOf(document.getElementById(id)));
  offer('appliances', 'melter', rows('melters'));
  offer('appliances', 'circuit', rows('circuits'));
  for (const section of form.sections()) {
    if (form.listOf(section)) describeList(section);
    else form.askWhatIsNeeded(section);
  }
}

/** A new row is named for its name, once it has one, so that other parts can name it. @param {HTMLElement} row */
export function identify(row) {
  if (row.dataset.id || !form.nameOf(row)) return;
  const taken = form.rowsOf(list(row)).map((other) => other.dataset.id);
  const plain = form.nameOf(row).normalize('NFKD').toLowerCase().replace(/[^a-z0-9]+/g, '-').replace(/^-+|-+$/g, '').slice(0, 34)
    .replace(/-+$/, '');
  const base = plain || list(row).dataset.one;
  let id = base;
  for (let n = 2; taken.includes(id); n += 1) id = `${base}-${n}`;
  row.dataset.id = id;
}

/** @param {HTMLElement} section */
function add(section) {
  const row = form.freshRow(section);
  if (section.id === 'steps' && form.rowsOf(form.listOf(section)).some((step) => form.valueOf(form.field(step, 'kind')) === 'cure')) {
    form.setValue(form.field(row, 'kind'), 'finish'); // nothing else may follow the cure but talk
  }
  form.listOf(section).append(row);
  changed();
  form.control(row.querySelector('.edit-field')).focus();
  tell(`Added. ${section.querySelector('h2').textContent}: ${form.listOf(section).children.length}.`);
}

/** @param {HTMLElement} row */
function remove(row) {
  const words = called(row);
  const from = list(row);
  const before = row.nextElementSibling;
  row.remove();
  changed();
  putBack = () => {
    from.insertBefore(row, before?.parentNode === from ? before : null);
    undo.hidden = true;
    putBack = undefined;
    changed();
    row.querySelector('summary').focus();
    tell(`${words} is back.`);
  };
  document.getElementById('edit-undo-words').textContent = `Removed: ${words}.`;
  undo.hidden = false;
  document.getElementById('edit-undo-button').focus();
}

/** @param {HTMLElement} row @param {string} way @param {HTMLElement} focus */
function move(row, way, focus) {
  const other = way === 'up' ? row.previousElementSibling : row.nextElementSibling;
  if (!other) {
    tell(`${called(row)} is the ${way === 'up' ? 'first' : 'last'}.`);
    return;
  }
  if (way === 'up') other.before(row);
  else other.after(row);
  changed();
  // at an end its button rests
  (focus.disabled ? row.querySelector('summary') : focus).focus();
  row.scrollIntoView({ block: 'nearest' });
  const rows = form.rowsOf(list(row));
  tell(`${called(row)} is now ${rows.indexOf(row) + 1} of ${rows.length}.`);
}

/** @param {MouseEvent} event */
function clicked(event) {
  const button = event.target.closest('button');
  if (!button) return;
  const row = button.closest('.edit-row');
  if (button.dataset.add !== undefined) add(button.closest('.edit-section'));
  else if (button.dataset.remove !== undefined) remove(row);
  else if (button.dataset.move) move(row, button.dataset.move, button);
  else if (button.id === 'edit-undo-button') putBack?.();
}

/** @param {KeyboardEvent} event */
function pressed(event) {
  const row = event.target.closest?.('.edit-row');
  if (!row || !event.altKey || event.ctrlKey || event.metaKey || !['ArrowUp', 'ArrowDown'].includes(event.key)) return;
  event.preventDefault();
  move(row, event.key === 'ArrowUp' ? 'up' : 'down', event.target);
}

/** @param {HTMLFormElement} page @param {() => void} whenChanged */
export function start(page, whenChanged) {
  changed = () => {
    describeAll();
    whenChanged();
  };
  page.addEventListener('click', clicked);
  page.addEventListener('keydown', pressed);
  page.addEventListener('change', (event) => {
    const row = event.target.closest('.edit-row');
    if (row) identify(row);
    describeAll();
  });
  page.addEventListener('input', (event) => {
    const row = event.target.closest('.edit-row');
    if (row) describe(row);
    else form.askWhatIsNeeded(event.target.closest('.edit-section'));
  });
}
