// A class looked back on: it prints.

import './print.js';
