/** The parts of a study that are printed but not compared: people, lots, logs, pieces, samples, analyses in full. */
package daubline.analysis.record;
