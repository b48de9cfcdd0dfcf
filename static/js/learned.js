// All that past classes taught, in one place.

import './learned/lessons.js';
