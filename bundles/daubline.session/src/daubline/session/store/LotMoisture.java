package daubline.session.store;

import daubline.base.Amount;
import daubline.base.Finding;
import daubline.base.Moisture;
import daubline.base.MoistureBasis;
import daubline.model.Lot;
import daubline.model.Reading;
import daubline.model.Treatment;
import daubline.session.Readings;
import java.util.Optional;

/** Water in a lot, on the basis that the lot states; without a stated basis its number is not used. */
public final class LotMoisture {

  private static final String VARIABLE = "_moisture";

  private LotMoisture() {
  }

  /** Whether a reading says how much water is in a material. */
  public static boolean isWater(Reading reading) {
    return reading.getVariable() != null && reading.getVariable().endsWith(VARIABLE);
  }

  /** The number of the lot that says how much water is in it. */
  static Optional<Reading> reading(Lot lot) {
    return lot.getValues().stream().filter(r -> isWater(r) && Readings.amount(r).isNumber()).findFirst();
  }

  /** The water in a lot; empty when there is no number, no basis, or one that cannot be. */
  public static Optional<Moisture> of(Lot lot) {
    return reading(lot).filter(r -> Readings.amount(r).isEstimate()).flatMap(r -> MoistureBasis.find(lot.getMoistureBasis()).filter(b -> complaint(r, b).isEmpty())
        .map(b -> Moisture.of(Readings.amount(r).value(), Readings.amount(r).sigma(), b)));
  }

  /**
   * The amount of a reading as the catalogue defines its variable: water of a lot on the wet basis, everything else as it
   * stands.
   *
   * @return empty when it is water of a lot that states no basis, or only a bound of it
   */
  public static Optional<Amount> amount(Reading reading) {
    Amount amount = Readings.amount(reading);
    if (!(reading.eContainer() instanceof Lot lot) || !isWater(reading) || !amount.isNumber()) {
      return Optional.of(amount);
    }
    Optional<MoistureBasis> basis = MoistureBasis.find(lot.getMoistureBasis());
    return basis.filter(b -> amount.isEstimate() && complaint(reading, b).isEmpty())
        .map(b -> b == MoistureBasis.WET ? amount : Moisture.of(amount.value(), amount.sigma(), b).on(MoistureBasis.WET));
  }

  /** What is wrong with the water of a lot. */
  public static Optional<Finding> finding(Lot lot) {
    Optional<Reading> reading = reading(lot);
    if (reading.isEmpty()) {
      return Optional.empty();
    }
    if (!Readings.amount(reading.get()).isEstimate()) {
      return Optional.of(Finding.note("moisture.bound", "", "only a bound of its water is known; it is not used as a value", "weigh a sample before and after drying"));
    }
    Optional<MoistureBasis> basis = MoistureBasis.find(lot.getMoistureBasis());
    return basis.isEmpty() ? Optional.of(Finding.warning("moisture.basis", "", "water is given without saying of which mass it is a share; it is not used",
        "say on the page Steps whether it is on the wet basis (water ÷ moist mass) or the dry basis (water ÷ dry mass)")) : complaint(reading.get(), basis.get());
  }

  private static Optional<Finding> complaint(Reading reading, MoistureBasis basis) {
    double share = Readings.amount(reading).value();
    return share >= 0 && (share < 1 || basis == MoistureBasis.DRY) && Double.isFinite(share) ? Optional.empty() : Optional.of(Finding.error("moisture.share", "",
        "water of " + daubline.base.Printed.number(100 * share) + " % on the " + basis.word() + " basis cannot be",
        "on the wet basis it is 0 to below 100 %; more is possible on the dry basis only"));
  }

  /**
   * The mass of which the water of a lot was a share: before it was first dried or roasted when it was, otherwise what it
   * holds now.
   */
  public static Optional<Amount> moistMass(Lot lot) {
    Optional<Treatment> heated = lot.getTreatments().stream().filter(t -> LotStep.DRY.is(t) || LotStep.ROAST.is(t)).findFirst();
    return heated.isEmpty() ? LotMass.held(lot)
        : heated.filter(t -> t.getMassIn() != null).map(t -> Amount.plusMinus(t.getMassIn(), LotMass.sigma(t, t.getMassIn())));
  }

  /** The dry mass in it. */
  public static Optional<Amount> dryMass(Lot lot) {
    return of(lot).flatMap(water -> moistMass(lot).map(water::dryMass));
  }
}
