/**
 * Point agreement by kind of evidence. A kernel answers how well an outcome agrees with the evidence, from 0 to 1, where
 * 1 is the best the evidence allows; the uncertainty of the evidence and the tolerance are in the kernel, that of the
 * trial is drawn, so that sloppy measuring earns nothing.
 */
package daubline.engine.inference.kernel;
