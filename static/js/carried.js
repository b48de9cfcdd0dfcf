// What the board sent along with the page, as JSON beside what is shown.

/**
 * @typedef {{eachCounts: string[], afterTheClose: string[]}} Traits types of commands, by what holds of all of a type
 *   (EventTrait of the board): eachCounts: said twice in a row it counts twice; afterTheClose: the close does not end it
 */

/** @param {string} id @returns {any} nothing on pages that carry none */
export function carried(id) {
  const text = document.querySelector(`#${id} [data-json]`)?.dataset.json;
  return text ? JSON.parse(text) : undefined;
}

/** @returns {Traits} of none on a page that was kept from an older release */
export function traits() {
  return carried('traits') ?? { eachCounts: [], afterTheClose: [] };
}
