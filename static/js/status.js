// One soft line at the top of a live page: quiet while all is well, words when it is not.

/** @type {Map<string, string>} what each part of the page has to say, by part */
const lines = new Map();

/**
 * @param {'stream' | 'clock' | 'taps' | 'kept' | 'pairing' | 'awake'} part
 * @param {string} words empty when there is nothing to say
 * @param {{href: string, words: string}} [link] somewhere to go from here
 */
export function say(part, words, link) {
  if (words) lines.set(part, words); else lines.delete(part);
  const line = document.getElementById('status');
  const place = document.getElementById('status-words');
  if (!line || !place) return;
  const text = [...lines.values()].join(' ');
  if (place.textContent !== text) place.textContent = text;
  line.classList.toggle('status--says', lines.size > 0);
  if (part === 'pairing') showLink(line, words ? link : undefined);
}

function showLink(line, link) {
  line.querySelector('a')?.remove();
  if (!link) return;
  const anchor = document.createElement('a');
  anchor.href = link.href;
  anchor.textContent = link.words;
  line.append(anchor);
}

/**
 * Tells something once, for a few seconds: why a tap was refused.
 * @param {string} words
 */
export function tell(words) {
  const place = document.getElementById('messages');
  if (!place) return;
  const message = document.createElement('p');
  message.className = 'message';
  message.textContent = words;
  // An open dialogue lies above the page, so what is said then is said in it.
  (document.querySelector('dialog[open]') ?? document.body).append(place);
  message.addEventListener('click', () => message.remove());
  place.append(message);
  while (place.children.length > 3) place.firstElementChild.remove();
  setTimeout(() => message.remove(), 9000);
}
