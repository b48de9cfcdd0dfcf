// A class looked back on: it prints, and what past classes taught can be taken over or taken back.

import './learned/lessons.js';
import './print.js';
import * as again from './again.js';
import * as dialogue from './dialogue.js';
import * as guests from './report/guests.js';
import * as watch from './watch.js';
import './what-if.js';

again.start();
dialogue.start();
guests.start();
watch.start();
