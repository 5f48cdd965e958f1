package daubline.ui.grid;

import daubline.ui.edit.EditTarget;
import daubline.ui.edit.EditTarget.Deed;
import daubline.ui.look.Fonts;
import daubline.ui.look.Hue;
import org.eclipse.nebula.widgets.nattable.config.AbstractRegistryConfiguration;
import org.eclipse.nebula.widgets.nattable.config.CellConfigAttributes;
import org.eclipse.nebula.widgets.nattable.config.IConfigRegistry;
import org.eclipse.nebula.widgets.nattable.config.IEditableRule;
import org.eclipse.nebula.widgets.nattable.data.convert.ContextualDisplayConverter;
import org.eclipse.nebula.widgets.nattable.edit.EditConfigAttributes;
import org.eclipse.nebula.widgets.nattable.edit.command.EditSelectionCommand;
import org.eclipse.nebula.widgets.nattable.edit.editor.ComboBoxCellEditor;
import org.eclipse.nebula.widgets.nattable.edit.editor.IComboBoxDataProvider;
import org.eclipse.nebula.widgets.nattable.edit.editor.TextCellEditor;
import org.eclipse.nebula.widgets.nattable.freeze.FreezeConfigAttributes;
import org.eclipse.nebula.widgets.nattable.grid.GridRegion;
import org.eclipse.nebula.widgets.nattable.layer.LabelStack;
import org.eclipse.nebula.widgets.nattable.layer.cell.IConfigLabelAccumulator;
import org.eclipse.nebula.widgets.nattable.layer.cell.ILayerCell;
import org.eclipse.nebula.widgets.nattable.selection.SelectionLayer.MoveDirectionEnum;
import org.eclipse.nebula.widgets.nattable.style.CellStyleAttributes;
import org.eclipse.nebula.widgets.nattable.style.DisplayMode;
import org.eclipse.nebula.widgets.nattable.style.Style;
import org.eclipse.nebula.widgets.nattable.ui.binding.UiBindingRegistry;
import org.eclipse.nebula.widgets.nattable.ui.matcher.IKeyEventMatcher;
import org.eclipse.nebula.widgets.nattable.widget.NatCombo;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.FocusListener;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** How cells are painted and edited. */
final class GridConfiguration extends AbstractRegistryConfiguration {

  private static final String CHOICE = "choice";
  private static final int OFFERED = 12;

  private final Grid grid;
  private final GridModel model;
  private final GridPainter painter;

  GridConfiguration(Grid grid, GridModel model, GridPainter painter) {
    this.grid = grid;
    this.model = model;
    this.painter = painter;
  }

  /** Labels the cells in which words are offered. */
  record Labels(GridModel model) implements IConfigLabelAccumulator {
    @Override
    public void accumulateConfigLabels(LabelStack labels, int column, int row) {
      if (row < model.rows() && column < model.columns() && !model.choices(column, row).isEmpty()) {
        labels.addLabel(CHOICE);
      }
    }
  }

