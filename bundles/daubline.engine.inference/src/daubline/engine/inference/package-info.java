/**
 * The comparison of a trial's remains with excavated evidence: criteria, pooling, ranking and its stability. Knows no
 * study model and no file; works on {@link daubline.engine.inference.SheetData}.
 */
package daubline.engine.inference;
