package daubline.ui.sheet;

import daubline.ui.look.Pages;
import daubline.ui.study.OpenStudy;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.part.EditorPart;

/** Edits one object of a study. Several editors share the study: saving saves all of it, undo works across them. */
public final class SheetEditor extends EditorPart {

  private final Runnable refresher = this::refresh;
  private OpenStudy study;
  private EObject object;
  private Fields fields;

  @Override
  public void init(IEditorSite site, IEditorInput input) {
    setSite(site);
    setInput(input);
    study = ((SheetInput) input).study();
    object = ((SheetInput) input).object();
    setPartName(input.getName());
  }

  @Override
  public void createPartControl(Composite parent) {
    Composite page = Pages.plain(parent, 2);
    fields = new Fields(study, page);
    fields.add(object, Facts.of(object));
    study.onChange(refresher);
    PlatformUI.getWorkbench().getHelpSystem().setHelp(parent, "daubline.help.sheet");
    refresh();
  }

  private void refresh() {
    setPartName(OpenStudy.nameOf(object));
    fields.show(object);
    firePropertyChange(PROP_DIRTY);
  }

  @Override
  public boolean isDirty() {
    return study.session().isDirty();
  }

  /** Closing an editor closes no study, so nothing has to be asked. */
  @Override
  public boolean isSaveOnCloseNeeded() {
    return false;
  }

  @Override
  public void doSave(IProgressMonitor monitor) {
    Pending.commit();
    daubline.ui.study.Start.save(study);
  }

  @Override
  public void doSaveAs() {
    // Save As is a command of the study
  }

  @Override
  public boolean isSaveAsAllowed() {
    return false;
  }

  @Override
  public void setFocus() {
    getSite().getShell().setFocus();
  }

  @Override
  public void dispose() {
    study.remove(refresher);
    super.dispose();
  }
}
