package daubline.ui.sheet;

import daubline.ui.study.OpenStudy;
import daubline.ui.views.Veil;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** Stands instead of the pages of what tells of run or evidence while somebody records blind. */
final class BlindPage implements Page {

  private final Composite page;

  BlindPage(Composite parent, OpenStudy study) {
    page = new Composite(parent, SWT.NONE);
    new Veil(page).fall(Optional.of(study));
  }

  @Override
  public Control control() {
    return page;
  }

  @Override
  public void refresh() {
    // one sentence that stays
  }

  @Override
  public void focus() {
    page.setFocus();
  }
}
