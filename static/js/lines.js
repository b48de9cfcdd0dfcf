// The pace lines: each line opens its seat's sheet by keyboard too, and whether they are unfolded is remembered.

const KEY = 'benchpace.lines';

/** @returns {'open' | 'folded' | null} as it was left on this device; null if it never was */
function left() {
  try {
    return localStorage.getItem(KEY);
  } catch {
    return null;
  }
}

/** Whether the whole chart is in sight below the table. @param {HTMLElement} box */
function fits(box) {
  const room = box.closest('.room');
  return !room || getComputedStyle(room).overflowY === 'visible' || room.scrollHeight <= room.clientHeight + 1;
}

export function start() {
  const box = document.getElementById('lines-box');
  if (!box) return;
  let chosen = false;
  const remember = () => {
    try {
      localStorage.setItem(KEY, box.open ? 'open' : 'folded');
    } catch { /* as it is while the page is open */ }
  };
  // a fold made before this script ran stands; without one a chart that an edge would cut is folded until asked for
  if (left() === 'folded') box.open = false;
  else if (!box.open) remember();
  else if (left() === null && !fits(box)) box.open = false;
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
