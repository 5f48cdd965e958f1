package daubline.ui.sheet;

import daubline.model.Citation;
import daubline.record.ReadingTable;
import daubline.ui.look.Hue;
import daubline.ui.record.RecordPage;
import daubline.ui.record.RecordPages;
import daubline.ui.study.OpenStudy;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** Reading a report: the publication at one side, what it claims at the other, typed without leaving the keyboard. */
final class ReportPage implements Page {

  private final SashForm sash;
  private final FactsPage facts;
  private final RecordPage claims;

  ReportPage(Composite parent, OpenStudy study, Citation citation) {
    sash = new SashForm(parent, SWT.HORIZONTAL);
    sash.setBackground(Hue.ASH.color());
    facts = new FactsPage(sash, study, citation);
    claims = new RecordPage(sash, new ReadingTable(RecordPages.desk(study), citation));
    sash.setWeights(3, 5);
  }

  @Override
  public Control control() {
    return sash;
  }

  @Override
  public void refresh() {
    facts.refresh();
    claims.refresh();
  }

  @Override
  public boolean reveal(EObject claim) {
    return claims.reveal(claim);
  }

  @Override
  public void focus() {
    claims.focus();
  }
}
