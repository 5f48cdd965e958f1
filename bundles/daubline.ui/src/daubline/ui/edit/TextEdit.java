package daubline.ui.edit;

import daubline.ui.edit.EditTarget.Deed;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Text;

/** The commands of the Edit menu in fields of text. */
final class TextEdit implements EditTarget {

  private final Control field;

  private TextEdit(Control field) {
    this.field = field;
  }

  /** A field of text as a target; empty for any other control. */
  static Optional<EditTarget> of(Control control) {
    boolean writes = control instanceof Text || control instanceof StyledText || control instanceof Combo c && (c.getStyle() & SWT.READ_ONLY) == 0;
    return writes ? Optional.of(new TextEdit(control)) : Optional.empty();
  }

  @Override
  public boolean can(Deed deed) {
    return switch (deed) {
      case COPY -> isSelected();
      case CUT, DELETE -> isSelected() && isOpen();
      case PASTE -> isOpen();
      case SELECT_ALL -> true;
      case FIND -> false;
    };
  }

  private boolean isSelected() {
    return switch (field) {
      case Text text -> text.getSelectionCount() > 0;
      case StyledText text -> text.getSelectionCount() > 0;
      case Combo combo -> combo.getSelection().x < combo.getSelection().y;
      default -> false;
    };
  }

  private boolean isOpen() {
    return switch (field) {
      case Text text -> text.getEditable();
      case StyledText text -> text.getEditable();
      default -> true;
    };
  }

  @Override
  public void act(Deed deed) {
    switch (field) {
      case Text text -> act(deed, text);
      case StyledText text -> act(deed, text);
      case Combo combo -> act(deed, combo);
      default -> throw new IllegalStateException("No field of text: " + field);
    }
  }

  private static void act(Deed deed, Text text) {
    switch (deed) {
      case COPY -> text.copy();
      case CUT -> text.cut();
      case PASTE -> text.paste();
      case DELETE -> text.insert("");
      case SELECT_ALL -> text.selectAll();
      case FIND -> {
        // nothing is found in a field
      }
    }
  }

  private static void act(Deed deed, StyledText text) {
    switch (deed) {
      case COPY -> text.copy();
      case CUT -> text.cut();
      case PASTE -> text.paste();
      case DELETE -> text.insert("");
      case SELECT_ALL -> text.selectAll();
      case FIND -> {
        // nothing is found in a field
      }
    }
  }

  private static void act(Deed deed, Combo combo) {
    switch (deed) {
      case COPY -> combo.copy();
      case CUT, DELETE -> combo.cut();
      case PASTE -> combo.paste();
      case SELECT_ALL -> combo.setSelection(new org.eclipse.swt.graphics.Point(0, combo.getText().length()));
      case FIND -> {
        // nothing is found in a field
      }
    }
  }
}
