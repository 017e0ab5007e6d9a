// A second door, for code that has loaded the formula library anyway: the first one loads it only when it is needed.
export { arrayObject, cellOf, gridOf, valueObject } from './valueObject.js';
