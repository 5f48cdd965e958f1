package daubline.analysis.forecast;

import daubline.base.Amount;
import daubline.engine.process.BurnInputs;
import daubline.model.Choice;
import daubline.model.Claim;
import daubline.model.EvidenceSheet;
import daubline.model.Reconstruction;
import daubline.model.Trial;
import daubline.session.Readings;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The furnaces of trials and reconstructions, for their drawing. */
public final class Shapes {

  /** Volume of a bowl-shaped pit over its cylinder (half an ellipsoid). */
  private static final double BOWL = 2.0 / 3;

  private Shapes() {
  }

  static FurnaceShape of(Trial trial, KnownValues known) {
    double inlet = metres(known, "inlet_height_above_floor");
    double height = metres(known, "furnace_height");
    double stack = metres(known, "height_above_inlet");
    Optional<EvidenceSheet> sheet = sheet(trial);
    double preserved = sheet.map(s -> claimed(s.getClaims())).orElseGet(() -> trial.getRemains() == null ? Double.NaN : claimed(trial.getRemains().getClaims()));
    String evidence = Double.isNaN(preserved) ? "" : sheet.map(EvidenceSheet::getName).orElse("remains of the trial");
    return new FurnaceShape(metres(known, "base_internal_diameter"), metres(known, "wall_thickness"), height > 0 ? height : inlet + stack,
        metres(known, "top_internal_diameter"), inlet, metres(known, "inlet_bore"), metres(known, "pit_depth"), preserved, String.valueOf(evidence));
  }

  /** The furnace of a reconstruction's choices; where alternatives stand side by side, the picked one or the first. */
  public static FurnaceShape of(Reconstruction r) {
    Optional<EvidenceSheet> sheet = sheet(r);
    double preserved = sheet.map(s -> claimed(s.getClaims())).orElse(Double.NaN);
    double inlet = chosen(r, "inlet_height_above_floor");
    double height = chosen(r, "furnace_height");
    return new FurnaceShape(chosen(r, "base_internal_diameter"), chosen(r, "wall_thickness"), height > 0 ? height : inlet + chosen(r, "height_above_inlet"),
        chosen(r, "top_internal_diameter"), inlet, chosen(r, "inlet_bore"), chosen(r, "pit_depth"), preserved,
        sheet.map(s -> String.valueOf(s.getName())).orElse(""));
  }

  private static double chosen(Reconstruction r, String variable) {
    List<Choice> choices = r.getChoices().stream().filter(c -> variable.equals(c.getVariable()) && Readings.amount(c).isNumber()).toList();
    return choices.stream().filter(Choice::isPicked).findFirst().or(() -> choices.stream().findFirst()).map(c -> Readings.amount(c).value()).orElse(Double.NaN);
  }

  /** Where the slag goes: a pit unless it was filled with what does not burn away, and a tap where there is one. */
  static BurnInputs.SlagRoom slagRoom(KnownValues known) {
    double depth = metres(known, "pit_depth");
    double diameter = known.number("pit_diameter").or(() -> known.number("base_internal_diameter")).map(Amount::value).orElse(Double.NaN);
    boolean filled = known.word("pit_fill").filter(Set.of("sand", "clay", "stones")::contains).isPresent();
    double pit = depth > 0 && diameter > 0 && !filled ? BOWL * Math.PI * diameter * diameter / 4 * depth : 0;
    boolean tapped = known.word("slag_management").filter("slag tapping"::equals).isPresent() || known.word("tap_opening").filter("yes"::equals).isPresent();
    return new BurnInputs.SlagRoom(pit, tapped);
  }

  private static double metres(KnownValues known, String variable) {
    return known.number(variable).map(Amount::value).orElse(Double.NaN);
  }

  /** The sheet that the furnace follows, where it says how high the wall stands. */
  private static Optional<EvidenceSheet> sheet(Trial trial) {
    return sheet(KnownValues.reconstruction(trial));
  }

  private static Optional<EvidenceSheet> sheet(Reconstruction reconstruction) {
    return reconstruction == null ? Optional.empty()
        : reconstruction.getSheets().stream().filter(s -> !Double.isNaN(claimed(s.getClaims()))).findFirst();
  }

  private static double claimed(List<Claim> claims) {
    return claims.stream().filter(c -> "surviving_height".equals(c.getVariable())).map(Readings::amount).filter(Amount::isNumber)
        .mapToDouble(Amount::value).filter(v -> v > 0).findFirst().orElse(Double.NaN);
  }
}
