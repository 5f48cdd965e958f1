package daubline.session.store;

import daubline.base.Amount;
import daubline.base.DecimalSign;
import daubline.base.EnteredText;
import daubline.base.Finding;
import daubline.base.Numbers;
import daubline.base.Printed;
import daubline.base.Quantity;
import daubline.base.Unit;
import daubline.base.Units;
import daubline.model.Identified;
import daubline.model.Lot;
import daubline.model.ModelFactory;
import daubline.model.Reading;
import daubline.model.Study;
import daubline.model.Treatment;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * Splits lots and puts lots together. Mass is kept: what the parts get is what the source gave, within the uncertainty of
 * the scale, or the move is refused. Called inside a change of the study.
 */
public final class LotMoves {

  private LotMoves() {
  }

  /**
   * A part to be split off.
   *
   * @param name the name of the new lot
   * @param mass its mass in kg, above zero
   */
  public record Part(String name, double mass) {
  }

  /** Parts read from text, or what is wrong with it. */
  public record Parts(List<Part> parts, Optional<Finding> complaint) {

    /** What they weigh together, kg. */
    public double sum() {
      return parts.stream().mapToDouble(Part::mass).sum();
    }
  }

  /** Reads a mass in kg, or with another unit of mass; empty when it is none. */
  public static Optional<Double> mass(String typed, DecimalSign decimal) {
    EnteredText text = EnteredText.split(typed, Quantity.MASS);
    Optional<Unit> unit = text.unit().isEmpty() ? Optional.of(Units.canonical(Quantity.MASS)) : Units.find(Quantity.MASS, text.unit());
    return unit.flatMap(u -> Numbers.parse(text.value(), decimal).map(u::toCanonical));
  }

  /** Reads parts, one a line as "name: mass". */
  public static Parts read(String typed, DecimalSign decimal) {
    List<Part> parts = new ArrayList<>();
    for (String line : typed.lines().map(String::strip).filter(l -> !l.isEmpty()).toList()) {
      int colon = line.lastIndexOf(':');
      String name = colon < 0 ? "" : line.substring(0, colon).strip();
      Optional<Double> mass = colon < 0 ? Optional.empty() : mass(line.substring(colon + 1).strip(), decimal).filter(m -> m > 0);
      if (name.isEmpty() || mass.isEmpty()) {
        return new Parts(List.of(), Optional.of(Finding.error("split.part", "", "“" + line + "” is no part", "write one part a line: name: mass, such as Ore for May: 40 kg")));
      }
      parts.add(new Part(name, mass.get()));
    }
    return new Parts(parts, Optional.empty());
  }

  /**
   * What forbids a split.
   *
   * @param sigma one standard uncertainty of the weighings in kg; NaN when not stated
   */
  public static Optional<Finding> refusal(Study study, Lot lot, List<Part> parts, double sigma) {
    Optional<LotMass> mass = LotMass.of(study, lot);
    if (mass.isEmpty()) {
      return Optional.of(Finding.error("split.unweighed", "", "the lot was never weighed", "enter its delivery with its mass on the page Steps first"));
    }
    if (parts.isEmpty()) {
      return Optional.of(Finding.error("split.none", "", "no part is named", "write one part a line: name: mass"));
    }
    double left = mass.get().left().value();
    double sum = parts.stream().mapToDouble(Part::mass).sum();
    double doubt = 2 * (Double.isNaN(sigma) ? mass.get().left().sigma() : Math.hypot(sigma, mass.get().left().sigma()));
    return sum > left + doubt ? Optional.of(Finding.error("split.more", "", "the parts weigh " + Printed.number(sum) + " kg, but only "
        + Printed.number(left) + " kg are left", "weigh again; what is not there cannot be split off")) : taken(study, parts.stream().map(Part::name).toList());
  }

  private static Optional<Finding> taken(Study study, Collection<String> names) {
    Set<String> seen = new HashSet<>();
    study.getLots().forEach(l -> seen.add(String.valueOf(l.getName())));
    return names.stream().filter(n -> !seen.add(n)).findFirst().map(n -> Finding.error("lot.twice", "", "a lot is called “" + n + "” already", "give each lot a name of its own"));
  }

  /**
   * Splits parts off a lot. The step tells of what it gave to lots only; what was charged into furnaces is counted by the run
   * logs.
   *
   * @param on the day; empty when not known
   * @return the new lots, behind the source in the study
   */
  public static List<Lot> split(Study study, Lot lot, List<Part> parts, String on, double sigma) {
    refusal(study, lot, parts, sigma).ifPresent(f -> {
      throw new IllegalArgumentException(f.what() + "; " + f.remedy());
    });
    LotMass mass = LotMass.of(study, lot).orElseThrow();
    double sum = parts.stream().mapToDouble(Part::mass).sum();
    Treatment step = step(LotStep.SPLIT, on, mass.held().value(), Math.max(0, mass.held().value() - sum), sigma);
    step.setNote(String.join(", ", parts.stream().map(Part::name).toList()));
    List<Lot> made = new ArrayList<>();
    for (Part part : parts) {
      Lot own = like(lot, part.name());
      own.getFrom().add(lot);
      own.getTreatments().add(step(LotStep.SPLIT, on, part.mass(), part.mass(), sigma));
      made.add(own);
    }
    lot.getTreatments().add(step);
    study.getLots().addAll(study.getLots().indexOf(lot) + 1, made);
    return made;
  }

