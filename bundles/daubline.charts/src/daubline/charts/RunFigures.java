package daubline.charts;

import daubline.analysis.StudyResults;
import daubline.analysis.TrialData;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The course of each fire, one figure a trial. */
final class RunFigures implements FigureSpec {

  @Override
  public String id() {
    return "run";
  }

  @Override
  public String table() {
    return "time-line";
  }

  @Override
  public String title() {
    return "Run Diagram";
  }

  /** The run of the first trial that has one. */
  @Override
  public Optional<Figure> build(StudyResults results) {
    return all(results).stream().map(NamedFigure::figure).findFirst();
  }

  @Override
  public List<NamedFigure> all(StudyResults results) {
    List<NamedFigure> figures = new ArrayList<>();
    for (TrialData trial : results.snapshot().trials()) {
      results.snapshot().record().trial(trial.id()).map(record -> RunCourse.of(record.log(), results.snapshot().variables())).filter(RunCourse::isWorthDrawing)
          .ifPresent(course -> figures.add(new NamedFigure(FileNames.of(id() + "-" + trial.id()), title() + ": " + trial.name(),
              new RunFigure(trial.name(), course))));
    }
    return figures;
  }
}
