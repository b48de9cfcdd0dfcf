// The wall: nothing to touch, it only stays live.

import * as live from './live.js';

live.start();
