// The wall: nothing to touch, it only stays live.

import * as follow from './follow.js';
import * as live from './live.js';

live.start();
follow.start();
