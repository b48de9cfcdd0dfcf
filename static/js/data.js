// What is kept, and what may be done with it: each card that acts has a script of its own.

import * as dialogue from './dialogue.js';

dialogue.start();
