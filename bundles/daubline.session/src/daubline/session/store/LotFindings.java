package daubline.session.store;

import daubline.base.Amount;
import daubline.base.Finding;
import daubline.base.Printed;
import daubline.model.Lot;
import daubline.model.SizeBand;
import daubline.model.Study;
import daubline.model.Treatment;
import daubline.session.Readings;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** What does not add up in the store. Masses differ when they are further apart than two standard uncertainties. */
public final class LotFindings {

  private static final double TWO_SIGMA = 2;

  private LotFindings() {
  }

  /** A step that gave more than it took, or whose loss does not fit; a sieving whose bands do not make the whole. */
  public static Optional<Finding> of(Treatment step) {
    Optional<Finding> impossible = negative(step);
    return impossible.isPresent() ? impossible : balance(step).or(() -> bands(step));
  }

  private static Optional<Finding> negative(Treatment step) {
    for (Double mass : new Double[] {step.getMassIn(), step.getMassOut(), step.getLost(), step.getSigma()}) {
      if (mass != null && mass < 0) {
        return Optional.of(Finding.error("mass.negative", "", "a mass of " + kg(mass) + " cannot be", "weigh again"));
      }
    }
    return Optional.empty();
  }

  private static double doubt(Treatment step) {
    return TWO_SIGMA * LotMass.sigma(step, step.getMassIn());
  }

  private static Optional<Finding> balance(Treatment step) {
    if (step.getMassIn() == null || step.getMassOut() == null) {
      return Optional.empty();
    }
    boolean stated = step.getLost() != null;
    double difference = step.getMassOut() + (stated ? step.getLost() : 0) - step.getMassIn();
    boolean parted = LotStep.SPLIT.is(step) || LotStep.MERGE.is(step);
    boolean wrong = difference > doubt(step) || stated && !parted && Math.abs(difference) > doubt(step);
    return wrong ? Optional.of(Finding.warning("mass.treatment", "", "took " + kg(step.getMassIn()) + ", gave " + kg(step.getMassOut())
        + (stated ? " and lost " + kg(step.getLost()) : ""), "weigh again, or state the loss and the uncertainty of the scale")) : Optional.empty();
  }

  private static Optional<Finding> bands(Treatment step) {
    List<Amount> masses = step.getBands().stream().map(Readings::amount).filter(Amount::isNumber).toList();
    if (masses.isEmpty() || step.getMassIn() == null || masses.size() < step.getBands().size()) {
      return Optional.empty();
    }
    Amount sum = LotMass.sum(masses);
    double doubt = TWO_SIGMA * Math.hypot(LotMass.sigma(step, step.getMassIn()), sum.sigmaOr(0));
    double missing = step.getMassIn() - sum.value();
    return missing < -doubt || missing > doubt ? Optional.of(Finding.warning("mass.bands", "", "the size bands add up to " + kg(sum.value()) + ", "
        + kg(step.getMassIn()) + " went onto the sieve", missing > 0 ? "weigh the fines too and keep them as a band of their own" : "weigh the bands again"))
        : Optional.empty();
  }

  /** What a sieve band and its meshes say against each other. */
  public static Optional<Finding> of(SizeBand band) {
    boolean turned = band.getMeshFrom() != null && band.getMeshTo() != null && band.getMeshFrom() >= band.getMeshTo();
    return turned ? Optional.of(Finding.warning("band.mesh", "", "it stays on the wider mesh and passes the narrower", "give the mesh it stays on first")) : Optional.empty();
  }

