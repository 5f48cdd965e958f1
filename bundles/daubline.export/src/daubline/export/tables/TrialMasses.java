package daubline.export.tables;

import daubline.analysis.TrialData;
import daubline.analysis.record.PieceData;
import daubline.analysis.record.TrialRecord;
import daubline.base.Amount;
import daubline.base.Material;
import daubline.base.Stage;
import daubline.export.Cell;
import java.util.List;

/**
 * What went into one trial and what came out, weighed.
 *
 * @param ore charged
 * @param charcoal charged
 * @param bloom as it came out
 */
public record TrialMasses(Mass ore, Mass charcoal, Mass bloom) {

  /** Nothing is known. */
  public static final TrialMasses UNKNOWN = new TrialMasses(new Mass(Double.NaN, 0), new Mass(Double.NaN, 0), new Mass(Double.NaN, 0));

  /** A mass in kilograms with its standard uncertainty; NaN when not known. */
  public record Mass(double value, double sigma) {

    static Mass of(Amount amount) {
      return amount.isEstimate() ? new Mass(amount.value(), Values.sigma(amount)) : new Mass(Double.NaN, 0);
    }

    /** Whether it is known. */
    public boolean isKnown() {
      return !Double.isNaN(value);
    }

    Cell cell() {
      return Cell.plusMinus(value, sigma);
    }

    /** The ratio of two independent masses (JCGM 100:2008, 5.1.6). */
    Cell over(Mass other, double scale) {
      if (!isKnown() || !(other.value > 0)) {
        return Cell.number(Double.NaN);
      }
      double ratio = value / other.value;
      double relative = value > 0 ? Math.hypot(sigma / value, other.sigma / other.value) : 0;
      return Cell.plusMinus(ratio * scale, ratio * relative * scale);
    }
  }

  /** The masses of a trial. */
  public static TrialMasses of(TrialData trial, TrialRecord record) {
    return new TrialMasses(charged(trial, record, "ore_total", Material.ORE), charged(trial, record, "charcoal_total", Material.CHARCOAL), bloom(trial, record));
  }

  private static Mass charged(TrialData trial, TrialRecord record, String variable, Material material) {
    Charges charges = Charges.of(record);
    Amount stated = Values.number(trial.at(Stage.AS_FIRED, variable));
    return stated.isNumber() || charges.mass(material) <= 0 ? Mass.of(stated) : new Mass(charges.mass(material), charges.sigma(material));
  }

  private static Mass bloom(TrialData trial, TrialRecord record) {
    List<Amount> masses = record.pieces().stream().filter(p -> p.depth() == 0).map(p -> mass(p, "bloom_mass")).filter(Amount::isEstimate).toList();
    return masses.isEmpty() ? Mass.of(Values.number(trial.at(Stage.AS_FIRED, "bloom_mass")))
        : new Mass(masses.stream().mapToDouble(Amount::value).sum(), Math.sqrt(masses.stream().mapToDouble(a -> Math.pow(Values.sigma(a), 2)).sum()));
  }

  static Amount mass(PieceData piece, String variable) {
    return Values.number(piece.values().getOrDefault(variable, List.of()));
  }
}
