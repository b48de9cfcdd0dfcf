// The box of taps that the board does not have yet, kept in this browser: it outlives the page, and every page of this
// browser that shows the class sees the same one.

/**
 * @typedef {{commandId: string, type: string, at?: string, clocks?: number, seat?: number, step?: string, seq?: number,
 *   to?: string|number, with?: number, activity?: string, helper?: string, name?: string, text?: string,
 *   celsius?: number, on?: boolean}} Command
 * @typedef {{key: string, command: Command, tried: boolean, takenBack: boolean}} Kept
 *   tried: it was sent at least once without an answer, so the board may have it;
 *   takenBack: it was undone while it may have been on its way, so whoever sends it undoes it too
 */

const DIGITS = 15;

const classId = document.body.dataset.class;
const prefix = `benchpace.tap.${classId}.`;
/** For browsers that allow no storage: the taps of this page only. @type {Map<string, string>} */
const memory = new Map();

/** @returns {Kept[]} in the order of their taps */
export function kept() {
  /** @type {Kept[]} */
  const all = [];
  const read = (key, value) => {
    const tap = tapOf(key, value);
    if (tap) all.push(tap); else drop(key); // not one of ours
  };
  for (const [key, value] of memory) read(key, value);
  try {
    for (const key of Object.keys(localStorage)) {
      if (key.startsWith(prefix)) read(key, localStorage.getItem(key));
    }
  } catch { /* no storage: memory is all there is */ }
  return all.sort((a, b) => (a.key < b.key ? -1 : 1));
}

/** @returns {Kept[]} what is still to count, in the order of the taps */
export function waiting() {
  return kept().filter((tap) => !tap.takenBack);
}

/** @param {string} key @returns {Kept | undefined} how it stands by now: another page may have taken it back */
export function still(key) {
  return kept().find((tap) => tap.key === key);
}

/** @param {string} key @param {string | null} value @returns {Kept | undefined} */
function tapOf(key, value) {
  try {
    const { tried = false, takenBack = false, ...command } = JSON.parse(value);
    return { key, command, tried, takenBack };
  } catch {
    return undefined;
  }
}

/** @param {string} key @param {string} value */
function write(key, value) {
  try {
    localStorage.setItem(key, value);
  } catch {
    memory.set(key, value);
  }
}

/**
 * Keeps a command behind all that wait. Each gets the number after the highest one kept, so that the order holds whatever
 * the device's clock does meanwhile.
 * @param {Command} command
 * @returns {string} the key under which it is kept
 */
export function keep(command) {
  const numbers = kept().map((tap) => parseInt(tap.key.slice(prefix.length), 10));
  const highest = Math.max(0, ...numbers);
  const key = `${prefix}${String(highest + 1).padStart(DIGITS, '0')}-${command.commandId}`;
  write(key, JSON.stringify(command));
  return key;
}

/** Keeps another command in the place of a tap. @param {string} key @param {Command} command */
export function rewrite(key, command) {
  memory.delete(key);
  write(key, JSON.stringify(command));
}

/** Notes something about a tap that is still kept. @param {string} key @param {{tried?: true, takenBack?: true}} what */
export function note(key, what) {
  const tap = still(key);
  if (!tap) return;
  const { command, tried, takenBack } = tap;
  rewrite(key, { ...command, ...(tried && { tried }), ...(takenBack && { takenBack }), ...what });
}

/** @param {string} key */
export function drop(key) {
  memory.delete(key);
  try {
    localStorage.removeItem(key);
  } catch { /* it was in memory */ }
}

/** @param {(settled?: Command) => void} action when another page of this browser put something in or took it out */
export function whenOthersChange(action) {
  window.addEventListener('storage', (event) => {
    if (!event.key?.startsWith(prefix)) return;
    const now = tapOf(event.key, event.newValue);
    action(!now || now.takenBack ? tapOf(event.key, event.oldValue)?.command : undefined);
  });
}

/** What may rightly be said again while the first still waits: each one counts. */
const EACH_COUNTS = new Set(['note', 'still-at-it', 'read-temperature', 'read-room', 'read-pour', 'extend-activity']);

/** What a command is about. */
function subjects({ seat, with: other, activity, seq }) {
  const named = [seat && `seat ${seat}`, other && `seat ${other}`, activity && `activity ${activity}`, seq && `tap ${seq}`]
    .filter(Boolean);
  return named.length === 0 ? ['class'] : named;
}

/**
 * Whether a wish says again what was last said about the same seat. Pause, resume, pause are three wishes.
 * @param {Omit<Command, 'commandId' | 'at'>} wish
 */
export function waitsAlready(wish) {
  if (EACH_COUNTS.has(wish.type)) return false;
  const about = subjects(wish);
  const last = waiting().filter((tap) => subjects(tap.command).some((subject) => about.includes(subject))).pop();
  return last !== undefined && bare(last.command) === bare(wish);
}

function bare({ commandId, at, clocks, ...rest }) {
  return JSON.stringify(rest, Object.keys(rest).sort());
}
