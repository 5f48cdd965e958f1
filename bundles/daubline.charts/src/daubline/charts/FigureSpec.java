package daubline.charts;

import daubline.analysis.StudyResults;
import java.util.List;
import java.util.Optional;

/** How one figure of the publication is made of results; listed in {@link Figures#all()}. */
public interface FigureSpec {

  /** A stable short name, also the name of files: lower case with hyphens. */
  String id();

  /** The short name of the table of the publication that holds the numbers drawn; empty when none does. */
  default String table() {
    return "";
  }

  /** The title, in headline case. */
  String title();

  /**
   * Makes the figure.
   *
   * @return empty when the study holds nothing to draw
   */
  Optional<Figure> build(StudyResults results);

  /** All figures of this kind: one unless there is one for each trial or sheet. */
  default List<NamedFigure> all(StudyResults results) {
    return build(results).map(figure -> new NamedFigure(id(), title(), figure)).stream().toList();
  }
}
