// The answer to a finger is drawn first; what else a tap sets going comes after.

/** A frame that is not drawn by then is not waited for. */
const LATEST_MS = 150;

/** @type {Set<() => void>} */
const waiting = new Set();

function goOn() {
  for (const on of waiting) on();
  waiting.clear();
}

/** @returns {Promise<void>} once what was changed just now is on the glass, or nobody looks any more */
export function drawn() {
  return new Promise((resolve) => {
    waiting.add(resolve);
    requestAnimationFrame(() => setTimeout(goOn));
    setTimeout(goOn, LATEST_MS);
  });
}

// what is done next is done after it
for (const type of ['pointerdown', 'keydown', 'visibilitychange']) document.addEventListener(type, goOn, true);
window.addEventListener('pagehide', goOn);
