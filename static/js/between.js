// The page between two classes: it only waits for the next.

import * as follow from './follow.js';

follow.start();
