package daubline.criteria;

import daubline.base.Source;
import daubline.base.Trail;
import daubline.engine.inference.Assessment;
import daubline.engine.inference.ClassMass;
import daubline.engine.inference.Explanation;
import daubline.engine.inference.Group;
import daubline.engine.inference.SettingValues;
import daubline.engine.inference.SheetData;
import daubline.engine.inference.kernel.CountsKernel;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Numbers of pieces by residue class, over the classes that both sides counted. */
public final class ResidueCounts extends CardCriterion {

  /** Described by its card. */
  public ResidueCounts() {
    super(new Card("residue_counts", "Residue classes by number of pieces", Group.RESIDUES,
        "Probability of the trial's counts given the evidence's, over that of the most probable counts of the same number.",
        Literature.RECORDING, Source.derived("Dirichlet-multinomial distribution with a prior of one half for each class")),
        List.of(), List.of());
  }

  @Override
  public Assessment assess(SheetData evidence, SheetData found, SettingValues settings) {
    Map<String, Integer> asked = expected(evidence);
    Map<String, Integer> seen = counts(found);
    List<String> classes = asked.keySet().stream().filter(seen::containsKey).toList();
    int sumAsked = classes.stream().mapToInt(asked::get).sum();
    int sumSeen = classes.stream().mapToInt(seen::get).sum();
    if (classes.size() < 2 || sumAsked == 0 || sumSeen == 0) {
      String why = asked.isEmpty() ? Side.EVIDENCE.word() + " gives no number of pieces" : seen.isEmpty()
          ? Side.TRIAL.word() + " gives no number of pieces" : "fewer than two classes were counted on both sides";
      return Assessment.notTested(() -> explain(why, evidence, found, List.of()));
    }
    CountsKernel kernel = new CountsKernel(classes.stream().mapToInt(asked::get).toArray(), classes.stream().mapToInt(seen::get).toArray());
    return Assessment.tested(kernel, () -> explain(sumSeen + " pieces of " + classes.size() + " classes as found against " + sumAsked, evidence,
        found, classes));
  }

  /** The pieces of the sheet, or of a group the mean of its features that counted a class, so that many features do not seem one large heap. */
  private static Map<String, Integer> expected(SheetData evidence) {
    Map<String, Integer> counts = counts(evidence);
    counts.replaceAll((c, n) -> {
      long counted = evidence.features().stream().filter(f -> counts(f).containsKey(c)).count();
      return counted < 2 ? n : (int) Math.round((double) n / counted);
    });
    return counts;
  }

  private static Map<String, Integer> counts(SheetData sheet) {
    return sheet.residues().stream().filter(r -> r.pieces() >= 0)
        .collect(Collectors.toMap(ClassMass::residueClass, ClassMass::pieces, Integer::sum, TreeMap::new));
  }

  private static Explanation explain(String reason, SheetData evidence, SheetData found, List<String> classes) {
    String left = printed(counts(evidence), classes);
    String right = printed(counts(found), classes);
    return new Explanation(reason, left, right, Trail.of("Compared", "",
        new Trail("Evidence", left, "", evidence.residues().stream().map(ClassMass::trail).toList()),
        new Trail("As found", right, "", found.residues().stream().map(ClassMass::trail).toList())));
  }

  private static String printed(Map<String, Integer> counts, List<String> classes) {
    return classes.isEmpty() ? "–" : classes.stream().map(c -> c + " " + counts.get(c)).collect(Collectors.joining(", "));
  }
}
