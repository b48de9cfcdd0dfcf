// Fills a <template> of the page: data-put takes a text, data-give takes data attributes, data-if stays only if it is so.

/**
 * @param {string} id of the template
 * @param {Record<string, string | number | boolean>} words
 * @returns {DocumentFragment}
 */
export function filled(id, words) {
  const part = document.getElementById(id).content.cloneNode(true);
  for (const element of part.querySelectorAll('[data-if]')) if (!words[element.dataset.if]) element.remove();
  for (const element of part.querySelectorAll('[data-put]')) element.textContent = String(words[element.dataset.put] ?? '');
  for (const element of part.querySelectorAll('[data-give]')) {
    for (const name of element.dataset.give.split(' ')) element.dataset[name] = String(words[name] ?? '');
  }
  // a button's data say what it wishes for, and these are no part of it
  for (const element of part.querySelectorAll('[data-if], [data-put], [data-give]')) {
    for (const how of ['if', 'put', 'give']) delete element.dataset[how];
  }
  return part;
}

/** Puts a mark of the page's own into every place that asks for one. @param {DocumentFragment} part @param {string} mark */
export function marked(part, mark) {
  const drawn = document.getElementById(`mark-${mark}`);
  for (const place of part.querySelectorAll('[data-mark]')) {
    if (drawn) place.replaceChildren(drawn.content.cloneNode(true));
  }
  return part;
}

/** "seats 3, 5 and 8". @param {number[]} seats */
export function seatWords(seats) {
  if (seats.length === 1) return `seat ${seats[0]}`;
  return `seats ${seats.slice(0, -1).join(', ')} and ${seats.at(-1)}`;
}
