package daubline.seeds;

import daubline.seeds.SeedTable.Row;

/** One row of the recipes with the furnace it was fired in, read as numbers. */
record Recipe(Row row, Row build) {

  String id() {
    return row.get("id");
  }

  String text(String column) {
    return row.get(column);
  }

  /** A number of the recipe; zero when nothing stands in its cell. */
  double of(String column) {
    return number(row, column);
  }

  /** A number of the furnace; zero when nothing stands in its cell. */
  double built(String column) {
    return number(build, column);
  }

  int number() {
    return (int) of("number");
  }

  boolean isTapped() {
    return of("tapped") > 0;
  }

  boolean hasPit() {
    return build.get("slag").equals("slag pit");
  }

  boolean isDome() {
    return build.get("type").equals("domed");
  }

  boolean isFailed() {
    return row.get("status").equals("failed");
  }

  /** Minutes from first light to the first ore. */
  double firstOre() {
    return 60 * of("warm");
  }

  /** Minutes from first light to the end of the blast. */
  double end() {
    return 60 * (of("warm") + of("main") + of("burn"));
  }

  /** Minutes between charges; each charge holds one kilogram of ore. */
  double interval() {
    return 60 * of("main") / (of("ore") - 1);
  }

  private static double number(Row row, String column) {
    return row.get(column).isEmpty() ? 0 : Double.parseDouble(row.get(column));
  }
}
