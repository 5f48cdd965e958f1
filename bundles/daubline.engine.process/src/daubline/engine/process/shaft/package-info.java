/**
 * The shaft as a steady counter-current reactor in one dimension, with a lumped burning zone and hearth at its foot. It
 * explains temperatures, gas and the failure of low-air burns; it is not validated for the yield of iron.
 */
package daubline.engine.process.shaft;
