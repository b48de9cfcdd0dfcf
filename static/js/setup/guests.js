// The guests as they are typed, a row a seat. Rows beyond the number of seats are kept, so that they come back with it.

const FIELDS = ['name', 'party', 'candle', 'note'];
/** A longer file is no list of guests; the board takes none. */
const LONGEST_FILE = 44_000;
export const TOO_LONG = 'This file is too large for a list of guests: a table has sixty seats at most.';

const list = document.getElementById('guests');
/** @type {HTMLElement[]} by seat, from 0 */
const rows = [];
/** @type {{id: string, name: string}[]} */
let candles = [];

/** @param {HTMLElement} row @param {string} field @returns {HTMLInputElement} */
const input = (row, field) => row.querySelector(`[data-field=${field}]`);

/** @param {number} seat from 1 @returns {HTMLElement} */
function rowOf(seat) {
  while (rows.length < seat) {
    const row = document.getElementById('guest-row').content.firstElementChild.cloneNode(true);
    const number = rows.length + 1;
    row.querySelector('.guest__seat').textContent = number;
    for (const field of FIELDS) {
      const label = input(row, field).parentElement.firstChild.textContent.trim();
      input(row, field).setAttribute('aria-label', `${label} at seat ${number}`);
    }
    choices(row);
    rows.push(row);
  }
  return rows[seat - 1];
}

/** @param {HTMLElement} row keeps its candle if the plan has it */
function choices(row) {
  const select = input(row, 'candle');
  const was = select.value;
  select.replaceChildren(...candles.map(({ id, name }) => new Option(name, id)));
  if (candles.some(({ id }) => id === was)) select.value = was;
}

/** @param {{id: string, name: string}[]} of the plan */
export function offer(of) {
  candles = of;
  list.classList.toggle('guests--one-candle', candles.length < 2);
  rows.forEach(choices);
}

/** @param {number} seats */
export function show(seats) {
  if (!(seats >= 1 && seats <= 60)) return;
  rowOf(seats);
  rows.forEach((row, index) => {
    if (index >= seats) row.remove();
    else if (!row.isConnected) list.append(row);
  });
}

/** @param {number} seats @returns {object[]} as the board takes a roster; one row for each seat */
export function all(seats) {
  return rows.slice(0, seats).map((row, index) => {
    const guest = Object.fromEntries(FIELDS.map((field) => [field, input(row, field).value.trim()]));
    return { seat: index + 1, ...guest, ...(candles.length < 2 && { candle: '' }) };
  });
}

/** @param {string} name an id of a candle, or what it is called */
function candle(name) {
  const meant = name.trim().toLowerCase();
  return candles.find(({ id, name: called }) => id === meant || called.toLowerCase() === meant)?.id ?? '';
}

/**
 * Puts guests at their seats; all other seats are empty then.
 * @param {object[]} guests
 * @param {number} seats
 * @returns {string[]} what could not be taken over, in sentences
 */
export function take(guests, seats) {
  const unknown = [];
  show(Math.max(seats, 1));
  for (const row of rows.slice(0, seats)) for (const field of ['name', 'party', 'note']) input(row, field).value = '';
  for (const guest of guests) {
    const row = rowOf(guest.seat);
    for (const field of ['name', 'party', 'note']) input(row, field).value = guest[field];
    if (!guest.candle) continue;
    if (candle(guest.candle)) {
      input(row, 'candle').value = candle(guest.candle);
    } else {
      unknown.push(`The plan has no candle "${guest.candle}" for seat ${guest.seat}; choose one there.`);
    }
  }
  show(seats);
  return unknown;
}

/** @param {number} seats @returns {string} all who have a name or a party, without their seats, as CSV */
export function asList(seats) {
  const quoted = (/** @type {string} */ text) => `"${text.replaceAll('"', '""')}"`;
  const there = all(seats).filter(({ name, party, note }) => name || party || note);
  return ['name,party,candle,note', ...there.map((guest) => FIELDS.map((field) => quoted(guest[field])).join(','))].join('\n');
}

/** @param {File} file @returns {Promise<{base64: string} | undefined>} nothing if it is too long */
export async function fileOf(file) {
  if (file.size > LONGEST_FILE) return undefined;
  const bytes = new Uint8Array(await file.arrayBuffer());
  return { base64: btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join('')) };
}

/** @param {string} words of the board @returns {HTMLInputElement | undefined} the field of a guest that they are about */
export function rowIn(words) {
  const [, field, seat] = /^The (name|party|candle|note) for seat (\d+)/.exec(words) ?? [];
  return field && rows[Number(seat) - 1] ? input(rows[Number(seat) - 1], field) : undefined;
}
