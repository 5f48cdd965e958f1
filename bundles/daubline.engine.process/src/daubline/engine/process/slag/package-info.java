/** Slag as a melt: when it is liquid, how it runs, what crystallises, and where each model stops being valid. */
package daubline.engine.process.slag;
