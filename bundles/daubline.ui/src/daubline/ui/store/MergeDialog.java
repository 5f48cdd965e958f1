package daubline.ui.store;

import daubline.base.Finding;
import daubline.base.Printed;
import daubline.model.Lot;
import daubline.session.store.LotMass;
import daubline.session.store.LotMoves;
import daubline.ui.Words;
import daubline.ui.look.Over;
import daubline.ui.look.Pages;
import daubline.ui.prefs.Preferred;
import daubline.ui.study.OpenStudy;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;

/** Puts all that is left of some lots into a new one. */
public final class MergeDialog extends MoveDialog {

  private static final int LINES = 6;

  private final List<Lot> chosen;
  private final List<Lot> offered;
  private Table lots;
  private Text name;
  private Text weighed;

  private MergeDialog(OpenStudy study, List<Lot> chosen) {
    super(Over.shell(), study, "merge");
    this.chosen = chosen;
    offered = study.session().study().getLots().stream().filter(l -> chosen.contains(l) || l.getMaterial() == chosen.get(0).getMaterial()).toList();
  }

  /** Asks, beginning with some lots, and puts them together. */
  public static void open(OpenStudy study, List<Lot> chosen) {
    new MergeDialog(study, chosen).open();
  }

  @Override
  void fill(Composite page) {
    label(page, "merge.lots");
    lots = new Table(page, SWT.CHECK | SWT.BORDER);
    for (Lot lot : offered) {
      TableItem item = new TableItem(lots, SWT.NONE);
      item.setText(OpenStudy.nameOf(lot) + LotMass.of(study().session().study(), lot)
          .map(m -> " – " + Words.of("merge.left", Printed.number(Math.max(0, m.left().value())))).orElse(""));
      item.setChecked(chosen.contains(lot));
    }
    GridData data = new GridData(SWT.FILL, SWT.FILL, true, true);
    data.heightHint = LINES * lots.getItemHeight();
    lots.setLayoutData(data);
    lots.setData("id", "mergeLots");
    Pages.named(lots, Words.of("merge.lots"), Words.of("merge.lots.tip"));
    lots.addListener(SWT.Selection, e -> check());
    name = text(page, "merge.name", "mergeName");
    weighed = text(page, "merge.weighed", "mergeWeighed");
  }

  private List<Lot> ticked() {
    return IntStream.range(0, offered.size()).filter(i -> lots.getItem(i).getChecked()).mapToObj(offered::get).toList();
  }

  private Optional<Double> mass() {
    return LotMoves.mass(weighed.getText().strip(), Preferred.decimal()).filter(m -> m > 0);
  }

  @Override
  Optional<Finding> refusal() {
    Optional<Finding> wrong = LotMoves.refusal(study().session().study(), ticked(), name.getText());
    return wrong.isPresent() || weighed.getText().isBlank() || mass().isPresent() ? wrong
        : Optional.of(Finding.error("mass.form", "", "“" + weighed.getText() + "” is no mass", "write it in kg, or with its unit; empty when it was not weighed anew"));
  }

  private double sum() {
    return ticked().stream().mapToDouble(l -> LotMass.of(study().session().study(), l).map(m -> m.left().value()).orElse(0.0)).sum();
  }

  @Override
  String outcome() {
    return Words.of("merge.outcome", Printed.number(sum()), name.getText().strip());
  }

  @Override
  void move() {
    List<Lot> all = ticked();
    String called = name.getText().strip();
    double anew = mass().orElse(Double.NaN);
    String day = on();
    double uncertainty = sigma();
    study().edit("change.merge", called, () -> LotMoves.merge(study().session().study(), all, called, anew, day, uncertainty));
  }
}
