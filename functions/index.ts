// Every file of cell functions: the bundle associates what they export.
import './band.js';
import './checks.js';
import './dosing.js';
import './fish.js';
import './hold.js';
import './plan.js';
import './stock.js';
import './systems.js';
import './trust.js';
import './waterAndStrength.js';
import './waterChanges.js';
import './waterQuality.js';
import './wholeLog.js';
