// The first sentence of somebody's text, by the same rule as Sentences.

const SHORT = /(^|[^\p{L}])(e\.g|i\.e|approx)\.$/iu;
const NUMBER = /(^|[^\p{L}])no\.$/iu;

/** @param {string} text @returns {[string, string]} the first sentence and all after it */
export function parted(text) {
  const whole = text.trim();
  for (const stop of whole.matchAll(/[.!?][ \t\r\n]+/g)) {
    const first = whole.slice(0, stop.index + 1);
    const rest = whole.slice(stop.index + stop[0].length);
    if (!SHORT.test(first) && !(/^\d/.test(rest) && NUMBER.test(first))) return [first, rest];
  }
  return [whole, ''];
}
