package daubline.ui.grid;

import daubline.ui.prefs.Preferred;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * How a person has arranged the columns of a grid, kept by the ids of grid and columns: what is left out, the order of the
 * rows, and widths in letters of the usual writing, so that they suit every size of writing. What rows were chosen by a
 * text is kept until the window closes, so that nobody is left with a part without knowing.
 */
final class GridMemory {

  private static final String PREFIX = "grid.";
  private static final Map<String, String> WANTED = new HashMap<>();

  private final String key;
  private final Map<String, Double> widths = new LinkedHashMap<>();

  GridMemory(String id) {
    key = PREFIX + id;
  }

  /** Arranges a model as it was left. */
  void restore(ArrangedModel model) {
    widths.clear();
    model.leftOut().clear();
    String by = "";
    boolean down = false;
    for (String line : Preferred.node().get(key, "").lines().toList()) {
      String[] parts = line.split("\t");
      switch (parts[0]) {
        case "out" -> model.leftOut().add(parts[1]);
        case "up", "down" -> {
          by = parts[1];
          down = parts[0].equals("down");
        }
        case "width" -> widths.put(parts[1], Double.valueOf(parts[2]));
        default -> {
          // kept by a newer version
        }
      }
    }
    model.sort(by, down);
    model.want(WANTED.getOrDefault(key, ""));
  }

  /** Keeps how a model is arranged. */
  void keep(ArrangedModel model) {
    StringBuilder text = new StringBuilder();
    Set<String> out = new TreeSet<>(model.leftOut());
    out.forEach(id -> text.append("out\t").append(id).append('\n'));
    if (!model.sorted().isEmpty()) {
      text.append(model.isDown() ? "down\t" : "up\t").append(model.sorted()).append('\n');
    }
    new TreeMap<>(widths).forEach((id, letters) -> text.append("width\t").append(id).append('\t').append(letters).append('\n'));
    Preferred.put(key, text.toString());
    WANTED.put(key, model.wanted());
  }

  /** The width a person gave a column, in letters; NaN when none. */
  double width(String column) {
    return widths.getOrDefault(column, Double.NaN);
  }

  /** Takes a width given by hand. */
  void width(String column, double letters) {
    widths.put(column, letters);
  }

  /** Forgets the widths given by hand. */
  void forgetWidths() {
    widths.clear();
  }
}
