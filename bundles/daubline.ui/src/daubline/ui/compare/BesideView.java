package daubline.ui.compare;

import daubline.analysis.StudyResults;
import daubline.analysis.Target;
import daubline.charts.Figure;
import daubline.charts.Figures;
import daubline.charts.ParallelFigure;
import daubline.charts.SideBySide;
import daubline.engine.inference.Comparison;
import daubline.ui.Words;
import daubline.ui.look.Pages;
import daubline.ui.study.Compared;
import daubline.ui.study.OpenStudy;
import daubline.ui.views.FigurePane;
import daubline.ui.views.StudyPart;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;

/** The pair looked at as drawings: section over section, variables by agreement, slags beside the excavated field, what has been tried. */
public final class BesideView extends StudyPart {

  private static final List<String> WHAT = List.of("beside.sections", "beside.variables", "beside.tried", "beside.ternary", "beside.biplot");

  private final Runnable selected = () -> show(study());
  private Combo choice;
  private FigurePane pane;
  private Object shown;

  /** What a drawing depends on; drawn anew only when it changes. */
  private record Asked(int what, StudyResults results, String trial, String target) {
  }

  @Override
  protected void fill(Composite area) {
    Composite page = Pages.plain(area, 1);
    choice = new Combo(page, SWT.READ_ONLY);
    GridData wide = new GridData(SWT.FILL, SWT.CENTER, true, false);
    wide.widthHint = 120;
    choice.setLayoutData(wide);
    choice.setItems(WHAT.stream().map(Words::of).toArray(String[]::new));
    choice.select(0);
    choice.setData("id", "beside");
    Pages.named(choice, Words.of("beside.choose"), Words.of("beside.choose.tip"));
    choice.addListener(SWT.Selection, e -> show(study()));
    pane = new FigurePane(page);
    pane.control().setData("id", "beside-figure");
    pane.control().setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
    Selection.onChange(selected);
  }

  @Override
  protected void show(Optional<OpenStudy> study) {
    if (choice.isDisposed()) {
      return;
    }
    Compared now = study.flatMap(OpenStudy::compared).orElse(null);
    Optional<Target> target = Optional.ofNullable(now).flatMap(Selection::target);
    String trial = now == null ? "" : Selection.get().map(Comparison::trial)
        .or(() -> target.flatMap(t -> now.results().ranked(t.sheet().id()).stream().findFirst()).map(Comparison::trial)).orElse("");
    Asked asked = new Asked(choice.getSelectionIndex(), now == null ? null : now.results(), trial, target.map(t -> t.sheet().id()).orElse(""));
    if (!asked.equals(shown)) {
      shown = asked;
      String otherwise = Words.of(now == null ? "none.open" : asked.what() > 0 ? "figures.nothing"
          : target.filter(Target::isGroup).isPresent() ? "beside.group" : "beside.nothing");
      make(now, asked, target, otherwise);
    }
  }

  /** Makes the drawing behind, for some are reckoned, and shows it if it is still the one asked for. */
  private void make(Compared now, Asked asked, Optional<Target> target, String otherwise) {
    if (now == null) {
      pane.show(null, otherwise);
      return;
    }
    Display display = choice.getDisplay();
    Job.createSystem("beside", monitor -> {
      Optional<Figure> figure = figure(now, asked, target);
      if (!display.isDisposed()) {
        display.asyncExec(() -> {
          if (asked.equals(shown) && !choice.isDisposed()) {
            pane.show(figure.orElse(null), otherwise);
          }
        });
      }
      return Status.OK_STATUS;
    }).schedule();
  }

  private static Optional<Figure> figure(Compared now, Asked asked, Optional<Target> target) {
    StudyResults results = now.results();
    return switch (WHAT.get(asked.what())) {
      case "beside.sections" -> target.flatMap(t -> results.snapshot().trial(asked.trial()).flatMap(trial -> SideBySide.of(trial, t)));
      case "beside.variables" -> target.flatMap(t -> ParallelFigure.of(results, t.sheet()));
      case "beside.tried" -> Figures.find("tried").flatMap(f -> f.build(results));
      case "beside.ternary" -> Figures.find("slag-ternary").flatMap(f -> f.build(results));
      default -> Figures.find("slag-biplot").flatMap(f -> f.build(results));
    };
  }

  @Override
  public void setFocus() {
    choice.setFocus();
  }

  @Override
  public void dispose() {
    Selection.remove(selected);
    super.dispose();
  }
}
