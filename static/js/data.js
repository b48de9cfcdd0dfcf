// What is kept, and what may be done with it: each card that acts has a script of its own.

import * as again from './again.js';
import * as backup from './data/backup.js';
import * as guests from './data/guests.js';
import * as unreadable from './data/unreadable.js';
import * as dialogue from './dialogue.js';

again.start();
backup.start();
dialogue.start();
guests.start();
unreadable.start();
