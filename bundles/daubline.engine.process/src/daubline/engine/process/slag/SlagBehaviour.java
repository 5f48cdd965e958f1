package daubline.engine.process.slag;

import daubline.base.Finding;
import daubline.base.Units;
import daubline.engine.process.balance.Analysis;
import daubline.engine.process.balance.Oxide;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * How a slag behaves at one temperature, by every model, with the limits of each told.
 *
 * @param liquidus when it is wholly liquid
 * @param solids volume share of solids estimated at the temperature, 0 to 1
 * @param viscosity viscosity of the liquid by each model, Pa·s
 * @param effective calibrated viscosity with the solids in it, Pa·s; infinite when stiff
 * @param lowest the lowest of the models, Pa·s
 * @param highest the highest of the models, Pa·s
 * @param density density of the liquid, kg/m³
 * @param norm phases it can form
 * @param position its place in FeO–SiO2–Al2O3
 * @param findings where it leaves a model's range
 */
public record SlagBehaviour(Liquidus liquidus, double solids, Map<ViscosityModel, Double> viscosity, double effective,
    double lowest, double highest, double density, Norm norm, TernaryPosition position, List<Finding> findings) {

  /** Last liquid of aluminous bloomery slag, K; the ternary eutectic, about 1083 °C (from memory). */
  public static final double SOLIDUS = 1356;

  public SlagBehaviour {
    viscosity = Collections.unmodifiableMap(new EnumMap<>(viscosity));
    findings = List.copyOf(findings);
  }

  /** Evaluates every model for a slag with silica and iron at t in K. */
  public static SlagBehaviour of(Analysis slag, double t) {
    Liquidus liquidus = Liquidus.of(slag);
    EnumMap<ViscosityModel, Double> viscosity = new EnumMap<>(ViscosityModel.class);
    for (ViscosityModel model : ViscosityModel.values()) {
      viscosity.put(model, model.of(slag, t));
    }
    double solids = solids(liquidus, t);
    double effective = viscosity.get(ViscosityModel.CALIBRATED) * Suspension.roscoe(solids);
    return new SlagBehaviour(liquidus, solids, viscosity, effective, Collections.min(viscosity.values()),
        Collections.max(viscosity.values()), SlagDensity.of(slag, t), Norm.of(slag), TernaryPosition.of(slag),
        findings(slag, t, liquidus));
  }

  /** Solids grow evenly from the liquidus down to the solidus: an estimate of our own, no more. */
  private static double solids(Liquidus liquidus, double t) {
    double span = Math.max(30, liquidus.temperature() - SOLIDUS);
    return Math.clamp((liquidus.temperature() - t) / span, 0, 1);
  }

  private static List<Finding> findings(Analysis slag, double t, Liquidus liquidus) {
    List<Finding> findings = new ArrayList<>();
    Analysis a = slag.ironAsFeo();
    range(findings, "SiO2", a.normalised().share(Oxide.SIO2), .22, .44, "viscosity calibration");
    range(findings, "Al2O3", a.normalised().share(Oxide.AL2O3), 0, .28, "viscosity calibration");
    range(findings, "FeO", a.normalised().share(Oxide.FEO), .34, .78, "viscosity calibration");
    double others = 1 - TernaryPosition.of(slag).told();
    range(findings, "oxides besides FeO, SiO2 and Al2O3", others, 0, .15, "viscosity calibration and liquidus");
    if (t < 1473 || t > 1773) {
      findings.add(Finding.note("slag.range.temperature", "slag", "temperature " + Math.round(t - Units.ZERO_CELSIUS)
          + " °C lies outside the 1200–1500 °C of the measured melts", "read the viscosity as an order of size"));
    }
    if (t < liquidus.temperature()) {
      findings.add(Finding.note("slag.partly-solid", "slag", "below its estimated liquidus of "
          + Math.round(liquidus.temperature() - Units.ZERO_CELSIUS) + " ± " + Math.round(liquidus.sigma()) + " °C",
          "expect crystals in the slag, which thicken it"));
    }
    double total = a.total();
    if (total < .95 || total > 1.03) {
      findings.add(Finding.note("slag.total", "slag analysis", "the oxides with iron as FeO sum to "
          + Math.round(1000 * total) / 10.0 + " %", "check the analysis; it was used as it stands, scaled to 100 %"));
    }
    return findings;
  }

  private static void range(List<Finding> findings, String what, double value, double low, double high, String model) {
    if (value < low - 1e-9 || value > high + 1e-9) {
      findings.add(Finding.warning("slag.range", "slag", what + " of " + Math.round(1000 * value) / 10.0
          + " % lies outside " + Math.round(100 * low) + "–" + Math.round(100 * high) + " %, the range of the " + model,
          "treat the figure as a guess, and the spread of the models as its uncertainty"));
    }
  }
}
