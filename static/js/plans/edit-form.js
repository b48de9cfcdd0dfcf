// The form of a plan, read and filled in. A field says by data-at where its value stands in its row, as the plan's JSON has
// it; what it comes to in numbers and units is the board's to say (EditReading).

/**
 * @typedef {{id: string, rest: string, values: Record<string, string>, exact: Record<string, string>}} Row
 *   values: as typed, with their unit; exact: the figure behind a value that nobody changed
 * @typedef {Record<string, Row | Row[]>} Form by the names of the sections
 */

const BARE_NUMBER = /^[-+\d.,\s]+$/;
let made = 0;

/** @param {ParentNode} part @param {string} what @returns {HTMLElement[]} */
const all = (part, what) => [...part.querySelectorAll(what)];

/** @returns {HTMLElement[]} */
export const sections = () => all(document, '.edit-section');
/** @param {Element} section @returns {HTMLElement | null} nothing if it is no list */
export const listOf = (section) => section.querySelector('.edit-rows');
/** @param {Element} list @returns {HTMLElement[]} */
export const rowsOf = (list) => [...list.children].filter((row) => row.matches('.edit-row'));
/** @param {Element} part a row, or a section that is none @returns {HTMLElement[]} */
export const fieldsOf = (part) => all(part, '.edit-field');
/** @param {Element} part @param {string} at @returns {HTMLElement | undefined} */
export const field = (part, at) => fieldsOf(part).find((one) => one.dataset.at === at);
/** @param {Element} one @returns {any} what the field is filled in with; the first box of several */
export const control = (one) => one.querySelector('input, select, textarea');

/** @param {HTMLElement} one a field */
export function valueOf(one) {
  if (one.dataset.sort === 'flag') return String(control(one).checked);
  if (one.dataset.sort === 'several') return all(one, 'input:checked').map((box) => box.value).join(' ');
  return control(one).value;
}

/** @param {HTMLElement} one @param {string} value */
export function setValue(one, value) {
  if (one.dataset.sort === 'flag') control(one).checked = value === 'true';
  else if (one.dataset.sort === 'several') for (const box of all(one, 'input')) box.checked = value.split(' ').includes(box.value);
  else control(one).value = value;
}

/** @param {HTMLElement} one a field @returns {string} its label */
export const wordsOf = (one) => (one.querySelector('legend') ?? one.querySelector('label')).firstChild.textContent.trim()
  || one.querySelector('label').textContent.trim();

/** What is typed without a unit is in that of its field. @param {HTMLElement} one */
function withUnit(one) {
  const value = valueOf(one).trim();
  const { unit } = control(one).dataset;
  return unit && value !== '' && BARE_NUMBER.test(value) ? `${value} ${unit}` : value;
}

/** @param {HTMLElement} part @returns {Row} */
function rowForm(part) {
  const values = {};
  const exact = {};
  for (const one of fieldsOf(part)) {
    const { dataset, value } = control(one);
    values[one.dataset.at] = withUnit(one);
    if (dataset.exact && value === dataset.shown) exact[one.dataset.at] = dataset.exact;
  }
  return { id: part.dataset.id ?? '', rest: part.dataset.rest, values, exact };
}

/** @returns {Form} */
export function form() {
  return Object.fromEntries(sections().map((section) => {
    const list = listOf(section);
    return [section.id, list ? rowsOf(list).map(rowForm) : rowForm(section.querySelector('.edit-single'))];
  }));
}

/** @param {HTMLElement} part @param {Row} row */
function fillRow(part, { id, rest, values, exact }) {
  part.dataset.rest = rest;
  if (id) part.dataset.id = id;
  for (const one of fieldsOf(part)) {
    const { at } = one.dataset;
    if (values[at] === undefined) continue;
    const { unit } = control(one).dataset;
    const value = unit && values[at].endsWith(` ${unit}`) ? values[at].slice(0, -unit.length - 1) : values[at];
    // what names something that comes later in the form is not among its choices yet
    if (one.dataset.sort === 'choice' && ![...control(one).options].some((option) => option.value === value)) {
      control(one).add(new Option(value, value));
    }
    setValue(one, value);
    if (exact[at]) Object.assign(control(one).dataset, { shown: value, exact: exact[at] });
    else if (unit) delete control(one).dataset.exact;
  }
}

/** @param {HTMLElement} section @returns {HTMLElement} a new row, not in the list yet */
export function freshRow(section) {
  made += 1;
  const copy = document.createElement('template');
  copy.innerHTML = section.querySelector('template').innerHTML.replaceAll(`${section.id}-NEW`, `${section.id}-n${made}`);
  return copy.content.querySelector('.edit-row');
}

/** @param {Form} kept as form() gave it, perhaps by another release */
export function fill(kept) {
  for (const section of sections()) {
    const list = listOf(section);
    const rows = kept[section.id];
    if (!list && rows) fillRow(section.querySelector('.edit-single'), rows);
    if (!list || !Array.isArray(rows)) continue;
    list.replaceChildren(...rows.map((row) => {
      const element = freshRow(section);
      element.querySelector('details').open = false;
      fillRow(element, row);
      return element;
    }));
  }
}

/** @param {string} condition kind=pour|finish&_stations=true @param {Element} part */
function holds(condition, part) {
  return condition.split('&').every((one) => {
    const [at, values] = one.split('=');
    const asked = field(part, at);
    return values.split('|').includes(asked ? valueOf(asked) : '');
  });
}

/** Fields come and go with what others say. @param {Element} part */
export function askWhatIsNeeded(part) {
  for (const one of fieldsOf(part)) {
    if (one.dataset.when) one.hidden = !holds(one.dataset.when, part);
  }
}

/** @param {HTMLElement} part a row or a section that is no list @returns {string} where it stands in the plan */
export function placeOf(part) {
  const row = part.closest('.edit-row');
  if (!row) return part.closest('.edit-section').dataset.place;
  const list = row.closest('.edit-rows');
  return `${list.dataset.list}/${rowsOf(list).indexOf(row)}`;
}

/** @param {HTMLElement} row @returns {string} what it is called; empty if it has no name yet */
export const nameOf = (row) => valueOf(field(row, 'name')).trim();
