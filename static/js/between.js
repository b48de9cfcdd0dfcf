// The page between two classes: it only waits for the next.

import * as follow from './follow.js';
import * as live from './live.js';
import { pair } from './wall-key.js';

pair();
live.start();
follow.start();
