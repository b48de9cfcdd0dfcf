// The table as it will stand, drawn by the board's own chart.

import { ask } from '../api.js';

/** Only the newest drawing counts. */
let newest = 0;

/** @param {string} classes @param {string[]} lines @returns {HTMLLIElement} */
function cell(classes, ...lines) {
  const item = document.createElement('li');
  item.className = classes;
  lines.filter(Boolean).forEach((line, index) => {
    const part = document.createElement(index === 0 ? 'b' : 'span');
    part.textContent = line;
    item.append(part);
  });
  return item;
}

/**
 * @param {{table: string, seats: number, numbering: string}} of
 * @param {{seat: number, name: string, party: string}[]} guests
 */
export async function drawing(of, guests) {
  const mine = ++newest;
  const { ok, value } = await ask(`/api/seating?${new URLSearchParams(of)}`);
  if (!ok || mine !== newest) return; // what is wrong is told when it is saved
  const cells = document.getElementById('drawing');
  cells.className = `drawing__cells cols-${value.columns} rows-${value.rows}`;
  const tops = value.tables.map((top) => cell(`drawing__top col-${top.column} row-${top.row} across-${top.columns} deep-${top.rows}`));
  for (const top of tops) top.setAttribute('aria-hidden', 'true');
  cells.replaceChildren(...tops, ...value.places.map(({ column, row }, index) => {
    const { name, party } = guests[index] ?? {};
    return cell(`drawing__seat col-${column} row-${row}${party ? ' drawing__seat--party' : ''}`, String(index + 1), name, party);
  }));
}
