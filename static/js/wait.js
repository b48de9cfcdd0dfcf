// The page of the wait: buttons that change the plan, and a soft cue when something begins.

import * as awake from './awake.js';
import * as commands from './commands.js';
import * as cue from './cue.js';
import * as live from './live.js';
import * as taps from './taps.js';
import * as undo from './undo.js';

live.start();
awake.start();
commands.start();
undo.start();
taps.start();
if (!document.body.dataset.playback) cue.start(); // what was called out long ago calls nobody

/** What was folded or unfolded by hand stays so when the stream brings its part of the page anew. */
const folding = new Map();
document.addEventListener('click', (event) => {
  const details = event.target.closest('summary')?.closest('details[id]');
  if (details) folding.set(details.id, !details.open);
});
document.addEventListener('htmx:sseMessage', () => {
  for (const [id, open] of folding) document.getElementById(id)?.toggleAttribute('open', open);
});

/** Where the strips are wider than the screen, the present is in sight at first; after that they stay where they are. */
let strips = -1;
function place() {
  const box = document.querySelector('.strips');
  const now = box?.querySelector('.strips__now');
  if (box && strips >= 0) box.scrollLeft = strips;
  else if (now) box.scrollLeft += now.getBoundingClientRect().left - box.getBoundingClientRect().left - box.clientWidth / 3;
}
document.addEventListener('scroll', (event) => {
  if (event.target instanceof Element && event.target.matches('.strips')) strips = event.target.scrollLeft;
}, true);
document.addEventListener('htmx:sseMessage', place);
place();

document.addEventListener('keydown', (event) => {
  if (event.ctrlKey || event.metaKey || event.altKey || event.repeat || event.target.closest('input, select, textarea')) return;
  if (event.key === 'u' || event.key === 'U') undo.press();
  if (event.key === 's' || event.key === 'S') document.getElementById('sound')?.click();
});
