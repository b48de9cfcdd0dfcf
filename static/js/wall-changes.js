// Another step comes softly in place of the last one, and a dot that is newly done fills: once, and only where motion is
// wanted. Parts come whole, so what is new is found by comparing with what stood there.

const SLOWLY = matchMedia('(prefers-reduced-motion: no-preference)');

/** Longer than it takes to fade out. */
const GONE_MS = 2_000;

/** @param {Element} told @returns {string} what is told, but for how far the table is */
function step(told) {
  return told.querySelector('.told__heading')?.textContent ?? '';
}

/** @param {Element} told @returns {number} */
function done(told) {
  return told.querySelectorAll('.dot--done').length;
}

/** @param {Element} before @param {Element} now */
function crossFade(before, now) {
  now.classList.add('told--comes');
  before.classList.remove('told--comes');
  before.classList.add('told--goes');
  before.setAttribute('aria-hidden', 'true');
  for (const end of ['animationend', 'animationcancel']) {
    before.addEventListener(end, (event) => { if (event.target === before) before.remove(); });
  }
  setTimeout(() => before.remove(), GONE_MS); // whatever becomes of the animation
  now.closest('.wall').append(before); // no part of what is live
}

export function start() {
  const main = document.getElementById('wall-main');
  if (!main) return;
  let before = main.querySelector('.told');
  new MutationObserver(() => {
    const now = main.querySelector('.told:not(.told--goes)');
    if (now === before) return;
    if (SLOWLY.matches && before && now) {
      if (step(before) !== step(now)) crossFade(before, now);
      else [...now.querySelectorAll('.dot--done')].slice(done(before)).forEach((dot) => dot.classList.add('dot--comes'));
    }
    before = now;
  }).observe(main, { childList: true });
}
