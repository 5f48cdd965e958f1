package daubline.analysis;

import daubline.engine.inference.SheetData;
import java.util.List;

/**
 * What a trial is compared with: one evidence sheet, several as a group, or the remains of another trial.
 *
 * @param place where it belongs, such as the site, or empty
 * @param sheet what it says
 * @param features ids of the sheets that a group is made of; empty when it is no group
 */
public record Target(String place, SheetData sheet, List<String> features) {

  public Target {
    features = List.copyOf(features);
  }

  /** Whether it stands for one more feature of a group. */
  public boolean isGroup() {
    return !features.isEmpty();
  }

  /** Place and name as a heading. */
  public String heading() {
    return place.isEmpty() || place.equals(sheet.name()) ? sheet.name() : place + " · " + sheet.name();
  }
}
