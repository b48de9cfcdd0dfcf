// Names for commands, unlike any other.

/** 128 random bits. crypto.randomUUID is missing on plain http. @returns {string} 32 hexadecimal digits */
export function token() {
  return Array.from(crypto.getRandomValues(new Uint8Array(16)), (b) => b.toString(16).padStart(2, '0')).join('');
}
