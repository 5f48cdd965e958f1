package daubline.charts;

import daubline.analysis.StudyResults;
import daubline.analysis.TrialData;
import daubline.base.Amount;
import daubline.base.Material;
import daubline.base.Trail;
import daubline.base.ValueKind;
import daubline.engine.inference.AnalysisData;
import daubline.engine.inference.SheetData;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * The slags of a study as compositions of the same parts, all iron as FeO. Parts that fewer than four in five slags state
 * are left out, then slags that lack one of the rest.
 *
 * @param parts the parts in a fixed order
 * @param slags the slags that state all of them
 * @param leftOut slags that do not
 * @param below values below their limit of detection, which stand as 0.65 of the limit
 */
record SlagParts(List<String> parts, List<Slag> slags, int leftOut, int below) {

  private static final List<String> ORDER = List.of("FeO", "SiO2", "Al2O3", "CaO", "MgO", "K2O", "Na2O", "P2O5", "MnO", "TiO2", "BaO", "V2O5");
  private static final double STATED = 0.8;
  /** Martín-Fernández, Barceló-Vidal and Pawlowsky-Glahn 2003, Mathematical Geology 35, 253–278. */
  private static final double OF_LIMIT = 0.65;
  /** FeO in one part of Fe2O3 and of Fe, by molar masses 71.844, 159.687 and 55.845 g/mol (CIAAW 2021). */
  private static final double FROM_FE2O3 = 2 * 71.844 / 159.687;
  private static final double FROM_FE = 71.844 / 55.845;

  /** One slag: of which trial or sheet, and whether it was excavated. */
  record Slag(String of, boolean excavated, double[] shares, Trail from) {
  }

  private record Stated(String of, boolean excavated, AnalysisData analysis) {

    Map<String, Amount> components() {
      return analysis.components();
    }

    OptionalDouble share(String part) {
      return part.equals("FeO") ? iron() : positive(components().get(part));
    }

    private OptionalDouble iron() {
      double oxides = value("FeO") + value("Fe2O3") * FROM_FE2O3;
      double iron = oxides > 0 ? oxides : value("Fe") * FROM_FE;
      return iron > 0 ? OptionalDouble.of(iron) : OptionalDouble.empty();
    }

    private double value(String symbol) {
      return positive(components().get(symbol)).orElse(0);
    }

    private static OptionalDouble positive(Amount amount) {
      if (amount == null || !amount.isNumber() || !(amount.value() > 0)) {
        return OptionalDouble.empty();
      }
      return OptionalDouble.of(amount.kind() == ValueKind.BELOW_LIMIT ? amount.value() * OF_LIMIT : amount.value());
    }

    boolean isBelow(String part) {
      return components().containsKey(part) && components().get(part).kind() == ValueKind.BELOW_LIMIT;
    }
  }

  static SlagParts of(StudyResults results) {
    List<Stated> all = new ArrayList<>();
    results.snapshot().sheets().forEach(e -> slags(e.sheet()).forEach(a -> all.add(new Stated(e.sheet().name(), true, a))));
    for (TrialData trial : results.snapshot().trials()) {
      slags(trial.found()).forEach(a -> all.add(new Stated(trial.name(), false, a)));
    }
    List<String> parts = ORDER.stream().filter(p -> all.stream().filter(s -> s.share(p).isPresent()).count() >= Math.max(1, STATED * all.size())).toList();
    List<Stated> whole = all.stream().filter(s -> parts.stream().allMatch(p -> s.share(p).isPresent())).toList();
    int below = (int) whole.stream().flatMap(s -> parts.stream().filter(s::isBelow)).count();
    List<Slag> slags = whole.stream().map(s -> new Slag(s.of(), s.excavated(), parts.stream().mapToDouble(p -> s.share(p).orElseThrow()).toArray(), s.analysis().trail())).toList();
    return new SlagParts(parts, slags, all.size() - whole.size(), below);
  }

  private static Stream<AnalysisData> slags(SheetData sheet) {
    return sheet.analyses().stream().filter(a -> a.material() == Material.SLAG);
  }
}
