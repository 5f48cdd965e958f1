package daubline.ui.commands;

import daubline.model.Lot;
import daubline.ui.store.SplitDialog;
import daubline.ui.study.OpenStudy;
import java.util.List;

/** Splits the selected lot, or the one in the active sheet. */
public final class SplitLot extends LotHandler {

  @Override
  void run(OpenStudy study, List<Lot> lots) {
    SplitDialog.open(study, lots.get(0));
  }
}
