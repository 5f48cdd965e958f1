package daubline.analysis.record;

import daubline.base.Amount;
import java.util.List;

/**
 * What the fire did to the wall of a furnace and where its residue lay, excavated or left by a trial.
 *
 * @param id id of the sheet
 * @param name name of the feature or trial
 * @param excavated whether it was dug up
 * @param zones patches of the inner wall; those without place or state are left out
 * @param squares residue on the ground around; squares without a middle are left out
 */
public record WallData(String id, String name, boolean excavated, List<Zone> zones, List<Square> squares) {

  public WallData {
    zones = List.copyOf(zones);
    squares = List.copyOf(squares);
  }

  /**
   * One patch of the inner wall.
   *
   * @param clock clock position from 1 to 12, the front at 6
   * @param low lower edge, m above the floor
   * @param high upper edge, m above the floor
   * @param state what the fire did, such as vitrified, in lower case
   * @param id id of the entry
   */
  public record Zone(int clock, double low, double high, String state, String id) {
  }

  /**
   * The residue in one square of the ground.
   *
   * @param east middle, m east of the middle of the furnace
   * @param north middle, m north of it
   * @param side length of a side, m; NaN when not stated
   * @param residue name of the residue class, empty for all residue
   * @param mass mass, kg, or why there is none
   * @param id id of the entry
   */
  public record Square(double east, double north, double side, String residue, Amount mass, String id) {
  }
}
