package daubline.ui.evidence;

import daubline.analysis.evidence.Difference;
import daubline.analysis.evidence.Hypotheses;
import daubline.analysis.record.ReconstructionData;
import daubline.base.Variables;
import daubline.session.StudyVariables;
import daubline.ui.Words;
import daubline.ui.grid.Grid;
import daubline.ui.look.Described;
import daubline.ui.look.Hue;
import daubline.ui.look.Pages;
import daubline.ui.study.OpenStudy;
import daubline.ui.views.StudyPart;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** Two reconstructions side by side, only what differs. */
public final class ReconstructionsView extends StudyPart {

  private final DifferencesModel model = new DifferencesModel();
  private Described described;
  private Combo first;
  private Combo second;
  private Grid grid;
  private List<ReconstructionData> all = List.of();

  @Override
  protected void fill(Composite area) {
    described = new Described(area);
    Composite body = Pages.tight(described.body(), 1);
    Composite bar = Pages.plain(body, 4);
    bar.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
    ((GridLayout) bar.getLayout()).marginHeight = 2;
    first = combo(bar, "reconstructions.first", "firstReconstruction");
    second = combo(bar, "reconstructions.second", "secondReconstruction");
    grid = new Grid(body, Words.of("reconstructions.name"), model);
    grid.control().setData("id", "differences");
    grid.control().setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
  }

  private Combo combo(Composite bar, String key, String id) {
    Label label = new Label(bar, SWT.NONE);
    label.setText(Words.of(key));
    label.setBackground(Hue.ASH.color());
    Combo combo = new Combo(bar, SWT.READ_ONLY);
    GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
    data.widthHint = 90;
    combo.setLayoutData(data);
    combo.setData("id", id);
    Pages.named(combo, Words.of(key), "");
    combo.addListener(SWT.Selection, e -> study().ifPresent(this::compare));
    return combo;
  }

  @Override
  protected void show(Optional<OpenStudy> study) {
    List<ReconstructionData> now = study.map(s -> Hypotheses.all(s.session())).orElse(List.of());
    String a = chosen(first).map(ReconstructionData::id).orElse("");
    String b = chosen(second).map(ReconstructionData::id).orElse("");
    all = now;
    fill(first, a, 0);
    fill(second, b, 1);
    study.ifPresentOrElse(this::compare, () -> {
      model.show(List.of());
      grid.rebuild();
      described.say(Words.of("none.open"));
    });
  }

  private void fill(Combo combo, String id, int otherwise) {
    int index = (int) all.stream().takeWhile(r -> !r.id().equals(id)).count();
    Pages.offer(combo, all.stream().map(ReconstructionData::name), index < all.size() ? index : Math.min(otherwise, all.size() - 1));
  }

  private Optional<ReconstructionData> chosen(Combo combo) {
    int index = combo.getSelectionIndex();
    return index >= 0 && index < all.size() ? Optional.of(all.get(index)) : Optional.empty();
  }

  private void compare(OpenStudy study) {
    Variables variables = StudyVariables.of(study.session().study());
    Optional<ReconstructionData> a = chosen(first);
    Optional<ReconstructionData> b = chosen(second);
    boolean two = all.size() > 1 && a.isPresent() && b.isPresent();
    model.variables(variables);
    model.show(two ? Difference.between(a.get(), b.get(), variables) : List.of());
    grid.rebuild();
    described.say(two ? Words.of("reconstructions.count", model.rows(), Difference.same(a.get(), b.get(), variables), guesses(a.get()), guesses(b.get()))
        : Words.of("reconstructions.few"));
  }

  private static String guesses(ReconstructionData r) {
    return Double.isNaN(r.guesses()) ? "–" : Math.round(100 * r.guesses()) + " %";
  }

  /** The grid; for tests. */
  public Grid grid() {
    return grid;
  }

  @Override
  public void setFocus() {
    first.setFocus();
  }
}