  /** What does not add up between a lot, the lots it was made of, those made of it, and the furnaces. */
  public static List<Finding> of(Study study, Lot lot) {
    List<Finding> findings = new ArrayList<>();
    LotMass.of(study, lot).filter(LotMass::isOverdrawn).ifPresent(m -> findings.add(Finding.warning("lot.overdrawn", "", kg(m.charged().value())
        + " were charged and " + kg(m.taken().value()) + " put into other lots, but it held only " + kg(m.held().value()),
        "look for a charge with the wrong lot, or a step that is missing")));
    LotStep.giving(lot).stream().filter(LotStep.SPLIT::is).map(t -> String.valueOf(t.getOn())).distinct().forEach(day -> split(study, lot, day).ifPresent(findings::add));
    merged(lot).ifPresent(findings::add);
    if (lot.getFrom().contains(lot)) {
      findings.add(Finding.error("lot.round", "", "it is made of itself", "mend what it was made of"));
    } else if (LotTrace.of(study, lot).stream().filter(l -> l.thing() != lot).anyMatch(l -> l.thing() instanceof Lot other && l.kind() == LotTrace.Kind.ORIGIN && other.getFrom().contains(lot))) {
      findings.add(Finding.error("lot.round", "", "it is made of lots that are made of it", "mend what it was made of"));
    }
    return findings;
  }

  /** What was split off on a day is what the lots of that day got. */
  private static Optional<Finding> split(Study study, Lot lot, String day) {
    List<Treatment> steps = LotStep.giving(lot).stream().filter(t -> LotStep.SPLIT.is(t) && day.equals(String.valueOf(t.getOn()))).toList();
    if (steps.stream().anyMatch(t -> t.getMassIn() == null || t.getMassOut() == null)) {
      return Optional.empty();
    }
    Amount gave = LotMass.sum(steps.stream()
        .map(t -> Amount.plusMinus(t.getMassIn() - t.getMassOut() - (t.getLost() == null ? 0 : t.getLost()), LotMass.sigma(t, t.getMassIn()))).toList());
    Amount got = LotMass.sum(LotMass.madeOf(study, lot).stream()
        .filter(l -> l.getFrom().size() == 1 && LotStep.first(l).filter(f -> LotStep.SPLIT.is(f) && day.equals(String.valueOf(f.getOn()))).isPresent())
        .flatMap(l -> LotMass.received(l).stream()).toList());
    return Math.abs(gave.value() - got.value()) > TWO_SIGMA * Math.hypot(gave.sigma(), got.sigma()) ? Optional.of(Finding.warning("lot.split", "",
        kg(gave.value()) + " were split off" + (steps.get(0).getOn() == null ? "" : " on " + day) + ", the lots made of it got " + kg(got.value()),
        "weigh the parts again, state what was lost, or say from which lot the parts are")) : Optional.empty();
  }

  /** A lot put together: what it got is what the others gave that day. */
  private static Optional<Finding> merged(Lot lot) {
    Optional<Treatment> first = LotStep.first(lot).filter(t -> LotStep.MERGE.is(t) && t.getMassIn() != null);
    if (first.isEmpty() || lot.getFrom().size() < 2) {
      return Optional.empty();
    }
    List<Amount> gave = new ArrayList<>();
    for (Lot from : lot.getFrom()) {
      Optional<Treatment> giving = LotStep.giving(from).stream().filter(t -> LotStep.MERGE.is(t) && Objects.equals(t.getOn(), first.get().getOn()) && t.getMassIn() != null)
          .findFirst();
      giving.ifPresent(t -> gave.add(Amount.plusMinus(t.getMassIn() - (t.getMassOut() == null ? 0 : t.getMassOut()), LotMass.sigma(t, t.getMassIn()))));
    }
    Amount sum = LotMass.sum(gave);
    double doubt = TWO_SIGMA * Math.hypot(LotMass.sigma(first.get(), first.get().getMassIn()), sum.sigmaOr(0));
    boolean known = gave.size() == lot.getFrom().size();
    return known && Math.abs(sum.value() - first.get().getMassIn()) > doubt ? Optional.of(Finding.warning("lot.merge", "", "the lots it was put together of gave "
        + kg(sum.value()) + ", it got " + kg(first.get().getMassIn()), "weigh again, or name all lots that went into it")) : Optional.empty();
  }

  private static String kg(double mass) {
    return Printed.number(mass) + " kg";
  }
}
