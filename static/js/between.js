// The page between two classes: it only waits for the next.

import * as follow from './follow.js';
import { pair } from './wall-key.js';

pair();
follow.start();
