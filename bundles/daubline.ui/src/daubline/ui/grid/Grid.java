package daubline.ui.grid;

import daubline.base.Trail;
import daubline.ui.Words;
import daubline.ui.edit.EditTarget;
import daubline.ui.explain.Explanation;
import daubline.ui.explain.WhatIsThis;
import daubline.ui.explain.WhereFrom;
import daubline.ui.look.FocusFrame;
import daubline.ui.look.Fonts;
import daubline.ui.look.Hue;
import daubline.ui.look.StatusLine;
import daubline.ui.study.Chosen;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.nebula.widgets.nattable.config.ConfigRegistry;
import org.eclipse.nebula.widgets.nattable.coordinate.PositionCoordinate;
import org.eclipse.nebula.widgets.nattable.edit.config.DefaultEditBindings;
import org.eclipse.nebula.widgets.nattable.edit.config.DefaultEditConfiguration;
import org.eclipse.nebula.widgets.nattable.edit.editor.ICellEditor;
import org.eclipse.nebula.widgets.nattable.freeze.CompositeFreezeLayer;
import org.eclipse.nebula.widgets.nattable.freeze.FreezeHelper;
import org.eclipse.nebula.widgets.nattable.freeze.FreezeLayer;
import org.eclipse.nebula.widgets.nattable.grid.GridRegion;
import org.eclipse.nebula.widgets.nattable.grid.layer.ColumnHeaderLayer;
import org.eclipse.nebula.widgets.nattable.layer.CompositeLayer;
import org.eclipse.nebula.widgets.nattable.layer.DataLayer;
import org.eclipse.nebula.widgets.nattable.layer.ILayer;
import org.eclipse.nebula.widgets.nattable.layer.LayerUtil;
import org.eclipse.nebula.widgets.nattable.layer.NoScalingDpiConverter;
import org.eclipse.nebula.widgets.nattable.layer.command.ConfigureScalingCommand;
import org.eclipse.nebula.widgets.nattable.selection.SelectionLayer;
import org.eclipse.nebula.widgets.nattable.selection.command.SelectAllCommand;
import org.eclipse.nebula.widgets.nattable.selection.command.SelectCellCommand;
import org.eclipse.nebula.widgets.nattable.selection.event.ISelectionEvent;
import org.eclipse.nebula.widgets.nattable.viewport.ViewportLayer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Menu;

/** A virtual grid over a {@link GridModel}: keys move, typing edits, Enter commits, copying takes headings along. */
public final class Grid {

  /** Key of the data under which the widget says whether something is being typed. */
  public static final String TYPING = "daubline.typing";
  /** Key of the data under which the widget keeps its grid. */
  public static final String GRID = "daubline.grid";

  private final NatTable table;
  private final ArrangedModel model;
  private final DataLayer data;
  private final DataLayer headings;
  private final ColumnWidths widths;
  private final SelectionLayer selection;
  private final ViewportLayer viewport;
  private final List<Runnable> selectionListeners = new ArrayList<>();
  private final List<Consumer<Menu>> offers = new ArrayList<>();
  private final GridCopy copying;
  private final boolean fixed;
  private final FindBar finder;
  /** What Enter does; null where it goes to the row below. */
  private Runnable entering;
  /** What a person chose; null until it is known which grid this is. */
  private GridMemory memory;
  /** The selection of which the line at the bottom told last. */
  private String told = "";
  /** What is done when the open cell is closed; null when nothing is. */
  private Runnable waiting;

  /**
   * A grid.
   *
   * @param name what a screen reader calls it
   */
  public Grid(Composite parent, String name, GridModel model) {
    this(parent, name, model, new GridPainter(), false);
  }

  /** A grid whose first column stays in sight when the others are scrolled. */
  public static Grid withFixedNames(Composite parent, String name, GridModel model) {
    return new Grid(parent, name, model, new GridPainter(), true);
  }

  Grid(Composite parent, String name, GridModel model, GridPainter painter) {
    this(parent, name, model, painter, false);
  }

