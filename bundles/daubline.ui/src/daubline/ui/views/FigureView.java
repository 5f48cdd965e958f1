package daubline.ui.views;

import daubline.analysis.StudyResults;
import daubline.charts.Figure;
import daubline.charts.FigureSpec;
import daubline.charts.Figures;
import daubline.ui.Words;
import daubline.ui.look.Fonts;
import daubline.ui.look.Pages;
import daubline.ui.study.OpenStudy;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** The figures of the publication, in the colours of the window. */
public final class FigureView extends StudyPart {

  private Combo choice;
  private FigureCanvas canvas;
  private Label caption;
  private StudyResults shown;

  @Override
  protected void fill(Composite area) {
    Composite page = Pages.plain(area, 1);
    choice = new Combo(page, SWT.READ_ONLY);
    choice.setItems(Figures.all().stream().map(FigureSpec::title).toArray(String[]::new));
    choice.select(0);
    choice.setData("id", "figure");
    Pages.named(choice, Words.of("figures.choose"), "");
    choice.addListener(SWT.Selection, e -> rebuild());
    canvas = new FigureCanvas(page);
    canvas.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
    caption = Pages.text(page, "", Fonts.PLAIN.font(), 200);
  }

  @Override
  protected void show(Optional<OpenStudy> study) {
    StudyResults now = study.flatMap(OpenStudy::results).orElse(null);
    if (now != shown) {
      shown = now;
      rebuild();
    }
  }

  private void rebuild() {
    int index = choice.getSelectionIndex();
    Optional<Figure> figure = shown == null || index < 0 ? Optional.empty() : Figures.all().get(index).build(shown);
    canvas.show(figure.orElse(null));
    caption.setText(figure.map(Figure::caption).orElse(Words.of(shown == null ? "none.open" : "figures.nothing")));
    caption.getParent().layout();
  }

  @Override
  public void setFocus() {
    choice.setFocus();
  }
}
