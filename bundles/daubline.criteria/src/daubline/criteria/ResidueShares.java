package daubline.criteria;

import daubline.base.Printed;
import daubline.base.Source;
import daubline.base.Trail;
import daubline.engine.inference.Assessment;
import daubline.engine.inference.Explanation;
import daubline.engine.inference.Group;
import daubline.engine.inference.Setting;
import daubline.engine.inference.SettingValues;
import daubline.engine.inference.SheetData;
import daubline.engine.inference.SheetGroup;
import daubline.engine.inference.kernel.Kernel;
import daubline.engine.inference.kernel.SharesKernel;
import daubline.engine.stats.ShareDistance;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Shares of the residue classes by mass. Classes that either side could not weigh are left out on both; one that a side
 * does not list counts as none there.
 */
public final class ResidueShares extends CardCriterion {

  private static final String FRAGMENTS = "fragments";

  /** Described by its card. */
  public ResidueShares() {
    super(new Card("residue_shares", "Residue classes by mass", Group.RESIDUES,
        "1 when the classes have equal shares; exp(−4nH²/(K−1)) with the Hellinger distance H of K classes and n independent fragments.",
        Literature.RECORDING, Source.fromMemory("Hellinger 1909; Bhattacharyya 1943")), List.of(), List.of(
            Setting.number(FRAGMENTS, "Independent fragments", 20, Shown.ONE,
                "number of independent fragments or batches of both sides together, 1/(1/n evidence + 1/n trial); never kilograms",
                Source.commonPractice("assumed; enter your own count"))));
  }

  @Override
  public Assessment assess(SheetData evidence, SheetData found, SettingValues settings) {
    ResidueTable asked = settings.once(Side.EVIDENCE, evidence, ResidueTable::of);
    ResidueTable seen = settings.once(Side.TRIAL, found, ResidueTable::of);
    Set<String> classes = new TreeSet<>(asked.masses().keySet());
    classes.addAll(seen.masses().keySet());
    classes.removeAll(asked.unknown());
    classes.removeAll(seen.unknown());
    String missing = missing(asked, seen, classes);
    if (!missing.isEmpty()) {
      return Assessment.notTested(() -> explain(missing, asked, seen, classes));
    }
    Kernel kernel = new SharesKernel(classes.stream().mapToDouble(asked::mass).toArray(), classes.stream().mapToDouble(seen::mass).toArray(),
        classes.stream().mapToDouble(seen::relative).toArray(), Math.max(1e-9, Math.min(settings.number(FRAGMENTS), alike(evidence, classes))));
    return Assessment.tested(kernel, () -> explain("shares of " + classes.size() + " classes compared, "
        + Words.apart(kernel.sigmas()).replace(" above", " apart"), asked, seen, classes));
  }

  /**
   * How many fragments the features of a group are worth: the number at which their distances from the group would be those
   * of chance, 8·n·H² equal to K−1 on average (the mean of chi-squared), less for one more of few features. Infinite for
   * a sheet of its own.
   */
  private static double alike(SheetData evidence, Set<String> classes) {
    List<double[]> features = evidence.features().stream().map(ResidueTable::of).map(t -> classes.stream().mapToDouble(t::mass).toArray())
        .filter(m -> Arrays.stream(m).sum() > 0).toList();
    if (features.size() < 2) {
      return Double.POSITIVE_INFINITY;
    }
    double[] mean = new double[classes.size()];
    features.forEach(f -> Arrays.setAll(mean, k -> mean[k] + f[k] / Arrays.stream(f).sum() / features.size()));
    double squares = features.stream().mapToDouble(f -> 1 - ShareDistance.overlap(mean, f)).sum() / (features.size() - 1);
    return squares <= 0 ? Double.POSITIVE_INFINITY : (classes.size() - 1) / (8 * squares * SheetGroup.oneMore(features.size()));
  }

  private static String missing(ResidueTable asked, ResidueTable seen, Set<String> classes) {
    boolean noEvidence = classes.stream().mapToDouble(asked::mass).sum() <= 0;
    boolean noTrial = classes.stream().mapToDouble(seen::mass).sum() <= 0;
    if (noEvidence || noTrial) {
      return (noEvidence ? Side.EVIDENCE : Side.TRIAL).word() + " gives no weighed residue class that can be compared";
    }
    return classes.size() < 2 ? "only one residue class was weighed on both sides" : "";
  }

  private static Explanation explain(String reason, ResidueTable asked, ResidueTable seen, Set<String> classes) {
    String left = shares(asked, classes);
    String right = shares(seen, classes);
    return new Explanation(reason, left, right, Trail.of("Compared", "",
        new Trail("Evidence", left, "", asked.trails()), new Trail("As found", right, "", seen.trails())));
  }

  private static String shares(ResidueTable table, Set<String> classes) {
    double sum = classes.stream().mapToDouble(table::mass).sum();
    return sum <= 0 ? "–" : classes.stream().filter(c -> table.mass(c) > 0)
        .map(c -> table.names().get(c) + " " + Printed.fixed(100 * table.mass(c) / sum, 0) + "\u00A0%").collect(Collectors.joining(", "));
  }
}
