package daubline.engine.design;

import daubline.base.Printed;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Something set on purpose in a trial. A setting is kept coded: −1 at the low and +1 at the high limit of a measured
 * factor, the index of the name for a factor of categories.
 *
 * @param id the id of the variable in the catalogue
 * @param name the name shown
 * @param unit the symbol of the unit of the limits and levels, may be empty
 * @param low the lowest setting considered; 0 for categories
 * @param high the highest setting considered, above low; 0 for categories
 * @param levels the only settings possible, between the limits; empty when every setting between them is possible
 * @param names the categories, at least two; empty for a measured factor
 * @param change how often it can be changed
 */
public record Factor(String id, String name, String unit, double low, double high, List<Double> levels,
    List<String> names, Change change) {

  /** Checks the limits and levels. @throws IllegalArgumentException saying which factor is wrong and why */
  public Factor {
    Objects.requireNonNull(change);
    levels = List.copyOf(levels);
    names = List.copyOf(names);
    if (names.isEmpty() && !(low < high && Double.isFinite(low) && Double.isFinite(high))) {
      throw new IllegalArgumentException("factor " + name + ": the low limit " + low + " is not below the high limit "
          + high + "; give two different limits");
    }
    for (double level : levels) {
      if (!(level >= low && level <= high)) {
        throw new IllegalArgumentException("factor " + name + ": the level " + level + " lies outside " + low + " to "
            + high + "; widen the limits or leave the level out");
      }
    }
    if (names.size() == 1 || names.stream().distinct().count() < names.size()) {
      throw new IllegalArgumentException("factor " + name + ": needs two or more different categories, has " + names);
    }
  }

  /** A measured factor that can take every setting between two limits and is set for each trial. */
  public static Factor measured(String id, String name, String unit, double low, double high) {
    return new Factor(id, name, unit, low, high, List.of(), List.of(), Change.EACH_TRIAL);
  }

  /** A factor of categories, set for each trial. */
  public static Factor category(String id, String name, String... names) {
    return new Factor(id, name, "", 0, 0, List.of(), List.of(names), Change.EACH_TRIAL);
  }

  /** The same factor on these settings only. */
  public Factor on(double... settings) {
    List<Double> list = new ArrayList<>();
    for (double s : settings) {
      list.add(s);
    }
    return new Factor(id, name, unit, low, high, list, names, change);
  }

  /** The same factor, changed as often as this. */
  public Factor changing(Change often) {
    return new Factor(id, name, unit, low, high, levels, names, often);
  }

  /** Whether it has categories. */
  public boolean isCategory() {
    return !names.isEmpty();
  }

  /** The coded settings possible; empty when every one between −1 and 1 is. */
  public double[] codes() {
    double[] codes = new double[isCategory() ? names.size() : levels.size()];
    for (int i = 0; i < codes.length; i++) {
      codes[i] = isCategory() ? i : code(levels.get(i));
    }
    return codes;
  }

  /** From the unit of the limits to the code. */
  public double code(double setting) {
    return isCategory() ? setting : (setting - (low + high) / 2) / ((high - low) / 2);
  }

  /** From the code to the unit of the limits; for categories the index. */
  public double decode(double code) {
    return isCategory() ? code : (low + high) / 2 + code * (high - low) / 2;
  }

  /** The code of a category. @throws IllegalArgumentException when there is no such category */
  public double code(String category) {
    int index = names.indexOf(category);
    if (index < 0) {
      throw new IllegalArgumentException("factor " + name + " has no category “" + category + "”; it has " + names);
    }
    return index;
  }

  /** A coded setting as shown, with the unit. */
  public String show(double code) {
    if (isCategory()) {
      return names.get((int) Math.round(code));
    }
    return Printed.number(decode(code)) + (unit.isEmpty() ? "" : "\u00A0" + unit);
  }

  /** How many columns its main effect takes in a model: one if measured, one less than the categories otherwise. */
  public int columns() {
    return isCategory() ? names.size() - 1 : 1;
  }
}