  @Override
  public void configureRegistry(IConfigRegistry registry) {
    for (DisplayMode mode : new DisplayMode[] {DisplayMode.NORMAL, DisplayMode.SELECT, DisplayMode.HOVER}) {
      registry.registerConfigAttribute(CellConfigAttributes.CELL_PAINTER, painter, mode);
      registry.registerConfigAttribute(CellConfigAttributes.CELL_PAINTER, painter, mode, GridRegion.COLUMN_HEADER);
    }
    Style style = new Style();
    style.setAttributeValue(CellStyleAttributes.FONT, Fonts.PLAIN.font());
    style.setAttributeValue(CellStyleAttributes.BACKGROUND_COLOR, Hue.PAPER.color());
    style.setAttributeValue(CellStyleAttributes.FOREGROUND_COLOR, Hue.INK.color());
    registry.registerConfigAttribute(CellConfigAttributes.CELL_STYLE, style);
    registry.registerConfigAttribute(CellConfigAttributes.GRID_LINE_COLOR, Hue.HAIRLINE.color());
    registry.registerConfigAttribute(FreezeConfigAttributes.SEPARATOR_COLOR, Hue.OCHRE.color());
    registry.registerConfigAttribute(EditConfigAttributes.CELL_EDITABLE_RULE, new Rule());
    // no cell opens by itself after another: left again, one with words on offer would take the first of them
    registry.registerConfigAttribute(EditConfigAttributes.ACTIVATE_EDITOR_ON_TRAVERSAL, false);
    registry.registerConfigAttribute(CellConfigAttributes.DISPLAY_CONVERTER, new Texts());
    registry.registerConfigAttribute(EditConfigAttributes.CELL_EDITOR, new OnwardText());
    registry.registerConfigAttribute(EditConfigAttributes.CELL_EDITOR, choice(), DisplayMode.EDIT, CHOICE);
  }

  private ComboBoxCellEditor choice() {
    ComboBoxCellEditor editor = new OnwardChoice();
    editor.setFreeEdit(true);
    return editor;
  }

  /** Goes on from a cell that was committed by Enter; false when the grid is not one that is filled in cell after cell. */
  private boolean onward(int column, int row) {
    int[] next = model.next(column, row);
    if (next != null) {
      grid.selectPlace(next[0], next[1]);
    }
    return next != null;
  }

  private MoveDirectionEnum direction(MoveDirectionEnum wanted) {
    return wanted == MoveDirectionEnum.DOWN && model.next(0, 0) != null ? MoveDirectionEnum.NONE : wanted;
  }

  /** After a commit: Enter goes on to the next cell, where the grid has an order in which it is filled. */
  private boolean goOn(int column, int row, MoveDirectionEnum wanted, boolean done) {
    if (done && wanted == MoveDirectionEnum.DOWN) {
      onward(column, row);
    }
    return done;
  }

  private final class OnwardText extends TextCellEditor {
    OnwardText() {
      super(true, true);
    }

    @Override
    public boolean commit(MoveDirectionEnum wanted, boolean close, boolean unchecked) {
      return goOn(getColumnIndex(), getRowIndex(), wanted, super.commit(direction(wanted), close, unchecked));
    }
  }

  private final class OnwardChoice extends ComboBoxCellEditor {
    /** Whether a typed letter opened the cell: then the list stays shut at first, since it would take the keys that follow. */
    private boolean isTyping;

    OnwardChoice() {
      super(new IComboBoxDataProvider() {
        @Override
        public java.util.List<?> getValues(int column, int row) {
          return model.choices(column, row);
        }
      }, OFFERED);
    }

    @Override
    protected Control activateCell(Composite parent, Object original) {
      isTyping = original instanceof Character;
      return super.activateCell(parent, original);
    }

    @Override
    public NatCombo createEditorControl(Composite parent) {
      NatCombo combo = new NatCombo(parent, cellStyle, maxVisibleItems, SWT.NONE, false) {
        @Override
        public void showDropdownControl(boolean focusOnText) {
          if (!staysShut()) {
            super.showDropdownControl(focusOnText);
          }
        }

        @Override
        public void showDropdownControl(boolean focusOnText, boolean focusOnFilter) {
          if (!staysShut()) {
            super.showDropdownControl(focusOnText, focusOnFilter);
          }
        }

        /** The toolkit tells of a lost focus a moment later, and by then the next cell may be open, which is none of it. */
        @Override
        public void addFocusListener(FocusListener listener) {
          super.addFocusListener(FocusListener.focusLostAdapter(e -> {
            if (!isDisposed()) {
              listener.focusLost(e);
            }
          }));
        }

        private boolean staysShut() {
          boolean stays = isTyping;
          isTyping = false;
          if (stays) {
            text.forceFocus();
            text.setSelection(text.getCharCount());
          }
          return stays;
        }
      };
      addNatComboListener(combo);
      return combo;
    }

