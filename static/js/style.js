// The look: what ticks on a screen shows the instant at which the screen is shown.

import { heard, tick } from './clock.js';

for (const shown of document.querySelectorAll('[data-instant]')) {
  heard(shown.dataset.instant);
  tick(shown.shadowRoot ?? shown);
}
