package daubline.criteria;

import daubline.base.Amount;
import daubline.base.Source;
import daubline.base.ValueKind;
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

/** What two sides say about something that is present or absent, compared. */
final class YesNoPair {

  static final Setting MISSED = Setting.number("missed", "Missed though present", 2, Shown.PERCENT,
      "chance that a complete search misses it; a partial search misses it more often, by the share not searched",
      Source.commonPractice("a careful search of the whole feature rarely misses it"));
  static final Setting MISTAKEN = Setting.number("mistaken", "Taken for it by mistake", 2, Shown.PERCENT,
      "chance that something else was taken for it", Source.commonPractice("specialists rarely mistake it"));

  private YesNoPair() {
  }

  static Assessment assess(String variable, SheetData evidence, SheetData found, SettingValues settings) {
    Claims asked = Claims.of(evidence.about(variable), Side.EVIDENCE, a -> a.kind().isYesNo());
    Claims seen = Claims.of(found.about(variable), Side.TRIAL, a -> a.kind().isYesNo());
    if (asked.isEmpty() || seen.isEmpty()) {
      return Words.missing(asked, seen, YesNoPair::printed);
    }
    List<List<Kernel>> kernels = new ArrayList<>();
    for (Statement claim : asked.usable()) {
      double[] odds = odds(claim, evidence.samplingFraction(), settings);
      kernels.add(seen.usable().stream().<Kernel>map(s -> new WordKernel(odds, certain(s.amount()), WordKernel.distinct(2))).toList());
    }
    return Assessment.tested(AlternativesKernel.of(kernels), () -> Words.explain(reason(asked, seen), asked, seen, YesNoPair::printed));
  }

  /** Probability of present and of absent, given what was seen and how much was searched, both being alike before. */
  private static double[] odds(Statement claim, double ofSheet, SettingValues settings) {
    double searched = Double.isNaN(claim.samplingFraction()) ? Double.isNaN(ofSheet) ? 1 : ofSheet : claim.samplingFraction();
    double missed = 1 - searched * (1 - Math.min(1, settings.number(MISSED.key())));
    double mistaken = Math.min(1, settings.number(MISTAKEN.key()));
    boolean present = isPresent(claim.amount());
    double ifPresent = present ? 1 - missed : missed;
    double ifAbsent = present ? mistaken : 1 - mistaken;
    double sum = ifPresent + ifAbsent;
    return sum > 0 ? new double[] {ifPresent / sum, ifAbsent / sum} : new double[] {0.5, 0.5};
  }

  private static boolean isPresent(Amount amount) {
    return amount.kind() == ValueKind.PRESENT;
  }

  private static double[] certain(Amount amount) {
    return isPresent(amount) ? new double[] {1, 0} : new double[] {0, 1};
  }

  private static String reason(Claims asked, Claims seen) {
    return "found " + words(seen) + " in the trial, " + words(asked) + " in the evidence"
        + (asked.usable().size() > 1 ? "; the claims differ and none is picked, so each was tried" : "");
  }

  private static String words(Claims claims) {
    return String.join(" and ", claims.usable().stream().map(s -> printed(s.amount())).toList());
  }

  private static String printed(Amount amount) {
    return amount.kind().word();
  }
}
