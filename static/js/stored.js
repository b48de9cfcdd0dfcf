// The one place that reads and writes what this browser keeps beyond the page. A browser may allow no storage, or have no
// room left: then it is kept while the page is open. What is read may be of another release, or anybody's.

/** What is kept for the whole browser, by what it says. */
export const KEYS = {
  initials: 'benchpace.initials',
  lines: 'benchpace.lines',
  degrees: 'benchpace.degrees',
  chime: 'benchpace.chime',
  shake: 'benchpace.shake',
  sound: 'benchpace.sound',
  studio: 'benchpace.studio',
};
/** Before all taps of all classes. */
const TAPS = 'benchpace.tap.';
const TAP = /^benchpace\.tap\.(.+)\.\d{15}-/;

/** @param {string} classId @returns {string} what the keys of its unsent taps begin with */
export const tapsOf = (classId) => `${TAPS}${classId}.`;
/** @param {string} classId which page sends its taps now */
export const senderOf = (classId) => `benchpace.sender.${classId}`;
/** @param {string} classId which of its cues were sounded */
export const cuesOf = (classId) => `benchpace.cues.${classId}`;

/** @param {string} planId what was changed of it and not saved */
export const draftOf = (planId) => `benchpace.plan-draft.${planId}`;
/** @param {string} classId what of its lists was pressed and not sent */
export const prepOf = (classId) => `benchpace.prep.${classId}`;

/** What storage would not take, by key. @type {Map<string, string>} */
const memory = new Map();

/** @param {string} key @returns {string} empty if nothing is kept under it */
export function read(key) {
  if (memory.has(key)) return memory.get(key);
  try {
    return localStorage.getItem(key) ?? '';
  } catch {
    return '';
  }
}

/** @param {string} key @param {string} value an empty one is not kept */
export function write(key, value) {
  if (value === '') return drop(key);
  try {
    localStorage.setItem(key, value);
    memory.delete(key);
  } catch {
    memory.set(key, value);
  }
}

/** @param {string} key */
export function drop(key) {
  memory.delete(key);
  try {
    localStorage.removeItem(key);
  } catch { /* it was in memory, if anywhere */ }
}

/** @param {string} prefix @returns {string[]} each once, in no order */
export function keys(prefix) {
  const all = new Set(memory.keys());
  try {
    for (const key of Object.keys(localStorage)) all.add(key);
  } catch { /* memory is all there is */ }
  return [...all].filter((key) => key.startsWith(prefix));
}

/** @returns {string} a class of which some page left taps unsent; empty if there is none */
export function classWithTaps() {
  return keys(TAPS).map((key) => TAP.exec(key)?.[1]).find(Boolean) ?? '';
}

/**
 * @param {string} prefix
 * @param {(key: string, was: string, is: string) => void} action when another page of this browser wrote or dropped one;
 *   empty for nothing
 */
export function whenOthersWrite(prefix, action) {
  window.addEventListener('storage', ({ key, oldValue, newValue }) => {
    if (key?.startsWith(prefix)) action(key, oldValue ?? '', newValue ?? '');
  });
}