    @Override
    public boolean commit(MoveDirectionEnum wanted, boolean close, boolean unchecked) {
      return goOn(getColumnIndex(), getRowIndex(), wanted, super.commit(direction(wanted), close, unchecked));
    }
  }

  /** Any printable character begins to edit, also "≥" and "–", as F2 does; Delete takes away, and what is copied can be pasted in dialogs too. */
  @Override
  public void configureUiBindings(UiBindingRegistry bindings) {
    IKeyEventMatcher printable = event -> (event.stateMask & (SWT.CTRL | SWT.ALT | SWT.COMMAND)) == 0 && (event.character >= ' ' && event.character != SWT.DEL || event.keyCode == SWT.F2);
    bindings.registerFirstKeyBinding(printable, (table, event) -> {
      // of several cells the first is opened; the platform would ask for a text for all in a dialog of its own
      if (grid.places().size() > 1) {
        grid.place().ifPresent(p -> grid.selectPlace(p.x, p.y));
      }
      // a cell out of sight cannot be opened, and the key would be lost
      grid.show();
      // with the character whatever it is: the toolkit's own action drops those that are neither letter nor digit, such as "≥"
      table.doCommand(event.keyCode == SWT.F2 ? new EditSelectionCommand(table, table.getConfigRegistry())
          : new EditSelectionCommand(table, table.getConfigRegistry(), event.character));
    });
    IKeyEventMatcher opens = event -> (event.keyCode == SWT.CR || event.keyCode == SWT.KEYPAD_CR) && event.stateMask == 0 && grid.entering() != null;
    bindings.registerFirstKeyBinding(opens, (table, event) -> grid.entering().run());
    deed(bindings, event -> event.keyCode == SWT.DEL && event.stateMask == 0, Deed.DELETE);
    deed(bindings, event -> event.keyCode == 'x' && event.stateMask == SWT.MOD1, Deed.CUT);
    deed(bindings, event -> event.keyCode == 'v' && event.stateMask == SWT.MOD1, Deed.PASTE);
    deed(bindings, event -> event.keyCode == 'f' && event.stateMask == SWT.MOD1, Deed.FIND);
    IKeyEventMatcher enter = event -> (event.keyCode == SWT.CR || event.keyCode == SWT.KEYPAD_CR) && event.stateMask == 0 && model.next(0, 0) != null;
    bindings.registerFirstKeyBinding(enter, (table, event) -> grid.place().ifPresent(p -> onward(p.x, p.y)));
  }

  private static void deed(UiBindingRegistry bindings, IKeyEventMatcher keys, Deed deed) {
    bindings.registerFirstKeyBinding(keys, (table, event) -> {
      EditTarget target = (EditTarget) table.getData(EditTarget.KEY);
      if (target.can(deed)) {
        target.act(deed);
        event.doit = false;
      }
    });
  }

  private final class Rule implements IEditableRule {
    @Override
    public boolean isEditable(ILayerCell cell, IConfigRegistry registry) {
      return model.isEditable(cell.getColumnIndex(), cell.getRowIndex());
    }

    @Override
    public boolean isEditable(int columnIndex, int rowIndex) {
      return model.isEditable(columnIndex, rowIndex);
    }
  }

  /** Editing begins with the text as typed, which need not be the text as shown. */
  private final class Texts extends ContextualDisplayConverter {
    @Override
    public Object canonicalToDisplayValue(ILayerCell cell, IConfigRegistry registry, Object value) {
      // a typed character opens a cell too, and its editor wants a text
      return value instanceof GridCell ? model.editText(cell.getColumnIndex(), cell.getRowIndex()) : value instanceof Character ? value.toString() : value;
    }

    @Override
    public Object displayToCanonicalValue(ILayerCell cell, IConfigRegistry registry, Object text) {
      return text;
    }
  }
}
