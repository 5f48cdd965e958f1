package daubline.export;

import java.util.List;
import java.util.Optional;

/** All tables of the publication, in the order in which they are printed. */
public final class Tables {

  private static final List<TableSpec> ALL = List.of(new SheetTable(), new RankingTable());

  private Tables() {
  }

  /** Every table. */
  public static List<TableSpec> all() {
    return ALL;
  }

  /** A table by its short name. */
  public static Optional<TableSpec> find(String id) {
    return ALL.stream().filter(t -> t.id().equals(id)).findFirst();
  }
}
