package daubline.analysis.evidence;

import daubline.analysis.Snapshots;
import daubline.analysis.forecast.Shapes;
import daubline.analysis.record.ReconstructionData;
import daubline.base.Trail;
import daubline.model.Choice;
import daubline.model.Reading;
import daubline.model.Reconstruction;
import daubline.session.Readings;
import daubline.session.StudySession;
import java.util.List;
import java.util.function.Function;

/** Reads the reconstructions of a study. */
public final class Hypotheses {

  private Hypotheses() {
  }

  /** One reconstruction as it stands now, for a drawing that follows typing. */
  public static ReconstructionData of(StudySession session, Reconstruction reconstruction) {
    return of(reconstruction, r -> Snapshots.trailOf(session, r));
  }

  /** All, retired ones too, as they stand now. */
  public static List<ReconstructionData> all(StudySession session) {
    return session.study().getReconstructions().stream().map(r -> of(session, r)).toList();
  }

  /** One reconstruction with trails made by a function. */
  public static ReconstructionData of(Reconstruction r, Function<Reading, Trail> trail) {
    List<ReconstructionData.Chosen> choices = r.getChoices().stream().filter(c -> c.getVariable() != null).map(c -> chosen(c, trail)).toList();
    return new ReconstructionData(text(r.getId()), r.getName() == null || r.getName().isBlank() ? text(r.getId()) : r.getName(), text(r.getHypothesis()),
        r.isRetired(), choices, Shapes.of(r));
  }

  private static ReconstructionData.Chosen chosen(Choice c, Function<Reading, Trail> trail) {
    String typed = c.getTyped() == null ? "" : (c.getTyped() + " " + text(c.getUnit())).strip();
    return new ReconstructionData.Chosen(c.getVariable(), Readings.amount(c), typed, c.getBasis(), text(c.getBecause()), trail.apply(c));
  }

  private static String text(String text) {
    return text == null ? "" : text;
  }
}
