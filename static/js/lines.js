// The pace lines: each line opens its seat's sheet by keyboard too, and whether they are unfolded is remembered.

const KEY = 'benchpace.lines';

function folded() {
  try {
    return localStorage.getItem(KEY) === 'folded';
  } catch {
    return false;
  }
}

export function start() {
  const box = document.getElementById('lines-box');
  if (!box) return;
  const remember = () => {
    try {
      localStorage.setItem(KEY, box.open ? 'open' : 'folded');
    } catch { /* as it is while the page is open */ }
  };
  // a fold made before this script ran stands
  if (folded()) box.open = false; else if (!box.open) remember();
  box.addEventListener('toggle', remember);
  window.addEventListener('pagehide', remember); // a page left at once tells no toggle any more
  box.addEventListener('keydown', (event) => {
    const line = event.target.closest('[role="button"]');
    if (!line || (event.key !== 'Enter' && event.key !== ' ')) return;
    event.preventDefault();
    line.dispatchEvent(new MouseEvent('click', { bubbles: true }));
  });
}
