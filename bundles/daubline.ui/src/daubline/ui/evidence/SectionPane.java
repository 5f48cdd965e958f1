package daubline.ui.evidence;

import daubline.analysis.evidence.Hypotheses;
import daubline.charts.Figure;
import daubline.charts.ReconstructionSection;
import daubline.model.Reconstruction;
import daubline.session.StudyVariables;
import daubline.ui.Words;
import daubline.ui.look.Fonts;
import daubline.ui.look.Hue;
import daubline.ui.look.Pages;
import daubline.ui.study.OpenStudy;
import daubline.ui.views.FigureCanvas;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** The section of a reconstruction beside its choices, whole and as large as its place; it follows every change. */
public final class SectionPane {

  private static final int LINES = 2;
  private static final int LEAST = 120;

  private final OpenStudy study;
  private final Reconstruction reconstruction;
  private final FigureCanvas canvas;
  private final Label caption;

  /** A pane for a reconstruction. */
  public SectionPane(Composite parent, OpenStudy study, Reconstruction reconstruction) {
    this.study = study;
    this.reconstruction = reconstruction;
    Composite pane = Pages.tight(parent, 1);
    canvas = new FigureCanvas(pane);
    canvas.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
    caption = Pages.text(pane, "", Fonts.PLAIN.font(), LEAST);
    caption.setForeground(Hue.QUIET.color());
    caption.setData("id", "sectionCaption");
    ((GridData) caption.getLayoutData()).heightHint = LINES * caption.computeSize(SWT.DEFAULT, SWT.DEFAULT).y;
  }

  /** Draws what the study says now; the whole caption is the tip of the lines below. */
  public void refresh() {
    Optional<Figure> figure = ReconstructionSection.of(Hypotheses.of(study.session(), reconstruction), StudyVariables.of(study.session().study()));
    canvas.show(figure.orElse(null));
    String text = figure.map(Figure::caption).map(Words::said).orElseGet(() -> Words.of("section.none"));
    caption.setText(text.replace("&", "&&"));
    caption.setToolTipText(text);
  }
}
