package daubline.ui.commands;

import daubline.model.Lot;
import daubline.ui.store.MergeDialog;
import daubline.ui.study.OpenStudy;
import java.util.List;

/** Puts the selected lots, or the one in the active sheet, together with others. */
public final class MergeLots extends LotHandler {

  @Override
  void run(OpenStudy study, List<Lot> lots) {
    MergeDialog.open(study, lots);
  }
}
