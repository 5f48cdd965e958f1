package daubline.ui.commands;

import daubline.model.Trial;
import daubline.record.print.FieldSheets;
import daubline.ui.record.PrintFile;
import daubline.ui.record.RecordPages;
import daubline.ui.sheet.SheetEditor;
import daubline.ui.study.OpenStudy;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.PlatformUI;

/** Writes blank field sheets, for the trial that is open or with its name left blank. */
public final class PrintSheets extends StudyHandler {

  @Override
  boolean can(OpenStudy study) {
    // the sheets of a trial bear its name
    return study.blind().isEmpty();
  }

  @Override
  void run(OpenStudy study) {
    IEditorPart editor = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage().getActiveEditor();
    Trial trial = editor instanceof SheetEditor sheet && sheet.object() instanceof Trial t ? t : null;
    PrintFile.choose("field-sheets.pdf", (size, out) -> new FieldSheets(RecordPages.desk(study), trial).write(size, out));
  }
}
