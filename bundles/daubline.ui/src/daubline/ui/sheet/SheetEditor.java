package daubline.ui.sheet;

import daubline.model.Citation;
import daubline.model.Person;
import daubline.model.Reading;
import daubline.model.ResidueClass;
import daubline.model.Series;
import daubline.model.Trial;
import daubline.model.VariableDefinition;
import daubline.ui.Words;
import daubline.ui.look.PageBook;
import daubline.ui.plan.EffectsPage;
import daubline.ui.plan.PlanPage;
import daubline.ui.record.RecordPages;
import daubline.ui.study.OpenStudy;
import daubline.ui.study.Start;
import daubline.ui.study.WhenSeen;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.part.EditorPart;

/** Edits one object of a study. Several editors share the study: saving saves all of it, undo works across them. */
public final class SheetEditor extends EditorPart {

  /** Where what is left of a trial is described. */
  private static final List<String> BLIND_PAGES = List.of("record.pieces", "record.residues", "record.zones", "record.spread", "record.samples", "record.photos",
      "record.measured");

  private final Runnable refresher = this::refresh;
  private final Set<String> stale = new HashSet<>();
  private final Map<String, Page> pages = new LinkedHashMap<>();
  private OpenStudy study;
  private Composite area;
  private boolean blind;
  private EObject object;
  private PageBook book;
  private WhenSeen seen;

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
    area = parent;
    make();
    seen = new WhenSeen(this, () -> freshen(book.shown()));
    study.onChange(refresher);
    study.onResults(refresher);
    PlatformUI.getWorkbench().getHelpSystem().setHelp(parent, "daubline.help.sheet");
    name();
  }

  /** Makes the pages: all of them, or while somebody records blind those on which remains are described, or one that says why there is none. */
  private void make() {
    blind = study.blind().isPresent();
    pages.clear();
    stale.clear();
    book = new PageBook(area, SWT.BOTTOM);
    if (!blind || object instanceof Person || object instanceof ResidueClass || object instanceof VariableDefinition) {
      everything();
    } else if (object instanceof Trial) {
      page("page.values", () -> new ValuesPage(book.body(), study, object));
      RecordPages.of(object).stream().filter(kind -> BLIND_PAGES.contains(kind.key()))
          .forEach(kind -> page(kind.key(), () -> kind.maker().make(book.body(), study)));
    } else {
      page("page.blind", () -> new BlindPage(book.body(), study));
    }
    book.addListener(SWT.Selection, e -> setFocus());
    book.onShow(this::freshen);
  }

  private void everything() {
    if (Forms.has(object)) {
      page("page.values", () -> new ValuesPage(book.body(), study, object));
    }
    if (object instanceof Series series) {
      page("page.plan", () -> new PlanPage(book.body(), study, series));
      page("page.effects", () -> new EffectsPage(book.body(), study, series));
    }
    RecordPages.of(object).forEach(kind -> page(kind.key(), () -> kind.maker().make(book.body(), study)));
    if (object instanceof Citation citation) {
      page("page.report", () -> new ReportPage(book.body(), study, citation));
    } else {
      page("page.facts", () -> new FactsPage(book.body(), study, object));
    }
    if (object instanceof Trial trial) {
      page("page.balance", () -> new BalancePage(book.body(), study, trial));
      page("page.before", () -> new BeforeFirePage(book.body(), study, trial));
    }
  }

  /** A page that is made when it is first looked at. */
  private void page(String key, Supplier<Page> maker) {
    book.addLater(key, Words.of(key), () -> {
      Page page = maker.get();
      pages.put(key, page);
      page.refresh();
      return page.control();
    });
  }

  /** Shows a page by the key of its title. */
  public Page show(String key) {
    if (!book.keys().contains(key)) {
      return null;
    }
    book.show(key);
    Page page = pages.get(key);
    page.focus();
    return page;
  }

  /** The key of the page in front. */
  public String shownKey() {
    return book.shown();
  }

  /** The keys of its pages in their order. */
  public List<String> pageKeys() {
    return book.keys();
  }

  /** The object that is edited. */
  public EObject object() {
    return object;
  }

  /** Goes to a value, or to the place where a variable is typed. */
  public void reveal(Reading reading, String variable) {
    if (pages.get("page.values") instanceof ValuesPage values) {
      book.show("page.values");
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
    name();
    if (blind != study.blind().isPresent()) {
      book.dispose();
      make();
      area.layout(true, true);
    }
    stale.addAll(pages.keySet());
    seen.ask();
    firePropertyChange(PROP_DIRTY);
  }

  private void name() {
    setPartName(OpenStudy.nameOf(object));
    setTitleToolTip(getEditorInput().getToolTipText());
  }

  /** Brings a page up to date that a person is about to see. */
  private void freshen(String key) {
    if (stale.remove(key)) {
      pages.get(key).refresh();
    }
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
    pages.get(book.shown()).focus();
    daubline.ui.study.Studies.get().setCurrent(study);
  }

  @Override
  public void dispose() {
    study.remove(refresher);
    seen.dispose();
    super.dispose();
  }
}
