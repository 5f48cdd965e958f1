package daubline.export.tables;

import daubline.analysis.record.LogData;
import daubline.analysis.record.TrialRecord;
import daubline.base.Material;
import java.util.List;

/** The charges of one trial, summed. */
record Charges(List<LogData> entries) {

  static Charges of(TrialRecord trial) {
    return new Charges(trial.log().stream().filter(e -> !e.charged().isEmpty()).toList());
  }

  /** Mass of one material in kilograms; 0 when none was charged. */
  double mass(Material material) {
    return entries.stream().flatMap(e -> e.charged().stream()).filter(c -> c.material() == material && c.mass().isNumber())
        .mapToDouble(c -> c.mass().value()).sum();
  }

  /** Its uncertainty: one scale or measure served all charges, so uncertainties add up and do not average out. */
  double sigma(Material material) {
    return entries.stream().flatMap(e -> e.charged().stream()).filter(c -> c.material() == material && c.mass().isNumber())
        .mapToDouble(c -> Values.sigma(c.mass())).sum();
  }

  /** How many charges hold a material without a mass. */
  long unweighed() {
    return entries.stream().filter(e -> e.charged().stream().anyMatch(c -> !c.mass().isNumber())).count();
  }

  /** How many charges hold this material. */
  long count(Material material) {
    return entries.stream().filter(e -> e.charged().stream().anyMatch(c -> c.material() == material)).count();
  }

  /** Elapsed minutes of the first or last charge that holds a material; NaN when there is none. */
  double minutes(Material material, boolean last) {
    var times = entries.stream().filter(e -> e.charged().stream().anyMatch(c -> c.material() == material)).mapToDouble(LogData::elapsed)
        .filter(t -> !Double.isNaN(t));
    return (last ? times.max() : times.min()).orElse(Double.NaN) / 60;
  }
}
