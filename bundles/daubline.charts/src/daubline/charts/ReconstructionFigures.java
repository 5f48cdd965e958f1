package daubline.charts;

import daubline.analysis.StudyResults;
import java.util.List;
import java.util.Optional;

/** The section of each reconstruction, one figure each. */
final class ReconstructionFigures implements FigureSpec {

  @Override
  public String id() {
    return "reconstruction";
  }

  @Override
  public String table() {
    return "reconstructions";
  }

  @Override
  public String title() {
    return "Reconstruction";
  }

  @Override
  public Optional<Figure> build(StudyResults results) {
    return all(results).stream().map(NamedFigure::figure).findFirst();
  }

  @Override
  public List<NamedFigure> all(StudyResults results) {
    return results.snapshot().record().hypotheses().stream().flatMap(r -> ReconstructionSection.of(r, results.snapshot().variables())
        .map(f -> new NamedFigure(FileNames.of(id() + "-" + r.id()), title() + ": " + r.name(), f)).stream()).toList();
  }
}
