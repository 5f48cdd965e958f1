package daubline.ui.compare;

import daubline.ui.Words;
import daubline.ui.grid.Grid;
import daubline.ui.look.Fonts;
import daubline.ui.look.Hue;
import daubline.ui.look.Pages;
import daubline.ui.study.Comparing;
import daubline.ui.study.OpenStudy;
import daubline.ui.views.StudyPart;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** Weights and tolerances of the comparison, typed in place; ranking and map follow every change. */
public final class WeightsView extends StudyPart {

  private final WeightsModel model = new WeightsModel(this::complain);
  private ChoiceBar bar;
  private Label said;
  private Grid grid;
  private String complaint = "";

  @Override
  protected void fill(Composite area) {
    Composite page = Pages.tight(area, 1);
    bar = new ChoiceBar(page);
    bar.check("weights.onlykept", () -> show(study()));
    bar.check("compare.demonstrations", this::choose);
    bar.check("compare.repeats", this::choose);
    bar.button("weights.tostandard", () -> grid.selected().ifPresent(p -> model.reset(p.y)));
    said = Pages.text(page, "", Fonts.PLAIN.font(), 200);
    said.setData("id", "weights-said");
    ((GridData) said.getLayoutData()).horizontalIndent = 6;
    grid = new Grid(page, Words.of("weights.name"), model);
    grid.control().setData("id", "weights");
    grid.control().setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
  }

  private void choose() {
    Comparing.choose(Comparing.options().against(), bar.isOn("compare.demonstrations"), bar.isOn("compare.repeats"));
  }

  private void complain(String text) {
    complaint = text;
    say();
  }

  private void say() {
    String text = complaint.isEmpty() ? Words.of(study().isEmpty() ? "none.open" : "weights.about") : "△ " + complaint;
    if (!said.getText().equals(text.replace("&", "&&"))) {
      said.setText(text.replace("&", "&&"));
      said.setForeground((complaint.isEmpty() ? Hue.INK : Hue.LINING).color());
      said.getParent().layout(true, true);
    }
  }

  @Override
  protected void show(Optional<OpenStudy> study) {
    if (grid.postpones(() -> show(study()))) {
      return;
    }
    bar.check("compare.demonstrations", Comparing.options().withDemonstrations());
    bar.check("compare.repeats", Comparing.options().repeatsAsTolerance());
    model.show(study.orElse(null), bar.isOn("weights.onlykept"));
    bar.button("weights.tostandard").setEnabled(study.filter(s -> !s.session().isReadOnly()).isPresent());
    say();
    grid.rebuild();
  }

  /** Selects the value of a setting. */
  public void reveal(String key) {
    model.row(key).ifPresent(row -> grid.select(1, row));
  }

  /** The grid; for tests. */
  public Grid grid() {
    return grid;
  }

  @Override
  public void setFocus() {
    grid.control().setFocus();
  }
}
