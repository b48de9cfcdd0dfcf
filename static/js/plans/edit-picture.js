// Beside the choice of a step's picture: the drawing that its screens will show.

import * as form from './edit-form.js';

const drawings = [...document.querySelectorAll('#pictures template')];

/** @param {string} word of the picture; empty for what the kind shows @param {string} kind */
const drawingOf = (word, kind) => drawings.find(({ dataset }) => (word ? dataset.picture === word : dataset.kinds.split(' ').includes(kind)));

/** @param {HTMLElement} row one that has no picture is left as it is */
export function show(row) {
  const one = form.field(row, 'picture');
  if (!one) return;
  const place = one.querySelector('.edit-field__drawing');
  const drawing = drawingOf(form.valueOf(one), form.valueOf(form.field(row, 'kind')));
  if (place.dataset.shown === drawing?.dataset.picture) return;
  place.replaceChildren(...(drawing ? [drawing.content.cloneNode(true)] : []));
  place.dataset.shown = drawing?.dataset.picture ?? '';
}
