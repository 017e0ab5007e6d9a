// A second door, for who has the formula library loaded anyway: the first one loads it only when it is needed.
export { arrayObject, cellOf, gridOf, valueObject } from './valueObject.js';
