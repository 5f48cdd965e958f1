package daubline.session.store;

import daubline.model.Lot;
import daubline.model.Treatment;
import java.util.List;
import java.util.Optional;

/** The steps that a lot may go through by name; any other text is a step too. */
public enum LotStep {
  /** It arrived and was weighed. */
  DELIVER,
  /** Water was let go. */
  DRY,
  /** Roasted in a heap or hearth. */
  ROAST,
  /** Broken down. */
  CRUSH,
  /** Parted by mesh; the fines are kept as an output. */
  SIEVE,
  /** Parted into lots. */
  SPLIT,
  /** Put together with other lots. */
  MERGE,
  /** Mixed by a recipe. */
  MIX,
  /** Left to stand. */
  REST;

  /** The word that studies keep. */
  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }

  /** Whether a treatment is this step. */
  public boolean is(Treatment treatment) {
    return treatment.getStep() != null && treatment.getStep().strip().equalsIgnoreCase(word());
  }

  /**
   * Whether a treatment took mass out of its lot and put it into others. The first step of a lot made of others says what
   * the lot got, not what it gave.
   */
  static boolean isGiving(Lot lot, Treatment treatment) {
    return (SPLIT.is(treatment) || MERGE.is(treatment)) && !(isMade(lot) && lot.getTreatments().indexOf(treatment) == 0);
  }

  static boolean isMade(Lot lot) {
    return !lot.getFrom().isEmpty();
  }

  static Optional<Treatment> first(Lot lot) {
    return lot.getTreatments().stream().findFirst();
  }

  /** The steps by which a lot gave mass to others. */
  static List<Treatment> giving(Lot lot) {
    return lot.getTreatments().stream().filter(t -> isGiving(lot, t)).toList();
  }
}
