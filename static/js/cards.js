// Place cards, to be printed.

import './print.js';
