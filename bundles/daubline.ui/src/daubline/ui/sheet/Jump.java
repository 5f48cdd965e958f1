package daubline.ui.sheet;

import daubline.model.Reading;
import daubline.model.RemainsSheet;
import daubline.model.Trial;
import org.eclipse.emf.ecore.EObject;

/** Goes from an object anywhere in a study to the field in which it is edited. */
public final class Jump {

  private Jump() {
  }

  /**
   * Opens the sheet of an object and selects its value.
   *
   * @param object an object of an open study
   * @param variable the variable meant, or empty
   * @return whether there was a sheet to open
   */
  public static boolean to(EObject object, String variable) {
    EObject owner = owner(object);
    if (owner == null) {
      return false;
    }
    Reading reading = object instanceof Reading r ? r : null;
    return Sheets.open(owner).map(editor -> {
      if (!editor.reveal(object)) {
        editor.reveal(reading, reading == null ? variable : String.valueOf(reading.getVariable()));
      }
      return true;
    }).orElse(false);
  }

  /** The object whose sheet shows another: itself or what contains it. */
  private static EObject owner(EObject object) {
    for (EObject o = object; o != null; o = o.eContainer()) {
      boolean remainsOfTrial = o instanceof RemainsSheet && o.eContainer() instanceof Trial;
      if (!remainsOfTrial && (Forms.has(o) || Facts.isOwner(o))) {
        return o;
      }
    }
    return null;
  }
}
