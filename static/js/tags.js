// Tags, to be printed.

import './print.js';
