// Every file of cell functions: the bundle associates what they export.
import './checks.js';
import './dosing.js';
import './hold.js';
import './waterAndStrength.js';
import './waterChanges.js';
import './waterQuality.js';
