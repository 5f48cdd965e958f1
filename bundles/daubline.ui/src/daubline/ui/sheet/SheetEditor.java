package daubline.ui.sheet;

import daubline.model.Reading;
import daubline.model.Series;
import daubline.ui.Words;
import daubline.ui.look.Hue;
import daubline.ui.plan.EffectsPage;
import daubline.ui.plan.PlanPage;
import daubline.ui.study.OpenStudy;
import daubline.ui.study.Start;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.CTabItem;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.part.EditorPart;

/** Edits one object of a study. Several editors share the study: saving saves all of it, undo works across them. */
public final class SheetEditor extends EditorPart {

  private final Runnable refresher = this::refresh;
  private final List<Page> pages = new ArrayList<>();
  private OpenStudy study;
  private EObject object;
  private CTabFolder tabs;

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
    tabs = new CTabFolder(parent, SWT.BOTTOM);
    tabs.setBackground(Hue.BAND.color());
    if (Forms.has(object)) {
      page("page.values", new ValuesPage(tabs, study, object));
    }
    if (object instanceof Series series) {
      page("page.plan", new PlanPage(tabs, study, series));
      page("page.effects", new EffectsPage(tabs, study, series));
    }
    page("page.facts", new FactsPage(tabs, study, object));
    tabs.setSelection(0);
    study.onChange(refresher);
    study.onResults(refresher);
    PlatformUI.getWorkbench().getHelpSystem().setHelp(parent, "daubline.help.sheet");
    refresh();
  }

  private void page(String key, Page page) {
    CTabItem item = new CTabItem(tabs, SWT.NONE);
    item.setText(Words.of(key));
    item.setControl(page.control());
    pages.add(page);
  }

  /** The object that is edited. */
  public EObject object() {
    return object;
  }

  /** Goes to a value, or to the place where a variable is typed. */
  public void reveal(Reading reading, String variable) {
    if (pages.get(0) instanceof ValuesPage values) {
      tabs.setSelection(0);
      values.reveal(reading, variable);
    }
  }

  /** Goes to one of the pages, counted from 0. */
  public void turnTo(int page) {
    tabs.setSelection(page);
    pages.get(page).focus();
  }

  private void refresh() {
    if (!EcoreUtil.isAncestor(study.session().study(), object)) {
      getSite().getPage().closeEditor(this, false);
      return;
    }
    setPartName(OpenStudy.nameOf(object));
    pages.forEach(Page::refresh);
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
    Start.save(study);
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
    pages.get(Math.max(0, tabs.getSelectionIndex())).focus();
    daubline.ui.study.Studies.get().setCurrent(study);
  }

  @Override
  public void dispose() {
    study.remove(refresher);
    super.dispose();
  }
}
