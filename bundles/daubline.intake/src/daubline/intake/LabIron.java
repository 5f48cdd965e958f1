package daubline.intake;

import daubline.base.IronBasis;
import daubline.base.Oxides;
import daubline.intake.Recognised.Aspect;
import daubline.intake.Recognised.State;
import daubline.intake.raw.RawRow;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Recognises how iron is reported. It is read where headings say it, and otherwise guessed and asked for. */
final class LabIron {

  /** Fe2O3 that is FeO told once more agrees with it as far as rounding goes. */
  private static final double SAME = 0.005;
  private static final List<String> CHOICES = Arrays.stream(IronBasis.values()).map(IronBasis::word).toList();

  private final Table table;
  private final IntakeOptions options;
  private final List<Recognised> recognised;

  LabIron(Table table, IntakeOptions options, List<Recognised> recognised) {
    this.table = table;
    this.options = options;
    this.recognised = recognised;
  }

  private record Guess(IronBasis basis, boolean sure, String why) {
  }

  /** Puts what is recognised into the texts of the rows that do not say it themselves. */
  void mark(List<RawRow> rows, Map<Integer, Map<String, String>> cells) {
    if (table.fixed().containsKey("iron_basis")) {
      recognised.add(new Recognised(Aspect.IRON, "*", table.fixed().get("iron_basis"), "stated", State.STATED, "set:iron_basis", CHOICES));
      return;
    }
    Map<Guess, List<RawRow>> by = new LinkedHashMap<>();
    for (RawRow row : rows) {
      if (Labs.text(table, row, "iron_basis").isEmpty() && (!Labs.isLong(table) || Labs.text(table, row, "component").startsWith("Fe"))) {
        guess(row).ifPresent(g -> by.computeIfAbsent(g, k -> new java.util.ArrayList<>()).add(row));
      }
    }
    boolean confirmed = Labs.isConfirmed(options, Aspect.IRON);
    by.forEach((guess, some) -> {
      some.forEach(r -> cells.computeIfAbsent(r.number(), n -> new TreeMap<>()).put("iron_basis", guess.basis().word()));
      State state = guess.sure() ? State.READ : confirmed ? State.STATED : State.GUESSED;
      if (by.size() == 1) {
        recognised.add(new Recognised(Aspect.IRON, "*", guess.basis().word(), guess.why(), state, "set:iron_basis", CHOICES));
      } else {
        some.forEach(r -> recognised.add(new Recognised(Aspect.IRON, Labs.shown(table, r), guess.basis().word(), guess.why(), state,
            "row:" + r.number() + ":iron_basis", CHOICES)));
      }
    });
  }

  private Optional<Guess> guess(RawRow row) {
    Optional<Bound> said = iron(row).filter(b -> Formulas.ironBasis(Heading.of(b.heading()).name()).isPresent()).findFirst();
    if (said.isPresent()) {
      return Optional.of(new Guess(Formulas.ironBasis(Heading.of(said.get().heading()).name()).orElseThrow(), true, "“" + said.get().heading() + "” says so"));
    }
    Optional<Double> ferrous = share(row, "FeO");
    Optional<Double> ferric = share(row, "Fe2O3");
    Optional<Double> metal = share(row, "Fe");
    if (Labs.isLong(table)) {
      return Optional.of(new Guess(IronBasis.NOT_STATED, false, "each row is one component; say whether iron is given once or in parts"));
    }
    if (ferrous.isPresent() && ferric.isPresent()) {
      boolean same = Math.abs(ferric.get() * Oxides.FEO_OF_FE2O3 / ferrous.get() - 1) < SAME;
      return Optional.of(same ? new Guess(IronBasis.FEO, false, "FeO and Fe2O3 are the same iron told twice")
          : new Guess(IronBasis.BOTH, metal.isEmpty(), metal.isEmpty() ? "both are given and differ" : "Fe beside them may be metal, or all iron once more"));
    }
    if (metal.isPresent() && (ferrous.isPresent() || ferric.isPresent())) {
      return Optional.of(beside(metal.get(), ferrous.map(f -> f / Oxides.FEO_OF_FE).orElseGet(() -> ferric.get() * Oxides.FEO_OF_FE2O3 / Oxides.FEO_OF_FE),
          ferrous.isPresent() ? IronBasis.FEO : IronBasis.FE2O3));
    }
    String only = " is the only iron given; no heading says that it is all iron";
    return ferrous.map(f -> new Guess(IronBasis.FEO, false, "FeO" + only)).or(() -> ferric.map(f -> new Guess(IronBasis.FE2O3, false, "Fe2O3" + only)))
        .or(() -> metal.map(f -> new Guess(IronBasis.FE, false, "Fe" + only)));
  }

  private static Guess beside(double metal, double inOxide, IronBasis oxide) {
    boolean same = inOxide > 0 && Math.abs(metal / inOxide - 1) < SAME;
    return same ? new Guess(oxide, false, "Fe is the iron of the oxide told once more")
        : new Guess(IronBasis.WITH_METAL, false, "Fe beside an oxide of another amount of iron may be metal");
  }

  private java.util.stream.Stream<Bound> iron(RawRow row) {
    return Labs.components(table).stream().filter(b -> List.of("FeO", "Fe2O3", "Fe").contains(b.column().id())).filter(b -> !row.cell(b.index()).isEmpty());
  }

  private Optional<Double> share(RawRow row, String symbol) {
    return iron(row).filter(b -> b.column().id().equals(symbol)).findFirst().flatMap(b -> Labs.share(table, row, b)).filter(n -> n > 0);
  }
}
