/** The pages on which a trial is recorded: run log, measures, pieces, residues, samples, analyses, loggers, pictures. */
package daubline.ui.record;
