package daubline.criteria;

import daubline.base.Amount;
import daubline.base.Printed;
import daubline.base.Trail;
import daubline.engine.inference.Assessment;
import daubline.engine.inference.Explanation;
import daubline.engine.inference.kernel.Kernel;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The sentences that criteria share. */
final class Words {

  private Words() {
  }

  /** Not tested because a side has nothing to compare. */
  static Assessment missing(Claims evidence, Claims found, Function<Amount, String> printed) {
    String reason = evidence.isEmpty() && found.isEmpty() ? evidence.missing() + "; " + found.missing()
        : evidence.isEmpty() ? evidence.missing() : found.missing();
    return evidence.isRecoverable() ? Assessment.notTested(() -> explain(reason, evidence, found, printed))
        : Assessment.notRecoverable(() -> explain(reason, evidence, found, printed));
  }

  static Explanation explain(String reason, Claims evidence, Claims found, Function<Amount, String> printed) {
    String asked = list(evidence, printed);
    String seen = list(found, printed);
    return new Explanation(reason, asked, seen, Trail.of("Compared", "", evidence.trail(asked), found.trail(seen)));
  }

  private static String list(Claims claims, Function<Amount, String> printed) {
    if (claims.all().isEmpty()) {
      return "–";
    }
    List<String> texts = claims.isEmpty() ? claims.all().stream().map(s -> s.amount().kind().word()).distinct().toList()
        : claims.usable().stream().map(s -> printed.apply(s.amount())).toList();
    return String.join(" | ", texts);
  }

  /** How far the two sides are apart, claim by claim when they contradict each other. */
  static String difference(List<List<Kernel>> kernels, Claims evidence, Claims found, Function<Amount, String> printed) {
    List<Kernel> all = kernels.stream().flatMap(List::stream).toList();
    String against = list(found, printed) + " as found against " + list(evidence, printed) + ": ";
    if (all.size() == 1) {
      return against + apart(all.get(0).sigmas());
    }
    List<String> each = new ArrayList<>();
    all.forEach(k -> each.add(Printed.agreement(Math.exp(k.log()))));
    return against + "the claims differ and none is picked, so each was tried; agreement "
        + each.stream().collect(Collectors.joining(", ")) + " in this order";
  }

  static String apart(double sigmas) {
    if (sigmas == 0) {
      return "no difference that the evidence does not allow";
    }
    return Printed.number(Math.abs(sigmas), 2) + " combined standard uncertainties " + (sigmas > 0 ? "above" : "below");
  }
}
