package daubline.export.tables;

import daubline.analysis.StudyResults;
import daubline.analysis.record.ReconstructionData;
import daubline.base.Basis;
import daubline.export.Cell;
import daubline.export.Column;
import java.util.List;
import java.util.stream.Stream;

/** How much of each reconstruction is evidence and how much is guessed. */
public final class BasesTable extends Spec {

  /** The table. */
  public BasesTable() {
    super("bases", "What the Reconstructions Rest On", "The number of choices of each reconstruction by what they rest on, and the share of guesses.");
  }

  @Override
  List<Column> columns(StudyResults results) {
    return Stream.concat(Stream.concat(Stream.of(Column.text("reconstruction", "Reconstruction"), Column.words("retired", "Retired"),
        Column.number("choices", "Choices", "")), Stream.of(Basis.values()).map(b -> Column.number(b.name().toLowerCase(java.util.Locale.ROOT), heading(b), ""))),
        Stream.of(Column.number("unsaid", "Basis not said", ""), Column.number("guesses", "Guesses", "%"))).toList();
  }

  private static String heading(Basis basis) {
    return Character.toUpperCase(basis.word().charAt(0)) + basis.word().substring(1);
  }

  @Override
  List<List<Cell>> rows(StudyResults results) {
    return results.snapshot().record().hypotheses().stream().map(BasesTable::row).toList();
  }

  private static List<Cell> row(ReconstructionData r) {
    Stream<Cell> counts = Stream.of(Basis.values()).map(b -> Cell.fixed(r.counts().getOrDefault(b, 0), 0));
    Cell share = Double.isNaN(r.guesses()) ? Cell.EMPTY : Cell.fixed(100 * r.guesses(), 0);
    return Stream.concat(Stream.concat(Stream.of(Cell.text(r.name()), Cell.text(r.retired() ? "yes" : "no"), Cell.fixed(r.choices().size(), 0)), counts),
        Stream.of(Cell.fixed(r.unsaid(), 0), share)).toList();
  }

  @Override
  List<String> notes(StudyResults results) {
    return List.of("Guesses: choices that are guesses or whose basis is not said, as a share of all choices.");
  }
}
