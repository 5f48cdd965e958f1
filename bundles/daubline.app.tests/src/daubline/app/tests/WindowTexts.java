package daubline.app.tests;

import daubline.ui.grid.GridCell;
import daubline.ui.look.Passage;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.nebula.widgets.nattable.grid.layer.DimensionallyDependentLayer;
import org.eclipse.nebula.widgets.nattable.layer.CompositeLayer;
import org.eclipse.nebula.widgets.nattable.layer.DataLayer;
import org.eclipse.nebula.widgets.nattable.layer.ILayer;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Group;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;

/** Everything that can be read in a window: titles, texts, tooltips, names for screen readers, items, and all cells of grids, also those scrolled out of sight. */
final class WindowTexts {

  private final List<String> texts = new ArrayList<>();

  private WindowTexts() {
  }

  /** The texts of what is visible. */
  static List<String> of(Shell shell) {
    WindowTexts all = new WindowTexts();
    all.add(shell.getText());
    Window.all(shell).stream().filter(Control::isVisible).forEach(all::read);
    return all.texts;
  }

  private void add(Object text) {
    if (text != null && !text.toString().isBlank()) {
      texts.add(text.toString());
    }
  }

  private void read(Control control) {
    add(control.getToolTipText());
    add(control.getData("name"));
    switch (control) {
      case Label label -> add(label.getText());
      case CLabel label -> add(label.getText());
      case Passage passage -> add(passage.getText());
      case Link link -> add(link.getText());
      case Button button -> add(button.getText());
      case Text text -> add(text.getText() + text.getMessage());
      case StyledText text -> add(text.getText());
      case Combo combo -> {
        add(combo.getText());
        Arrays.stream(combo.getItems()).forEach(this::add);
      }
      case Group group -> add(group.getText());
      case CTabFolder tabs -> Arrays.stream(tabs.getItems()).forEach(t -> {
        add(t.getText());
        add(t.getToolTipText());
      });
      case ToolBar bar -> Arrays.stream(bar.getItems()).forEach(t -> {
        add(t.getText());
        add(t.getToolTipText());
      });
      case Table table -> Arrays.stream(table.getItems()).forEach(t -> add(t.getText()));
      case Tree tree -> Arrays.stream(tree.getItems()).forEach(this::branch);
      case NatTable grid -> cells(grid);
      default -> {
        // holds others
      }
    }
  }

  private void branch(TreeItem item) {
    add(item.getText());
    Arrays.stream(item.getItems()).forEach(this::branch);
  }

  private void cells(NatTable grid) {
    Set<DataLayer> layers = new HashSet<>();
    dig(grid.getLayer(), layers);
    for (DataLayer layer : layers) {
      for (int row = 0; row < layer.getDataProvider().getRowCount(); row++) {
        for (int column = 0; column < layer.getDataProvider().getColumnCount(); column++) {
          Object value = layer.getDataProvider().getDataValue(column, row);
          add(value instanceof GridCell cell ? cell.text() + " " + cell.tip() : value);
        }
      }
    }
  }

  private static void dig(ILayer layer, Set<DataLayer> found) {
    switch (layer) {
      case DataLayer data -> found.add(data);
      case CompositeLayer composite -> {
        for (int y = 0; y < composite.getLayoutYCount(); y++) {
          for (int x = 0; x < composite.getLayoutXCount(); x++) {
            dig(composite.getChildLayerByLayoutCoordinate(x, y), found);
          }
        }
      }
      case DimensionallyDependentLayer header -> dig(header.getBaseLayer(), found);
      case null -> {
        // nothing lies underneath
      }
      default -> dig(layer.getUnderlyingLayerByPosition(0, 0), found);
    }
  }
}
