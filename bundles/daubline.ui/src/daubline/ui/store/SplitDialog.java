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
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;

/** Splits parts off a lot, one a line. */
public final class SplitDialog extends MoveDialog {

  private static final int LINES = 5;

  private final Lot lot;
  private Text parts;

  private SplitDialog(OpenStudy study, Lot lot) {
    super(Over.shell(), study, "split");
    this.lot = lot;
  }

  /** Asks, and splits. */
  public static void open(OpenStudy study, Lot lot) {
    new SplitDialog(study, lot).open();
  }

  @Override
  void fill(Composite page) {
    label(page, "split.parts");
    parts = new Text(page, SWT.MULTI | SWT.BORDER | SWT.V_SCROLL);
    GridData data = new GridData(SWT.FILL, SWT.FILL, true, true);
    data.heightHint = LINES * parts.getLineHeight();
    parts.setLayoutData(data);
    parts.setData("id", "splitParts");
    Pages.named(parts, Words.of("split.parts"), Words.of("split.parts.tip"));
    parts.addListener(SWT.Modify, e -> check());
    parts.setFocus();
  }

  private LotMoves.Parts read() {
    return LotMoves.read(parts.getText(), Preferred.decimal());
  }

  @Override
  Optional<Finding> refusal() {
    return read().complaint().or(() -> LotMoves.refusal(study().session().study(), lot, read().parts(), sigma()));
  }

  @Override
  String outcome() {
    double left = LotMass.of(study().session().study(), lot).map(m -> m.left().value()).orElse(Double.NaN);
    return Words.of("split.outcome", Printed.number(read().sum()), Printed.number(Math.max(0, left - read().sum())), OpenStudy.nameOf(lot));
  }

  @Override
  void move() {
    LotMoves.Parts wanted = read();
    String day = on();
    double uncertainty = sigma();
    study().edit("change.split", OpenStudy.nameOf(lot), () -> LotMoves.split(study().session().study(), lot, wanted.parts(), day, uncertainty));
  }
}
