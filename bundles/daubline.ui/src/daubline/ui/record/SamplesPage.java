package daubline.ui.record;

import daubline.model.Trial;
import daubline.record.Desk;
import daubline.record.SampleTable;
import daubline.session.BlindRecordings;
import org.eclipse.swt.widgets.Button;
import daubline.record.print.Labels;
import org.eclipse.swt.widgets.Composite;

/** The sample register, with a button that prints its labels. */
final class SamplesPage extends RecordPage {

  SamplesPage(Composite parent, Desk desk, Trial trial) {
    super(parent, new SampleTable(desk, trial));
    Button labels = button("record.labels", () -> PrintFile.choose("labels.pdf", (size, out) -> Labels.write(trial.getSamples(), desk.words(), size, out)));
    // labels bear the name of the trial and those of samples that others took
    labels.setEnabled(BlindRecordings.current(desk.session().study()).isEmpty());
  }
}
