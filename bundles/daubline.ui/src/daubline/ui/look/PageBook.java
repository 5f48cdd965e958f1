package daubline.ui.look;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Layout;

/**
 * Pages of which one shows at a time. Their titles are never shortened: those that find no room go to a further line. With the
 * keyboard the titles are one stop; arrows go from page to page, and so do Ctrl+Page Up and Ctrl+Page Down from anywhere inside.
 */
public final class PageBook extends Composite {

  private final Composite bar;
  private final Composite body;
  private final StackLayout stack = new StackLayout();
  private final boolean isBelow;
  private final List<PageTitle> titles = new ArrayList<>();
  private final Map<String, Control> pages = new HashMap<>();
  private final Map<String, Supplier<Control>> waiting = new HashMap<>();
  private PageTitle shown;
  private Consumer<String> whenShown = key -> { };

  /**
   * An empty book. It tells a selection when a person turned to a page, or pressed the title of the one that shows.
   *
   * @param side where the titles stand, SWT.TOP or SWT.BOTTOM
   */
  public PageBook(Composite parent, int side) {
    super(parent, SWT.NONE);
    isBelow = side == SWT.BOTTOM;
    body = new Composite(this, SWT.NONE);
    body.setBackground(Hue.ASH.color());
    body.setLayout(stack);
    bar = bar();
    // the keyboard goes through the titles first where they stand first
    setTabList(isBelow ? new Control[] {body, bar} : new Control[] {bar, body});
    setLayout(new BookLayout());
    addListener(SWT.Traverse, this::turn);
  }

  private Composite bar() {
    Composite titleBar = new Composite(this, SWT.NONE);
    titleBar.setBackground(Hue.BAND.color());
    titleBar.setData("org.eclipse.e4.ui.css.CssClassName", "Band");
    RowLayout row = new RowLayout(SWT.HORIZONTAL);
    row.spacing = 0;
    row.marginTop = 0;
    row.marginBottom = 0;
    row.marginLeft = 0;
    row.marginRight = 0;
    titleBar.setLayout(row);
    titleBar.getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
      @Override
      public void getRole(AccessibleControlEvent e) {
        e.detail = ACC.ROLE_TABFOLDER;
      }
    });
    return titleBar;
  }

  /** What pages are made in. */
  public Composite body() {
    return body;
  }

  /** Adds a page that is there already, made in the body. The first page added shows. */
  public void add(String key, String title, Control page) {
    pages.put(key, page);
    title(key, title);
  }

  /** Adds a page that is made in the body when it is first looked at. */
  public void addLater(String key, String title, Supplier<Control> maker) {
    waiting.put(key, maker);
    title(key, title);
  }

  private void title(String key, String text) {
    PageTitle title = new PageTitle(bar, key, text, isBelow);
    titles.add(title);
    title.addListener(SWT.MouseDown, e -> show(key));
    // the platform gives the keyboard to what the mouse pressed; told only now, the page may take it
    title.addListener(SWT.MouseUp, e -> notifyListeners(SWT.Selection, new Event()));
    title.addListener(SWT.KeyDown, this::arrow);
    title.addListener(SWT.Traverse, e -> e.doit = e.detail != SWT.TRAVERSE_ARROW_NEXT && e.detail != SWT.TRAVERSE_ARROW_PREVIOUS);
    if (shown == null) {
      show(key);
    }
  }

  /** Shows a page; does nothing when there is none of that key. */
  public void show(String key) {
    titles.stream().filter(t -> t.key().equals(key)).findFirst().ifPresent(title -> {
      shown = title;
      titles.forEach(t -> t.setShown(t == title));
      bar.setTabList(new Control[] {title});
      Optional.ofNullable(waiting.remove(key)).ifPresent(maker -> pages.put(key, maker.get()));
      stack.topControl = pages.get(key);
      body.layout();
      whenShown.accept(key);
    });
  }

  /** Tells the key of each page that is shown from now on, whoever asked for it. */
  public void onShow(Consumer<String> listener) {
    whenShown = listener;
  }

  /** The key of the page that shows; empty while there is none. */
  public String shown() {
    return shown == null ? "" : shown.key();
  }

  /** The keys of all pages in their order. */
  public List<String> keys() {
    return titles.stream().map(PageTitle::key).toList();
  }

  /** Goes to the page that a person chose, and tells. */
  private void choose(PageTitle title) {
    if (title != shown) {
      show(title.key());
      notifyListeners(SWT.Selection, new Event());
    }
  }

  private void arrow(Event e) {
    int step = switch (e.keyCode) {
      case SWT.ARROW_RIGHT, SWT.ARROW_DOWN -> 1;
      case SWT.ARROW_LEFT, SWT.ARROW_UP -> -1;
      default -> 0;
    };
    if (step != 0) {
      step(step);
      shown.setFocus();
    }
  }

  private void turn(Event e) {
    if (e.detail == SWT.TRAVERSE_PAGE_NEXT || e.detail == SWT.TRAVERSE_PAGE_PREVIOUS) {
      step(e.detail == SWT.TRAVERSE_PAGE_NEXT ? 1 : -1);
      // done: the stack of editors around must not turn too
      e.detail = SWT.TRAVERSE_NONE;
      e.doit = true;
    }
  }

  private void step(int by) {
    choose(titles.get(Math.floorMod(titles.indexOf(shown) + by, titles.size())));
  }

  /** The bar takes the lines that its titles need at the width there is; the page takes the rest. */
  private final class BookLayout extends Layout {

    @Override
    protected Point computeSize(Composite composite, int widthHint, int heightHint, boolean flush) {
      Point page = body.computeSize(widthHint, SWT.DEFAULT, flush);
      int width = widthHint == SWT.DEFAULT ? page.x : widthHint;
      return new Point(width, heightHint == SWT.DEFAULT ? page.y + bar.computeSize(width, SWT.DEFAULT).y : heightHint);
    }

    @Override
    protected void layout(Composite composite, boolean flush) {
      Rectangle area = composite.getClientArea();
      int height = Math.min(area.height, bar.computeSize(area.width, SWT.DEFAULT).y);
      bar.setBounds(area.x, isBelow ? area.y + area.height - height : area.y, area.width, height);
      body.setBounds(area.x, isBelow ? area.y : area.y + height, area.width, area.height - height);
    }
  }
}
