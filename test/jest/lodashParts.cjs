// What the library of functions uses of a package of 600 files that jest would all have to turn into its own kind of module.
module.exports = {
  debounce: require('lodash-es/debounce.js').default,
  get: require('lodash-es/get.js').default,
  merge: require('lodash-es/merge.js').default,
  mergeWith: require('lodash-es/mergeWith.js').default,
  set: require('lodash-es/set.js').default,
};
