package daubline.analysis.record;

import daubline.base.Material;

/** A sample: what it is, what is asked of it, where it is. Empty text where not stated. */
public record SampleData(String id, String name, Material material, String question, String piece, String takenOn, String storedAt, String holder) {
}
