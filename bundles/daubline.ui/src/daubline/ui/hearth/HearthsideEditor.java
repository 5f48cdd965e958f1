package daubline.ui.hearth;

import daubline.ui.Words;
import daubline.ui.look.Fonts;
import daubline.ui.look.Hue;
import daubline.ui.look.Pages;
import daubline.ui.study.NewStudy;
import daubline.ui.study.Recent;
import daubline.ui.study.Seeds;
import daubline.ui.study.Start;
import daubline.ui.study.Studies;
import daubline.ui.study.WhenSeen;
import java.nio.file.Path;
import java.util.List;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Link;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.part.EditorPart;

/** The start page: go on with a study, begin one, or look at the demonstration. */
public final class HearthsideEditor extends EditorPart {

  private static final int NARROWEST = 240;
  /** Characters of running text that must fit beside the band; in less room the band gives way. */
  private static final int READABLE = 44;

  private final Runnable refresher = () -> this.seen.ask();
  private ScrolledComposite scroll;
  private Composite page;
  private FurnaceBand band;
  private Composite recent;
  private WhenSeen seen;
  private List<Path> listed;

  @Override
  public void init(IEditorSite site, IEditorInput input) {
    setSite(site);
    setInput(input);
    setPartName(input.getName());
  }

  @Override
  public void createPartControl(Composite parent) {
    scroll = new ScrolledComposite(parent, SWT.V_SCROLL | SWT.H_SCROLL);
    scroll.setShowFocusedControl(true);
    scroll.setExpandHorizontal(true);
    scroll.setExpandVertical(true);
    page = Pages.plain(scroll, 2);
    ((GridLayout) page.getLayout()).marginWidth = 0;
    ((GridLayout) page.getLayout()).marginHeight = 0;
    band = new FurnaceBand(page);
    band.setLayoutData(new GridData(SWT.FILL, SWT.FILL, false, true));
    Composite body = Pages.plain(page, 1);
    body.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
    ((GridLayout) body.getLayout()).marginWidth = 28;
    ((GridLayout) body.getLayout()).marginHeight = 22;
    fill(body);
    scroll.setContent(page);
    scroll.addListener(SWT.Resize, e -> fit());
    fillRecent();
    seen = new WhenSeen(this, this::fillRecent);
    Studies.get().onChange(refresher);
    PlatformUI.getWorkbench().getHelpSystem().setHelp(parent, "daubline.help.hearthside");
  }

  private void fill(Composite body) {
    Pages.text(body, Words.of("hearth.heading"), Fonts.TITLE.font(), NARROWEST);
    Pages.text(body, Words.of("hearth.about"), Fonts.PLAIN.font(), NARROWEST);
    Pages.heading(body, Words.of("hearth.look"));
    for (String seed : Seeds.names()) {
      choice(body, "seed-" + seed, Words.of("hearth.seed." + seed), Words.of("hearth.seed." + seed + ".about"), () -> Start.open(() -> Seeds.copy(seed)));
    }
    if (Seeds.has(Seeds.DEMONSTRATION)) {
      choice(body, "fresh", Words.of("hearth.fresh"), "", () -> Start.open(() -> Seeds.freshCopy(Seeds.DEMONSTRATION)));
    }
    Pages.heading(body, Words.of("hearth.begin"));
    choice(body, "new", Words.of("hearth.new"), Words.of("hearth.new.about"), () -> NewStudy.ask(body.getShell()));
    choice(body, "open", Words.of("hearth.open"), Words.of("hearth.open.about"), this::openFolder);
    Pages.heading(body, Words.of("hearth.recent"));
    recent = Pages.plain(body, 1);
    recent.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
  }

  private static void choice(Composite parent, String id, String title, String about, Runnable action) {
    Link link = new Link(parent, SWT.NONE);
    link.setText("<a>" + title + "</a>");
    link.setFont(Fonts.LARGER.font());
    link.setBackground(Hue.ASH.color());
    link.setForeground(Hue.INK.color());
    link.setData("id", id);
    GridData data = new GridData(SWT.FILL, SWT.TOP, true, false);
    data.widthHint = NARROWEST;
    link.setLayoutData(data);
    link.addListener(SWT.Selection, e -> action.run());
    Pages.named(link, title, about);
    if (!about.isEmpty()) {
      Pages.text(parent, about, Fonts.PLAIN.font(), NARROWEST).setForeground(Hue.QUIET.color());
    }
  }

  private void fillRecent() {
    List<Path> studies = Recent.studies();
    if (recent == null || recent.isDisposed() || studies.equals(listed)) {
      return;
    }
    listed = studies;
    for (var child : recent.getChildren()) {
      child.dispose();
    }
    if (studies.isEmpty()) {
      Pages.text(recent, Words.of("hearth.recent.none"), Fonts.PLAIN.font(), NARROWEST);
    }
    for (Path folder : studies) {
      choice(recent, "recent", String.valueOf(folder.getFileName()), folder.toString(), () -> Start.open(() -> folder));
    }
    fit();
  }

  /** Wraps the text to the room there is and scrolls what is taller. */
  private void fit() {
    int width = scroll.getClientArea().width;
    boolean room = width >= FurnaceBand.WIDTH + READABLE * Fonts.PLAIN.characterWidth(page);
    ((GridData) band.getLayoutData()).exclude = !room;
    band.setVisible(room);
    page.layout(true, true);
    scroll.setMinSize(NARROWEST, page.computeSize(Math.max(width, NARROWEST), SWT.DEFAULT).y);
  }

  private void openFolder() {
    DirectoryDialog dialog = new DirectoryDialog(page.getShell());
    dialog.setMessage(Words.of("hearth.open.about"));
    String folder = dialog.open();
    if (folder != null) {
      Start.open(() -> Path.of(folder));
    }
  }

  @Override
  public void setFocus() {
    for (var child : recent.getParent().getChildren()) {
      if (child instanceof Link link) {
        link.setFocus();
        return;
      }
    }
  }

  @Override
  public void dispose() {
    Studies.get().remove(refresher);
    seen.dispose();
    super.dispose();
  }

  @Override
  public void doSave(IProgressMonitor monitor) {
    // nothing is edited here
  }

  @Override
  public void doSaveAs() {
    // nothing is edited here
  }

  @Override
  public boolean isDirty() {
    return false;
  }

  @Override
  public boolean isSaveAsAllowed() {
    return false;
  }
}