  private Grid(Composite parent, String name, GridModel base, GridPainter painter, boolean fixed) {
    this.fixed = fixed;
    model = new ArrangedModel(base);
    model.arrange();
    data = new DataLayer(new GridData(model));
    widths = new ColumnWidths(model, data);
    selection = new SelectionLayer(data);
    viewport = new ViewportLayer(selection);
    viewport.setRegionName(GridRegion.BODY);
    headings = new DataLayer(GridData.headings(model));
    FreezeLayer freeze = new FreezeLayer(selection);
    ILayer body = fixed ? new CompositeFreezeLayer(freeze, viewport, selection) : viewport;
    ColumnHeaderLayer header = new ColumnHeaderLayer(headings, body, selection);
    CompositeLayer all = new CompositeLayer(1, 2);
    all.setChildLayer(GridRegion.COLUMN_HEADER, header, 0, 0);
    all.setChildLayer(GridRegion.BODY, body, 0, 1);
    all.addConfiguration(new DefaultEditConfiguration());
    all.addConfiguration(new DefaultEditBindings());
    data.setConfigLabelAccumulator(new GridConfiguration.Labels(model));
    table = new NatTable(parent, all, false);
    table.setConfigRegistry(new ConfigRegistry());
    table.addConfiguration(new GridConfiguration(this, model, painter));
    table.setBackground(Hue.PAPER.color());
    table.configure();
    // sizes are measured in the letters of the window, which have grown with the screen already
    table.doCommand(new ConfigureScalingCommand(new NoScalingDpiConverter()));
    sizes();
    if (fixed) {
      // after the widths are known: what is frozen is kept in pixels
      FreezeHelper.freeze(freeze, viewport, new PositionCoordinate(selection, 0, -1), new PositionCoordinate(selection, 0, -1));
    }
    table.setData("org.eclipse.e4.ui.css.CssClassName", "grid");
    table.setData(GRID, this);
    table.setData(TYPING, (BooleanSupplier) this::isTyping);
    table.addListener(SWT.Resize, e -> sizes());
    keyboard();
    copying = new GridCopy(model, selection);
    copying.register();
    finder = new FindBar(this);
    EditTarget.on(table, new GridEdit(this, name));
    new GridMenu(this).install();
    selection.addLayerListener(e -> {
      if (e instanceof ISelectionEvent) {
        selectionListeners.forEach(Runnable::run);
        tellSelection();
      }
    });
    selectionListeners.add(() -> {
      if (table.isFocusControl()) {
        Chosen.set(origin().orElse(null));
      }
    });
    WhereFrom.byKey(table, this::origin);
    new GridTips(table).install();
    WhatIsThis.on(table, this::explain, c -> below());
    nameFor(name);
  }

  /** Tab goes from cell to cell, so Ctrl+Tab leads out; what has the keyboard is framed, and a cell of it is selected. */
  private void keyboard() {
    table.addListener(SWT.Traverse, e -> {
      if (e.detail == SWT.TRAVERSE_TAB_NEXT || e.detail == SWT.TRAVERSE_TAB_PREVIOUS) {
        e.doit = (e.stateMask & SWT.CTRL) != 0;
      }
    });
    table.addOverlayPainter((gc, layer) -> {
      if (table.isFocusControl()) {
        FocusFrame.paint(gc, table.getClientArea());
      }
    });
    table.addListener(SWT.FocusOut, e -> table.redraw());
    table.addListener(SWT.FocusIn, e -> {
      table.redraw();
      // whoever gave the keyboard may select a cell first
      table.getDisplay().asyncExec(() -> {
        if (!table.isDisposed() && table.isFocusControl() && selected().isEmpty() && model.rows() > 0 && model.columns() > 0) {
          select(0, 0);
        }
      });
    });
  }

  private void nameFor(String name) {
    table.setData("name", name);
    table.getAccessible().addAccessibleListener(new AccessibleAdapter() {
      @Override
      public void getName(AccessibleEvent e) {
        e.result = place().map(p -> name + ", " + model.heading(p.x) + ", " + model.cell(0, p.y).words() + ": " + model.cell(p.x, p.y)).orElse(name);
      }
    });
  }

  /** Where the number in the selected cell comes from. */
  private Optional<Trail> origin() {
    return place().flatMap(p -> model.origin(p.x, p.y));
  }

  private List<Explanation> explain() {
    return place().map(p -> model.explain(p.x, p.y)).orElse(List.of());
  }

