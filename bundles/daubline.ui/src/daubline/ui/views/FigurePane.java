package daubline.ui.views;

import daubline.base.Trail;
import daubline.charts.Figure;
import daubline.ui.Words;
import daubline.ui.look.Fonts;
import daubline.ui.look.Hue;
import daubline.ui.look.Pages;
import java.util.List;
import java.util.function.Supplier;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/** A figure as wide as its place, with its caption below; it scrolls when it is higher. */
public final class FigurePane {

  /** In fewer points of width lettering and drawing would run into each other; the pane scrolls sideways then. */
  private static final double LEAST = 280;

  private final ScrolledComposite scroll;
  private final FigureCanvas canvas;
  private final Label caption;

  /** An empty place for a figure. */
  public FigurePane(Composite parent) {
    scroll = new ScrolledComposite(parent, SWT.V_SCROLL | SWT.H_SCROLL);
    scroll.setBackground(Hue.ASH.color());
    scroll.setExpandHorizontal(true);
    scroll.setExpandVertical(true);
    Composite sheet = Pages.tight(scroll, 1);
    canvas = new FigureCanvas(sheet);
    canvas.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
    caption = Pages.text(sheet, "", Fonts.PLAIN.font(), 200);
    scroll.setContent(sheet);
    scroll.addListener(SWT.Resize, e -> size());
  }

  /** The widget. */
  public Control control() {
    return scroll;
  }

  /** Adds what all figures here rest on to the origin of each of their marks. */
  public FigurePane rest(Supplier<List<Trail>> on) {
    canvas.rest(on);
    return this;
  }

  /** Says what the figure is called and where its numbers stand. */
  public void from(FigureSource source) {
    canvas.from(source);
  }

  /** Shows a figure, or words where there is none. */
  public void show(Figure figure, String otherwise) {
    canvas.show(figure);
    caption.setText(figure == null ? otherwise : Words.said(figure.caption()));
    size();
  }

  private void size() {
    // a figure has a least width and scrolls; words alone wrap
    int least = canvas.isEmpty() ? 1 : canvas.widthOf(LEAST);
    int width = Math.max(least, scroll.getClientArea().width);
    ((GridData) canvas.getLayoutData()).heightHint = canvas.heightFor(width);
    scroll.setMinSize(least, scroll.getContent().computeSize(width, SWT.DEFAULT).y);
    ((Composite) scroll.getContent()).layout(true);
  }
}
