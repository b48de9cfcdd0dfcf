// The pace lines: each line opens its seat's sheet by keyboard too, and whether they are unfolded is remembered.

import * as stored from './stored.js';

/** Whether the whole chart is in sight below the table. @param {HTMLElement} box */
function fits(box) {
  const room = box.closest('.room');
  return !room || getComputedStyle(room).overflowY === 'visible' || room.scrollHeight <= room.clientHeight + 1;
}

export function start() {
  const box = document.getElementById('lines-box');
  if (!box) return;
  let chosen = false;
  const remember = () => stored.write(stored.KEYS.lines, box.open ? 'open' : 'folded');
  const left = stored.read(stored.KEYS.lines);
  // a fold made before this script ran stands; without one a chart that an edge would cut is folded until asked for, once
  // the page is laid out
  if (left === 'folded') box.open = false;
  else if (!box.open) remember();
  else if (left === '') requestAnimationFrame(() => { if (!chosen && !fits(box)) box.open = false; });
  box.addEventListener('click', (event) => { if (event.target.closest('summary')) chosen = true; });
  box.addEventListener('toggle', () => {
    if (chosen) remember();
    if (chosen && box.open) box.scrollIntoView({ block: 'end' });
  });
  window.addEventListener('pagehide', () => { if (chosen) remember(); }); // a page left at once tells no toggle any more
  box.addEventListener('keydown', (event) => {
    const line = event.target.closest('[role="button"]');
    if (!line || (event.key !== 'Enter' && event.key !== ' ')) return;
    event.preventDefault();
    line.dispatchEvent(new MouseEvent('click', { bubbles: true }));
  });
}
