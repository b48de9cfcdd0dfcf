// The codes of the seats, to be printed.

import './print.js';
