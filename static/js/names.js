// First names as people type or paste them: one a line, or with commas, semicolons or tabs between.

/**
 * In the order of the seats; a seat whose name is left out is an empty text, and none stands at the end.
 * @param {string} text
 * @returns {string[]}
 */
export function namesIn(text) {
  const names = text.replace(/\r\n?/g, '\n').split(/[,;\t][^\S\n]*\n|[,;\t\n]/).map((name) => name.trim());
  while (names.length > 0 && names.at(-1) === '') names.pop();
  return names;
}

/**
 * Who will sit where, to be read before the class is set up.
 * @param {string[]} names
 */
export function seated(names) {
  return names.map((name, index) => (name ? `${index + 1} ${name}` : '')).filter(Boolean).join(', ');
}
