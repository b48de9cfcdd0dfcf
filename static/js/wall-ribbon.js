// The ribbon of time on the wall: its present moves with the clock, its band glides where the board puts it.

import { onTick } from './clock.js';

const GLIDE = { duration: 2_500, easing: 'ease-in-out' };
/** Where the band and the present of each ribbon stood. @type {Map<Element, {x: number, width: number, now: number}>} */
const ribbons = new Map();

/**
 * A ribbon drawn anew with a band elsewhere glides there from where the one stood in whose place it came, so that people
 * see it move; at once for who wants no motion.
 * @param {SVGElement} ribbon
 * @param {number} now where its present stands
 */
function glide(ribbon, now) {
  const band = ribbon.querySelector('[data-ribbon-band]');
  const here = { x: Number(band.getAttribute('x')), width: Number(band.getAttribute('width')), now };
  const known = ribbons.has(ribbon);
  ribbons.set(ribbon, here);
  const gone = known ? undefined : [...ribbons.keys()].find((other) => !other.isConnected);
  if (!gone) return;
  const last = ribbons.get(gone);
  ribbons.delete(gone);
  if (last.x === here.x && last.width === here.width) return;
  if (matchMedia('(prefers-reduced-motion: reduce)').matches) return;
  const px = (value) => `${value}px`;
  band.animate([{ x: px(last.x), width: px(last.width) }, { x: px(here.x), width: px(here.width) }], GLIDE);
  ribbon.querySelector('[data-ribbon-passed]').animate([{ width: px(last.now) }, { width: px(now) }], GLIDE);
  ribbon.querySelector('[data-ribbon-now]').animate(
    [{ transform: `translateX(${px(last.now)})` }, { transform: `translateX(${px(now)})` }], GLIDE);
}

/** The present on a ribbon of time. @param {SVGElement} ribbon @param {number} at in ms since 1970 */
function moveNow(ribbon, at) {
  const { ribbonFrom, ribbonUntil } = ribbon.dataset;
  const width = ribbon.viewBox.baseVal.width;
  const from = Date.parse(ribbonFrom);
  const share = (at - from) / (Date.parse(ribbonUntil) - from);
  const x = (Math.max(0, Math.min(0.995, share)) * width).toFixed(1);
  const now = ribbon.querySelector('[data-ribbon-now]');
  glide(ribbon, Number(x));
  if (now.getAttribute('transform') === `translate(${x} 0)`) return;
  now.setAttribute('transform', `translate(${x} 0)`);
  ribbon.querySelector('[data-ribbon-passed]').setAttribute('width', x);
}

export function start() {
  onTick((root, at) => { for (const ribbon of root.querySelectorAll('[data-ribbon-from]')) moveNow(ribbon, at); });
}
