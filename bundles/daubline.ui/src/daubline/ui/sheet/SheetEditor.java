package daubline.ui.sheet;

import daubline.model.Citation;
import daubline.model.Reading;
import daubline.model.Series;
import daubline.model.Trial;
import daubline.ui.Words;
import daubline.ui.look.Hue;
import daubline.ui.plan.EffectsPage;
import daubline.ui.plan.PlanPage;
import daubline.ui.record.RecordPages;
import daubline.ui.study.OpenStudy;
import daubline.ui.study.Start;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
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
  private final Map<CTabItem, Page> pages = new LinkedHashMap<>();
  private final Map<CTabItem, Supplier<Page>> waiting = new HashMap<>();
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
    RecordPages.of(object).forEach(kind -> later(kind.key(), () -> kind.maker().make(tabs, study)));
    if (object instanceof Citation citation) {
      page("page.report", new ReportPage(tabs, study, citation));
    } else {
      page("page.facts", new FactsPage(tabs, study, object));
    }
    if (object instanceof Trial trial) {
      later("page.balance", () -> new BalancePage(tabs, study, trial));
      page("page.before", new BeforeFirePage(tabs, study, trial));
    }
    tabs.addListener(SWT.Selection, e -> open(tabs.getSelection()));
    tabs.addListener(SWT.MouseUp, e -> setFocus());
    tabs.setSelection(0);
    study.onChange(refresher);
    study.onResults(refresher);
    PlatformUI.getWorkbench().getHelpSystem().setHelp(parent, "daubline.help.sheet");
    refresh();
  }

  private void page(String key, Page page) {
    CTabItem item = new CTabItem(tabs, SWT.NONE);
    item.setText(Words.of(key));
    item.setToolTipText(Words.of(key));
    item.setData(key);
    item.setControl(page.control());
    pages.put(item, page);
  }

  /** A page that is made when it is first looked at. */
  private void later(String key, Supplier<Page> maker) {
    CTabItem item = new CTabItem(tabs, SWT.NONE);
    item.setText(Words.of(key));
    item.setToolTipText(Words.of(key));
    item.setData(key);
    waiting.put(item, maker);
  }

  private Page open(CTabItem item) {
    Supplier<Page> maker = waiting.remove(item);
    if (maker != null) {
      Page page = maker.get();
      item.setControl(page.control());
      pages.put(item, page);
      page.refresh();
    }
    return pages.get(item);
  }

  /** Shows a page by the key of its title. */
  public Page show(String key) {
    for (CTabItem item : tabs.getItems()) {
      if (key.equals(item.getData())) {
        tabs.setSelection(item);
        Page page = open(item);
        page.focus();
        return page;
      }
    }
    return null;
  }

  /** The object that is edited. */
  public EObject object() {
    return object;
  }

  /** Goes to a value, or to the place where a variable is typed. */
  public void reveal(Reading reading, String variable) {
    if (pages.get(tabs.getItem(0)) instanceof ValuesPage values) {
      tabs.setSelection(0);
      values.reveal(reading, variable);
    }
  }

  /** Goes to a thing that stands in a table of records; false when it stands in none. */
  public boolean reveal(EObject thing) {
    if (object instanceof Citation && thing instanceof Reading) {
      return show("page.report").reveal(thing);
    }
    return RecordPages.pageOf(thing).map(this::show).map(page -> page.reveal(thing)).orElse(false);
  }

  private void refresh() {
    if (!EcoreUtil.isAncestor(study.session().study(), object)) {
      getSite().getPage().closeEditor(this, false);
      return;
    }
    setPartName(OpenStudy.nameOf(object));
    List.copyOf(pages.values()).forEach(Page::refresh);
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
    open(tabs.getItem(Math.max(0, tabs.getSelectionIndex()))).focus();
    daubline.ui.study.Studies.get().setCurrent(study);
  }

  @Override
  public void dispose() {
    study.remove(refresher);
    super.dispose();
  }
}
