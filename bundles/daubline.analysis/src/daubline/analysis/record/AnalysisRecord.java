package daubline.analysis.record;

import daubline.engine.inference.AnalysisData;

/**
 * An analysis with everything a reader needs to judge it; empty text where not stated.
 *
 * @param owner name of the trial, sheet or lot it belongs to
 * @param data the components
 * @param replicate name that repeated measurements of one sample share
 * @param converted what was printed as an element and is given as an oxide, with the factor
 * @param areas number of areas or spots, negative when not stated
 */
public record AnalysisRecord(String owner, String name, String sample, String replicate, String converted, String method, String instrument, String standards, String laboratory, String on,
    int areas, AnalysisData data) {
}