  /** The lower edge of the selected cell, where it can be seen. */
  public org.eclipse.swt.graphics.Point below() {
    org.eclipse.swt.graphics.Point size = table.getSize();
    return place().map(p -> {
      Rectangle cell = selection.getCellByPosition(p.x, p.y).getBounds();
      int x = cell.x - viewport.getOrigin().getX();
      int y = cell.y - viewport.getOrigin().getY() + cell.height + headings.getHeight();
      return new org.eclipse.swt.graphics.Point(Math.clamp(x, 0, Math.max(0, size.x)), Math.clamp(y, 0, Math.max(0, size.y)));
    }).orElse(new org.eclipse.swt.graphics.Point(0, size.y));
  }

  private void sizes() {
    recall();
    int line = Fonts.STRONG.lineHeight(table);
    data.setDefaultRowHeight(line * model.linesPerRow() + 8);
    headings.setDefaultRowHeight(line + 10);
    // a column that changes closes an open cell, and what was typed into it would be lost
    if (!isOpen()) {
      widths.fit(table);
    }
  }

  /** Arranges the columns as they were left, as soon as it is known by its id which grid this is. */
  private void recall() {
    if (memory == null && table.getData("id") != null) {
      memory = new GridMemory(String.valueOf(table.getData("id")));
      memory.restore(model);
      widths.remember(memory);
      if (!model.leftOut().isEmpty() || !model.sorted().isEmpty() || !model.wanted().isEmpty()) {
        table.refresh(true);
      }
      if (!model.wanted().isEmpty()) {
        table.getDisplay().asyncExec(() -> finder.open(model.wanted(), true, false));
      }
    }
  }

  /** Arranges columns or rows otherwise and keeps that; what is selected stays selected. */
  void arrange(Runnable change) {
    Optional<org.eclipse.swt.graphics.Point> before = selected();
    change.run();
    model.arrange();
    if (memory != null) {
      memory.keep(model);
    }
    widths.forget();
    sizes();
    table.refresh(true);
    before.filter(p -> model.placeOfRow(p.y) >= 0).ifPresent(p -> select(p.x, p.y));
  }

  /** Gives every column its usual width again. */
  void usualWidths() {
    if (memory != null) {
      arrange(memory::forgetWidths);
    }
  }

  /** The model as it is arranged; its places are those on the screen. */
  ArrangedModel arranged() {
    return model;
  }

  /** Whether the first column stays in sight and so cannot be left out. */
  boolean isFixed() {
    return fixed;
  }

  /** The bar in which something is searched for. */
  FindBar finder() {
    return finder;
  }

  /** The selected cells as text. */
  String copied(boolean headings) {
    return copying.text(headings);
  }

  /** Selects every cell. */
  void selectAll() {
    table.doCommand(new SelectAllCommand());
  }

  /** The places on the screen of all selected cells, row after row. */
  List<org.eclipse.swt.graphics.Point> places() {
    return Arrays.stream(selection.getSelectedCellPositions()).map(c -> new org.eclipse.swt.graphics.Point(c.columnPosition, c.rowPosition))
        .filter(p -> p.x < model.columns() && p.y < model.rows())
        .sorted(Comparator.<org.eclipse.swt.graphics.Point>comparingInt(p -> p.y).thenComparingInt(p -> p.x)).toList();
  }

  /** Selects a place on the screen. */
  void selectPlace(int column, int row) {
    selection.doCommand(new SelectCellCommand(selection, column, row, false, false));
  }

  /** The place that was clicked, of a cell or with row -1 of a heading; empty beside the cells. */
  Optional<org.eclipse.swt.graphics.Point> placeAt(int x, int y) {
    int column = LayerUtil.convertColumnPosition(table, table.getColumnPositionByX(x), selection);
    int position = table.getRowPositionByY(y);
    int row = position == 0 ? -1 : LayerUtil.convertRowPosition(table, position, selection);
    boolean inside = column >= 0 && column < model.columns() && position >= 0 && row < model.rows();
    return inside ? Optional.of(new org.eclipse.swt.graphics.Point(column, row)) : Optional.empty();
  }

  /** Whether a point of the control lies on a cell, not on a heading or beside. */
  public boolean isCell(int x, int y) {
    return placeAt(x, y).filter(p -> p.y >= 0).isPresent();
  }

  /** Whether a place is among the selected cells. */
  boolean isSelected(int column, int row) {
    return selection.isCellPositionSelected(column, row);
  }