  /** What forbids putting lots together. */
  public static Optional<Finding> refusal(Study study, List<Lot> lots, String name) {
    if (lots.size() < 2) {
      return Optional.of(Finding.error("merge.one", "", "one lot cannot be put together", "choose two or more"));
    }
    Optional<Lot> unweighed = lots.stream().filter(l -> LotMass.of(study, l).filter(m -> m.left().value() > 0).isEmpty()).findFirst();
    if (unweighed.isPresent()) {
      return Optional.of(Finding.error("merge.unweighed", "", "nothing is left of “" + unweighed.get().getName() + "”, or it was never weighed",
          "enter its delivery with its mass on the page Steps first, or leave it out"));
    }
    if (lots.stream().map(Lot::getMaterial).distinct().count() > 1) {
      return Optional.of(Finding.error("merge.material", "", "the lots are of different materials", "put together only what is of one material; a mix of clay has a recipe"));
    }
    return name.isBlank() ? Optional.of(Finding.error("merge.name", "", "the new lot has no name", "give it one")) : taken(study, List.of(name.strip()));
  }

  /**
   * Puts all that is left of some lots into a new one. Values on which the lots agree are kept; others must be stated anew.
   *
   * @param weighed what the new lot weighs in kg; NaN when it was not weighed anew, then the sum
   */
  public static Lot merge(Study study, List<Lot> lots, String name, double weighed, String on, double sigma) {
    refusal(study, lots, name).ifPresent(f -> {
      throw new IllegalArgumentException(f.what() + "; " + f.remedy());
    });
    List<Amount> given = lots.stream().map(l -> LotMass.of(study, l).orElseThrow().left()).toList();
    Amount sum = LotMass.sum(given);
    Lot made = like(lots.get(0), name.strip());
    made.getValues().removeIf(r -> !lots.stream().allMatch(l -> l.getValues().stream().anyMatch(o -> says(r, o))));
    if (lots.stream().map(Lot::getMoistureBasis).distinct().count() > 1) {
      made.setMoistureBasis(null);
      made.getValues().removeIf(LotMoisture::isWater);
    }
    made.setSupplier(common(lots.stream().map(Lot::getSupplier).toList()));
    made.setOrigin(common(lots.stream().map(Lot::getOrigin).toList()));
    made.getFrom().addAll(lots);
    made.getTreatments().add(step(LotStep.MERGE, on, sum.value(), Double.isNaN(weighed) ? sum.value() : weighed, Double.isNaN(sigma) ? sum.sigma() : sigma));
    for (int i = 0; i < lots.size(); i++) {
      double held = LotMass.of(study, lots.get(i)).orElseThrow().held().value();
      Treatment step = step(LotStep.MERGE, on, held, held - given.get(i).value(), given.get(i).sigma());
      step.setNote(made.getName());
      lots.get(i).getTreatments().add(step);
    }
    study.getLots().add(study.getLots().indexOf(lots.get(lots.size() - 1)) + 1, made);
    return made;
  }

  private static String common(List<String> texts) {
    return texts.stream().distinct().count() == 1 ? texts.get(0) : null;
  }

  private static boolean says(Reading a, Reading b) {
    return Objects.equals(a.getVariable(), b.getVariable()) && Objects.equals(a.getTyped(), b.getTyped()) && Objects.equals(a.getUnit(), b.getUnit())
        && Objects.equals(a.getValue(), b.getValue()) && Objects.equals(a.getCategory(), b.getCategory()) && a.getKind() == b.getKind();
  }

  /** A lot with the material and values of another and nothing of its history. */
  private static Lot like(Lot source, String name) {
    Lot made = ModelFactory.eINSTANCE.createLot();
    made.setName(name);
    made.setMaterial(source.getMaterial());
    made.setMoistureBasis(source.getMoistureBasis());
    for (Reading reading : source.getValues()) {
      Reading copy = EcoreUtil.copy(reading);
      ((Identified) copy).setId(null);
      copy.getEarlier().clear();
      made.getValues().add(copy);
    }
    return made;
  }

  private static Treatment step(LotStep kind, String on, double in, double out, double sigma) {
    Treatment step = ModelFactory.eINSTANCE.createTreatment();
    step.setStep(kind.word());
    step.setOn(on.isBlank() ? null : on.strip());
    step.setMassIn(in);
    step.setMassOut(out);
    step.setSigma(Double.isNaN(sigma) ? null : sigma);
    return step;
  }
}
