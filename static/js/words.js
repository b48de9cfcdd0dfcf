// Says in a few words what a tap was that the board does not have yet, for as long as only this browser can say it.

/** What was done at a seat or in the class, where the name of the command would read oddly. @type {Record<string, string>} */
const WORDS = {
  'pause': 'paused',
  'resume': 'back at the table',
  'expect': 'not here yet',
  'arrive': 'arrived',
  'leave': 'left',
  'close': 'closed the class',
  'judge-set': 'judged set',
  'judge-skin': 'skin formed',
  'choose-candle': 'another candle',
  'claim': 'somebody goes',
};

/** @param {string} [id] */
function stepName(id) {
  const named = [...document.querySelectorAll('#step-names option')].find((option) => option.value === id);
  return named?.textContent ?? id ?? '';
}

/** @param {import('./box.js').Command} command @returns {string} such as "seat 4 done with Set the wick", as the board says it */
export function wordsOf({ type, seat, step }) {
  const plain = WORDS[type] ?? type.replaceAll('-', ' ');
  if (type === 'finish-step') return `seat ${seat} done with ${stepName(step)}`;
  const what = type === 'open-step' ? `opened ${stepName(step)}` : plain;
  return seat ? `seat ${seat}, ${what}` : what;
}
