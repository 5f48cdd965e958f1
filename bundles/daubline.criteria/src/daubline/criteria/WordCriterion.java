package daubline.criteria;

import daubline.base.Amount;
import daubline.base.Probabilities;
import daubline.base.Source;
import daubline.base.ValueKind;
import daubline.base.Variable;
import daubline.base.Variables;
import daubline.engine.inference.Assessment;
import daubline.engine.inference.Setting;
import daubline.engine.inference.SettingValues;
import daubline.engine.inference.SheetData;
import daubline.engine.inference.Statement;
import daubline.engine.inference.kernel.AlternativesKernel;
import daubline.engine.inference.kernel.Kernel;
import daubline.engine.inference.kernel.WordKernel;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/** A criterion on a word of a list, or words with probabilities; words in an order agree in part with their neighbours. */
abstract class WordCriterion extends CardCriterion {

  static final String MISREAD = "misread";
  static final String REACH = "reach";

  private final String variable;

  WordCriterion(Card card, String variable) {
    super(card, List.of(variable), List.of(
        Setting.number(MISREAD, "Read wrongly", 4, Shown.PERCENT, "chance that the reader took another word of the list for it, any alike",
            Source.commonPractice("readers of remains seldom differ about such words")),
        Setting.number(REACH, "Reach of neighbours", 1, Shown.ONE,
            "steps in an ordered list over which likeness falls to 0.37; without effect where the list has no order",
            Source.commonPractice("neighbouring grades are often told apart only by habit"))));
    this.variable = variable;
  }

  @Override
  public final Assessment assess(SheetData evidence, SheetData found, SettingValues settings) {
    Claims asked = Claims.of(evidence.about(variable), Side.EVIDENCE, WordCriterion::isWord);
    Claims seen = Claims.of(found.about(variable), Side.TRIAL, WordCriterion::isWord);
    if (asked.isEmpty() || seen.isEmpty()) {
      return Words.missing(asked, seen, Amount::category);
    }
    List<String> words = words(asked, seen);
    double[][] alike = isOrdered() ? WordKernel.ordered(words.size(), Math.max(1e-9, settings.number(REACH))) : WordKernel.distinct(words.size());
    List<List<Kernel>> kernels = new ArrayList<>();
    for (Statement claim : asked.usable()) {
      double[] pi = probabilities(claim.amount(), words, Math.min(1, settings.number(MISREAD)));
      kernels.add(seen.usable().stream().<Kernel>map(s -> new WordKernel(pi, probabilities(s.amount(), words, 0), alike)).toList());
    }
    return Assessment.tested(AlternativesKernel.of(kernels), () -> Words.explain(reason(asked, seen), asked, seen, Amount::category));
  }

  private static boolean isWord(Amount amount) {
    return amount.kind() == ValueKind.CATEGORY;
  }

  private boolean isOrdered() {
    return Variables.standard().get(variable).ordered();
  }

  /** The words of the catalogue, then words of the user's own in alphabetical order. */
  private List<String> words(Claims asked, Claims seen) {
    Variable definition = Variables.standard().get(variable);
    TreeSet<String> more = new TreeSet<>();
    asked.usable().forEach(s -> more.addAll(Probabilities.of(s.amount()).keySet()));
    seen.usable().forEach(s -> more.addAll(Probabilities.of(s.amount()).keySet()));
    definition.words().forEach(more::remove);
    List<String> words = new ArrayList<>(definition.words());
    words.addAll(more);
    return words;
  }

  private static double[] probabilities(Amount amount, List<String> words, double misread) {
    Map<String, Double> stated = Probabilities.of(amount);
    double[] p = new double[words.size()];
    for (int k = 0; k < p.length; k++) {
      double own = stated.getOrDefault(words.get(k), 0.0);
      p[k] = p.length < 2 ? own : (1 - misread) * own + misread * (1 - own) / (p.length - 1);
    }
    return p;
  }

  private static String reason(Claims asked, Claims seen) {
    return "found " + text(seen) + " in the trial, " + text(asked) + " in the evidence"
        + (asked.usable().size() > 1 ? "; the claims differ and none is picked, so each was tried" : "");
  }

  private static String text(Claims claims) {
    return String.join(" or ", claims.usable().stream().map(s -> s.amount().category()).toList());
  }
}
