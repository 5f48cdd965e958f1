package daubline.ui.views;

import daubline.analysis.StudyResults;
import daubline.charts.Figure;
import daubline.charts.FigureSpec;
import daubline.charts.Figures;
import daubline.charts.NamedFigure;
import daubline.charts.WordedFigure;
import daubline.ui.Words;
import daubline.ui.look.Fonts;
import daubline.ui.look.Pages;
import daubline.ui.study.Behind;
import daubline.ui.study.OpenStudy;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** The figures of the publication, in the colours of the window. */
public final class FigureView extends StudyPart {

  private Combo choice;
  private ScrolledComposite scroll;
  private FigureCanvas canvas;
  private Label caption;
  private StudyResults shown;
  /** Makes all figures that the study has data for behind, for some are reckoned. */
  private final Behind<Made> making = new Behind<>(Words.of("figures.choose"), made -> {
    if (made.of() == shown && !choice.isDisposed()) {
      tables = made.tables();
      offer(made.figures());
    }
  });
  private List<NamedFigure> figures = List.of();
  private List<String> tables = List.of();

  private record Made(StudyResults of, List<NamedFigure> figures, List<String> tables) {

    static Made of(StudyResults now) {
      List<NamedFigure> figures = new ArrayList<>();
      List<String> tables = new ArrayList<>();
      for (FigureSpec spec : Figures.all()) {
        spec.all(now).forEach(figure -> {
          figures.add(WordedFigure.of(figure, Words.wording(now)));
          tables.add(spec.table());
        });
      }
      return new Made(now, figures, tables);
    }
  }

  @Override
  protected void fill(Composite area) {
    Composite page = Pages.plain(area, 1);
    choice = new Combo(page, SWT.READ_ONLY);
    choice.setData("id", "figure");
    choice.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
    Pages.named(choice, Words.of("figures.choose"), "");
    choice.addListener(SWT.Selection, e -> rebuild());
    scroll = Pages.scrolled(page);
    scroll.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
    Composite sheet = Pages.tight(scroll, 1);
    canvas = new FigureCanvas(sheet);
    canvas.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
    caption = Pages.text(sheet, "", Fonts.PLAIN.font(), 200);
    scroll.setContent(sheet);
    scroll.addListener(SWT.Resize, e -> size());
  }

  @Override
  protected void show(Optional<OpenStudy> study) {
    StudyResults now = study.flatMap(OpenStudy::results).orElse(null);
    if (now != shown) {
      shown = now;
      if (now == null) {
        offer(List.of());
      } else {
        making.begin(() -> Made.of(now));
      }
    }
  }

  /** Offers figures; the chosen one stays chosen. */
  private void offer(List<NamedFigure> made) {
    String before = choice.getSelectionIndex() < 0 ? "" : choice.getText();
    figures = made;
    List<String> titles = figures.stream().map(NamedFigure::title).toList();
    Pages.offer(choice, titles.stream(), titles.isEmpty() ? -1 : Math.max(0, titles.indexOf(before)));
    rebuild();
  }

  private void rebuild() {
    int index = choice.getSelectionIndex();
    Optional<Figure> figure = index < 0 ? Optional.empty() : Optional.of(figures.get(index).figure());
    canvas.show(figure.orElse(null));
    canvas.from(index < 0 ? FigureSource.NONE : new FigureSource(figures.get(index).id(), tables.get(index)));
    caption.setText(figure.map(Figure::caption).orElse(Words.of(shown == null ? "none.open" : "figures.nothing")));
    size();
  }

  /** The figure takes the width of the view and the height that suits it; the view scrolls. */
  private void size() {
    int width = scroll.getClientArea().width;
    if (width > 0) {
      ((GridData) canvas.getLayoutData()).heightHint = canvas.heightFor(width);
      Pages.fit(scroll, width);
    }
  }

  @Override
  public void setFocus() {
    choice.setFocus();
  }
}