  private void tellSelection() {
    int cells = selection.getSelectedCellPositions().length;
    String now = place().map(p -> p + " " + cells).orElse("");
    // what was just done stands there until something else is selected
    if (table.isFocusControl() && !finder.isOpen() && !now.isEmpty() && !now.equals(told)) {
      told = now;
      place().ifPresent(p -> StatusLine.say(cells > 1 ? Words.of("grid.selected", cells, model.rows()) : Words.of("grid.row", p.y + 1, model.rows())));
    }
  }

  /** The widget. */
  public NatTable control() {
    return table;
  }

  /** What it shows. */
  public GridModel model() {
    return model.base();
  }

  /** Shows what the model says now; the selection stays where it is. */
  public void refresh() {
    if (!table.isDisposed()) {
      table.refresh(false);
    }
  }

  /** Shows a model whose columns or rows changed in number; the selected cell stays selected while it is there. */
  public void rebuild() {
    if (!table.isDisposed()) {
      Optional<org.eclipse.swt.graphics.Point> before = selected();
      model.arrange();
      sizes();
      table.refresh(true);
      before.filter(p -> !selected().equals(before) && p.x < model.base().columns() && model.placeOfRow(p.y) >= 0 && p.y < model.base().rows())
          .ifPresent(p -> select(p.x, p.y));
    }
  }

  /** Whether a cell is open to be typed into. */
  public boolean isOpen() {
    return !table.isDisposed() && table.getActiveCellEditor() != null && !table.getActiveCellEditor().isClosed();
  }

  /** Whether a cell is open; then the action is done when it is closed, so as not to disturb the typing. */
  public boolean postpones(Runnable action) {
    boolean open = isOpen();
    if (open && waiting == null) {
      table.getActiveCellEditor().getEditorControl().addListener(SWT.Dispose, e -> table.getDisplay().asyncExec(this::catchUp));
    }
    waiting = open ? action : null;
    return open;
  }

  private void catchUp() {
    Runnable action = waiting;
    waiting = null;
    if (action != null && !table.isDisposed()) {
      action.run();
    }
  }

  /** Whether something was typed into an open cell that the study does not hold yet. */
  private boolean isTyping() {
    if (!isOpen()) {
      return false;
    }
    ICellEditor editor = table.getActiveCellEditor();
    Object typed = editor.getEditorValue();
    return !model.editText(editor.getColumnIndex(), editor.getRowIndex()).equals(typed == null ? "" : typed.toString());
  }

  /** Has Enter do something in a grid that is only read, in place of going to the row below. */
  public void onEnter(Runnable action) {
    entering = action;
  }

  /** What Enter does; null where it goes to the row below. */
  Runnable entering() {
    return entering;
  }

  /** Has a part put lines of its own before the others into the context menu, each time it opens. */
  public void offer(Consumer<Menu> maker) {
    offers.add(maker);
  }

  /** What parts put into the context menu. */
  List<Consumer<Menu>> offers() {
    return offers;
  }

  /** Adds a listener told when another cell is selected. */
  public void onSelect(Runnable listener) {
    selectionListeners.add(listener);
  }

  /** The selected cell as column and row of the model; empty when there is none. */
  public Optional<org.eclipse.swt.graphics.Point> selected() {
    return place().map(p -> new org.eclipse.swt.graphics.Point(model.column(p.x), model.row(p.y)));
  }

  /** The place of the selected cell on the screen. */
  Optional<org.eclipse.swt.graphics.Point> place() {
    PositionCoordinate anchor = selection.getSelectionAnchor();
    boolean inside = anchor.columnPosition >= 0 && anchor.columnPosition < model.columns() && anchor.rowPosition >= 0 && anchor.rowPosition < model.rows();
    return inside ? Optional.of(new org.eclipse.swt.graphics.Point(anchor.columnPosition, anchor.rowPosition)) : Optional.empty();
  }

  /** Selects a cell of the model and scrolls to it; a row that is not among those wanted brings all of them back. */
  public void select(int column, int row) {
    if (model.placeOfRow(row) < 0 && row < model.base().rows()) {
      finder.close();
      arrange(() -> model.want(""));
    }
    selectPlace(Math.max(0, model.placeOfColumn(column)), model.placeOfRow(row));
  }

  /** Scrolls to the selected cell. */
  void show() {
    place().ifPresent(p -> viewport.moveCellPositionIntoViewport(p.x, p.y));
  }
}
