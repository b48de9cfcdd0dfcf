// The wall: nothing to touch, it only stays live.

import * as awake from './awake.js';
import * as follow from './follow.js';
import * as live from './live.js';
import * as changes from './wall-changes.js';
import { pair } from './wall-key.js';
import * as ribbon from './wall-ribbon.js';

pair();
ribbon.start();
live.start();
awake.start();
follow.start();
changes.start();
