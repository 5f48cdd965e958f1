package daubline.session.store;

import daubline.base.Amount;
import daubline.model.Lot;
import daubline.model.Study;
import daubline.model.Treatment;
import daubline.session.Readings;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What a lot weighs in kg by its steps, what lots made of it took and what was charged from it.
 *
 * @param held after its last weighed step, steps that gave mass to other lots included
 * @param taken by lots made of it that no step of its own tells of
 * @param charged into furnaces
 */
public record LotMass(Amount held, Amount taken, Amount charged) {

  /** Uncertainty of a weighing that states none, as a share of the mass at two standard uncertainties: common practice, no source. */
  public static final double SCALE = 0.02;

  /** The masses of a lot; empty when it was never weighed. */
  public static Optional<LotMass> of(Study study, Lot lot) {
    return held(lot).map(held -> new LotMass(held, taken(study, lot), charged(study, lot)));
  }

  /** What is left of it; below zero when more went out than was ever there. */
  public Amount left() {
    double left = held.value() - taken.value() - charged.value();
    return Amount.plusMinus(left, Math.sqrt(square(held) + square(taken) + square(charged)));
  }

  /** Whether more went out than was there, beyond two standard uncertainties and what a usual scale may err. */
  public boolean isOverdrawn() {
    return left().value() < -Math.max(2 * left().sigma(), SCALE * held.value());
  }

  private static double square(Amount mass) {
    return mass.sigmaOr(0) * mass.sigmaOr(0);
  }

  /** The mass after the last weighed step. */
  static Optional<Amount> held(Lot lot) {
    Amount held = null;
    for (Treatment t : lot.getTreatments()) {
      Double mass = t.getMassOut() != null ? t.getMassOut() : t.getMassIn();
      held = mass == null ? held : Amount.plusMinus(mass, sigma(t, mass));
    }
    return Optional.ofNullable(held);
  }

  static double sigma(Treatment treatment, double mass) {
    return treatment.getSigma() == null ? SCALE / 2 * Math.abs(mass) : treatment.getSigma();
  }

  /** The lots made of a lot. */
  public static List<Lot> madeOf(Study study, Lot lot) {
    return study.getLots().stream().filter(l -> l.getFrom().contains(lot)).toList();
  }

  private static Amount taken(Study study, Lot lot) {
    List<Amount> all = new ArrayList<>();
    for (Lot made : madeOf(study, lot)) {
      Optional<Treatment> first = LotStep.first(made);
      boolean told = first.isPresent() && LotStep.giving(lot).stream().anyMatch(t -> Objects.equals(t.getOn(), first.get().getOn()));
      boolean fromTheSieve = first.isPresent() && LotStep.SIEVE.is(first.get()) && lot.getTreatments().stream().anyMatch(LotStep.SIEVE::is);
      if (made.getFrom().size() == 1 && first.isPresent() && !told && !fromTheSieve) {
        received(made).ifPresent(all::add);
      }
    }
    return sum(all);
  }

  /** What a lot got when it was made: its part where it was split off, otherwise what went into its first step. */
  static Optional<Amount> received(Lot made) {
    return LotStep.first(made).flatMap(t -> {
      Double mass = LotStep.SPLIT.is(t) && t.getMassOut() != null ? t.getMassOut() : t.getMassIn();
      return Optional.ofNullable(mass).map(m -> Amount.plusMinus(m, sigma(t, m)));
    });
  }

  private static Amount charged(Study study, Lot lot) {
    return sum(LotTrace.charges(study).filter(i -> i.getLot() == lot).map(Readings::amount)
        .filter(a -> a.isNumber() && !Double.isNaN(a.value())).toList());
  }

  static Amount sum(List<Amount> masses) {
    return Amount.plusMinus(masses.stream().mapToDouble(Amount::value).sum(), Math.sqrt(masses.stream().mapToDouble(LotMass::square).sum()));
  }
}
