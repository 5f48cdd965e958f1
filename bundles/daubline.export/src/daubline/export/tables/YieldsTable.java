package daubline.export.tables;

import daubline.analysis.Origins;
import daubline.analysis.StudyResults;
import daubline.analysis.TrialData;
import daubline.analysis.record.PieceData;
import daubline.analysis.record.TrialRecord;
import daubline.base.Stage;
import daubline.base.Trail;
import daubline.engine.process.balance.Yield;
import daubline.export.Cell;
import daubline.export.Column;
import daubline.export.tables.TrialMasses.Mass;
import java.util.List;
import java.util.stream.Stream;

/** Yields, each by its own name and formula; none is called yield alone. */
public final class YieldsTable extends RecordTable {

  private static final String PER_ORE = "mass of the bloom as extracted, slag included, over ore as charged";
  private static final String FORGED = "over the mass of the pieces that were forged";
  private static final String IRON = "bloom times its share of metal, over dry ore times its share of iron";
  private static final String CHARGED = "as stated for the fire, otherwise summed from the log";

  /** The table. */
  public YieldsTable() {
    super("yields", "Yields", "Named yields of each trial by mass.");
  }

  @Override
  List<Column> columns(StudyResults results) {
    return List.of(Column.text("trial", "Trial"), Column.number("ore", "Ore charged", "kg"), Column.number("charcoal", "Charcoal charged", "kg"),
        Column.number("bloom", "Bloom", "kg"), Column.number("bloom_per_ore", "Bloom ÷ ore", "%"), Column.number("billet_per_bloom", "Billet ÷ bloom forged", "%"),
        Column.number("bar_per_billet", "Bar ÷ billet", "%"), Column.number("charcoal_per_bloom", "Charcoal ÷ bloom", "kg/kg"),
        Column.number("iron_recovery", "Iron in metal ÷ iron in ore", "%"), Column.number("slag_per_metal", "Slag ÷ metal", "kg/kg"));
  }

  @Override
  Stream<List<Cell>> rows(StudyResults results, TrialData trial, TrialRecord record) {
    TrialMasses masses = TrialMasses.of(trial, record);
    Mass ore = masses.ore();
    Mass charcoal = masses.charcoal();
    Mass bloom = masses.bloom();
    if (!ore.isKnown() && !charcoal.isKnown() && !bloom.isKnown()) {
      return Stream.empty();
    }
    List<Trail> oreFrom = charged(results, trial, record, "ore_total");
    List<Trail> fuelFrom = charged(results, trial, record, "charcoal_total");
    List<Trail> bloomFrom = Origins.of(results.snapshot(), trial, "bloom_mass");
    List<Trail> balance = results.snapshot().plans().find(trial.id()).map(Origins::used).orElse(List.of());
    return Stream.of(List.of(Cell.text(trial.name()), from(ore.cell(), "Ore charged", CHARGED, oreFrom), from(charcoal.cell(), "Charcoal charged", CHARGED, fuelFrom),
        from(bloom.cell(), "Bloom", "sum of the blooms weighed", bloomFrom), from(bloom.over(ore, 100), "Bloom ÷ ore", PER_ORE, bloomFrom, oreFrom),
        from(forged(record, "billet_mass"), "Billet ÷ bloom forged", FORGED, Origins.of(results.snapshot(), trial, "billet_mass", "bloom_mass")),
        from(forged(record, "bar_mass"), "Bar ÷ billet", FORGED, Origins.of(results.snapshot(), trial, "bar_mass", "billet_mass")),
        from(charcoal.over(bloom, 1), "Charcoal ÷ bloom", "charcoal charged over the mass of the bloom", fuelFrom, bloomFrom),
        from(named(results, trial, Yield.IRON_RECOVERY, 100), "Iron in metal ÷ iron in ore", IRON, balance, bloomFrom),
        from(named(results, trial, Yield.SLAG_PER_METAL, 1), "Slag ÷ metal", "slag weighed over the metal in the bloom", balance, bloomFrom, trial.found().residues().stream().map(r -> r.trail()).toList())));
  }

  /** The statements of a total, or the charges of the log that it was summed from. */
  private static List<Trail> charged(StudyResults results, TrialData trial, TrialRecord record, String variable) {
    List<Trail> stated = trial.at(Stage.AS_FIRED, variable).stream().map(s -> s.trail()).toList();
    return stated.isEmpty() ? Origins.charges(record) : stated;
  }

  @SafeVarargs
  private static Cell from(Cell cell, String what, String how, List<Trail>... from) {
    return cell.isPlainNumber() ? cell.from(Trail.reckoned(what, cell.text(), how, Stream.of(from).flatMap(List::stream).distinct().toList())) : cell;
  }

  /** A yield that needs the iron of ore and metal; empty where the balance cannot tell it, or only forecasts it. */
  private static Cell named(StudyResults results, TrialData trial, Yield yield, double scale) {
    return results.snapshot().balances().find(trial.id()).filter(b -> !b.forecast()).stream().flatMap(b -> b.yields().stream())
        .filter(y -> y.yield() == yield).map(y -> Cell.fixed(y.value() * scale, scale == 1 ? 2 : 1)).findFirst().orElse(Cell.EMPTY);
  }

  /** Mass of the pieces of one stage over the mass of the pieces they were made of. */
  private static Cell forged(TrialRecord record, String variable) {
    List<PieceData> pieces = record.pieces();
    Mass made = new Mass(0, 0);
    Mass from = new Mass(0, 0);
    for (int i = 0; i < pieces.size(); i++) {
      Mass piece = Mass.of(TrialMasses.mass(pieces.get(i), variable));
      Mass parent = Mass.of(TrialMasses.mass(parent(pieces, i), variable.equals("bar_mass") ? "billet_mass" : "bloom_mass"));
      if (piece.isKnown() && parent.isKnown()) {
        made = new Mass(made.value() + piece.value(), Math.hypot(made.sigma(), piece.sigma()));
        from = new Mass(from.value() + parent.value(), Math.hypot(from.sigma(), parent.sigma()));
      }
    }
    return made.over(from, 100);
  }

  private static PieceData parent(List<PieceData> pieces, int child) {
    for (int i = child - 1; i >= 0; i--) {
      if (pieces.get(i).depth() == pieces.get(child).depth() - 1) {
        return pieces.get(i);
      }
    }
    return pieces.get(child);
  }

  @Override
  List<String> notes(StudyResults results) {
    return List.of("Bloom ÷ ore: " + PER_ORE + "; it is no recovery of iron.",
        "Billet ÷ bloom forged and bar ÷ billet: " + FORGED + ".",
        "Iron in metal ÷ iron in ore: " + IRON + ". Slag ÷ metal: slag weighed over the same metal.",
        "Ore and charcoal " + CHARGED + ".");
  }
}
