package daubline.engine.process.slag;

import daubline.engine.process.balance.Analysis;
import daubline.engine.process.balance.Oxide;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * Phases that a slag of this composition can form if every step of crystallisation goes to its end: a norm, not a look
 * through the microscope. Order: alkalis and lime with alumina to glass formers, remaining lime to kirschsteinite,
 * remaining alumina to hercynite, silica with iron, manganese and magnesium to olivine, the rest wüstite or silica.
 *
 * <p>Source: bookkeeping in the manner of the CIPW norm of petrology; the phases are those usually reported of bloomery
 * slag (common practice, no source).
 *
 * @param shares mass share of each phase, sum one
 */
public record Norm(Map<Phase, Double> shares) {

  /** A phase of the norm. */
  public enum Phase {
    /** FeO. */
    WUSTITE("wüstite"),
    /** (Fe,Mn,Mg)2SiO4. */
    OLIVINE("fayalitic olivine"),
    /** CaFeSiO4. */
    KIRSCHSTEINITE("kirschsteinite"),
    /** FeAl2O4. */
    HERCYNITE("hercynite"),
    /** Leucite, nepheline and anorthite, usually seen as glass. */
    GLASS("glass or feldspathoid"),
    /** Silica left over, dissolved in glass. */
    SILICA("excess silica, in glass"),
    /** Titania and phosphate, not assigned. */
    REST("titania and phosphate, not assigned");

    private final String label;

    Phase(String label) {
      this.label = label;
    }

    /** The name to print. */
    public String label() {
      return label;
    }
  }

  public Norm {
    shares = Collections.unmodifiableMap(new EnumMap<>(shares));
  }

  /** The norm of a slag; an empty analysis gives an empty norm. */
  public static Norm of(Analysis slag) {
    return new Builder(slag.ironAsFeo()).norm();
  }

  /** Mass share of a phase. */
  public double share(Phase phase) {
    return shares.getOrDefault(phase, 0.0);
  }

  /** Moles left while phases take theirs, and the masses taken. */
  private static final class Builder {
    private final EnumMap<Oxide, Double> left = new EnumMap<>(Oxide.class);
    private final EnumMap<Phase, Double> mass = new EnumMap<>(Phase.class);

    Builder(Analysis slag) {
      slag.shares().forEach((oxide, share) -> left.put(oxide, share / oxide.molarMass()));
    }

    Norm norm() {
      feldspathoid(Oxide.K2O, 4);
      feldspathoid(Oxide.NA2O, 2);
      feldspathoid(Oxide.CAO, 2);
      double kirschsteinite = least(Oxide.CAO, Oxide.FEO, Oxide.SIO2);
      take(Phase.KIRSCHSTEINITE, kirschsteinite, Oxide.CAO, Oxide.FEO, Oxide.SIO2);
      take(Phase.HERCYNITE, least(Oxide.AL2O3, Oxide.FEO), Oxide.AL2O3, Oxide.FEO);
      olivine();
      rest(Phase.WUSTITE, Oxide.FEO, Oxide.MNO, Oxide.MGO);
      rest(Phase.SILICA, Oxide.SIO2);
      rest(Phase.GLASS, Oxide.K2O, Oxide.NA2O, Oxide.CAO, Oxide.AL2O3);
      rest(Phase.REST, Oxide.TIO2, Oxide.P2O5);
      double total = mass.values().stream().mapToDouble(Double::doubleValue).sum();
      mass.replaceAll((phase, m) -> total > 0 ? m / total : 0);
      return new Norm(mass);
    }

    private double moles(Oxide oxide) {
      return left.getOrDefault(oxide, 0.0);
    }

    private double least(Oxide... oxides) {
      double least = Double.POSITIVE_INFINITY;
      for (Oxide oxide : oxides) {
        least = Math.min(least, moles(oxide));
      }
      return least;
    }

    private void take(Phase phase, double moles, Oxide... oxides) {
      for (Oxide oxide : oxides) {
        left.put(oxide, moles(oxide) - moles);
        mass.merge(phase, moles * oxide.molarMass(), Double::sum);
      }
    }

    private void feldspathoid(Oxide base, int silica) {
      double moles = Math.min(least(base, Oxide.AL2O3), moles(Oxide.SIO2) / silica);
      take(Phase.GLASS, moles, base, Oxide.AL2O3);
      take(Phase.GLASS, moles * silica, Oxide.SIO2);
    }

    private void olivine() {
      double divalent = moles(Oxide.MGO) + moles(Oxide.MNO) + moles(Oxide.FEO);
      double silica = Math.min(moles(Oxide.SIO2), divalent / 2);
      double need = 2 * silica;
      for (Oxide oxide : new Oxide[] {Oxide.MGO, Oxide.MNO, Oxide.FEO}) {
        double used = Math.min(need, moles(oxide));
        take(Phase.OLIVINE, used, oxide);
        need -= used;
      }
      take(Phase.OLIVINE, silica, Oxide.SIO2);
    }

    private void rest(Phase phase, Oxide... oxides) {
      for (Oxide oxide : oxides) {
        take(phase, Math.max(0, moles(oxide)), oxide);
      }
    }
  }
}
