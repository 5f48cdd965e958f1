package daubline.analysis;

import daubline.base.Amount;
import daubline.base.Printed;
import daubline.base.Trail;
import daubline.base.Unit;
import daubline.base.Units;
import daubline.base.ValueKind;
import daubline.base.Variable;
import daubline.base.Variables;
import daubline.model.Analysis;
import daubline.model.Citation;
import daubline.model.Claim;
import daubline.model.DataFile;
import daubline.model.Earlier;
import daubline.model.Measurement;
import daubline.model.Reading;
import daubline.model.ResidueMass;
import daubline.session.BlindRecordings;
import daubline.session.Readings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Says of each value where it came from: typed text, conversion, citation or person. */
final class Trails {

  private final Variables variables;

  Trails(Variables variables) {
    this.variables = variables;
  }

  /** The trail of one reading. */
  Trail of(Reading reading) {
    Optional<Variable> variable = variables.find(text(reading.getVariable()));
    String what = reading instanceof ResidueMass residue && residue.getResidueClass() != null
        ? "Mass of " + text(residue.getResidueClass().getName()) : variable.map(Variable::name).orElse(text(reading.getVariable()));
    List<Trail> from = new ArrayList<>();
    if (reading.getTyped() != null) {
      from.add(Trail.of("as typed", (reading.getTyped() + " " + text(reading.getUnit())).strip()));
    }
    if (reading instanceof Claim claim && !claim.getInputs().isEmpty()) {
      from.add(calculated(claim));
    }
    if (reading instanceof Claim claim && claim.getPreservationLimit() != null) {
      from.add(Trail.of("could be seen up to", join(Printed.millimetres(claim.getPreservationLimit()), claim.getLimitBecause())));
    }
    origin(reading, from);
    from.addAll(earlier(reading, variable));
    return new Trail(what, variable.map(v -> Printed.withUnit(Readings.amount(reading), v.unit())).orElseGet(() -> bare(reading)),
        text(reading.getId()), from);
  }

  /** What the value was before each change that was saved, the oldest first. */
  private static List<Trail> earlier(Reading reading, Optional<Variable> variable) {
    List<Trail> all = new ArrayList<>();
    for (int i = 0; i < reading.getEarlier().size(); i++) {
      Earlier e = reading.getEarlier().get(i);
      String after = i + 1 < reading.getEarlier().size() ? printed(reading.getEarlier().get(i + 1), variable) : said(reading.getTyped(), reading.getUnit(), reading.getKind(), reading.getValue(), variable);
      Trail[] who = e.getBy() == null ? new Trail[0] : new Trail[] {Trail.entry("recorded by", text(e.getBy().getName()), text(e.getBy().getId()))};
      all.add(Trail.of("before the change “" + text(e.getChange()) + "”, " + text(e.getUntil()), printed(e, variable) + " → " + after, who));
    }
    return all;
  }

  private static String printed(Earlier e, Optional<Variable> variable) {
    return said(e.getTyped(), e.getUnit(), e.getKind(), e.getValue(), variable);
  }

  private static String said(String typed, String unit, ValueKind kind, Double value, Optional<Variable> variable) {
    return typed != null ? (typed + " " + text(unit)).strip() : value != null ? variable.map(v -> Printed.withUnit(Amount.exact(value), v.unit())).orElseGet(() -> Printed.number(value))
        : kind == null ? "nothing" : kind.word();
  }

  /** The formula and what was put into it, as typed. */
  private static Trail calculated(Claim claim) {
    List<Trail> inputs = claim.getInputs().stream()
        .map(i -> Trail.entry(text(i.getSymbol()) + " as typed", (text(i.getTyped()) + " " + text(i.getUnit())).strip(), text(i.getId()))).toList();
    List<Trail> from = new ArrayList<>(inputs);
    if (claim.getMeasurement() != null && claim.getMeasurement().eContainer() instanceof DataFile picture) {
      from.add(measured(claim.getMeasurement(), picture));
    }
    return new Trail("calculated by", text(claim.getFormula()), "", from);
  }

  /** The picture, and on it the points of what was measured and of the scale. */
  private static Trail measured(Measurement line, DataFile picture) {
    List<Trail> points = new ArrayList<>();
    points.add(Trail.entry("points of the length d", points(line), text(line.getId())));
    picture.getMeasurements().stream().filter(Measurement::isScale)
        .forEach(s -> points.add(Trail.entry("points of the scale s", points(s), text(s.getId()))));
    points.add(Trail.of("SHA-256", text(picture.getSha256())));
    return new Trail("on the picture", text(picture.getPath()), text(picture.getId()), points);
  }

  private static String points(Measurement m) {
    String each = m.getPointing() == null ? "" : ", each ± " + Printed.number(m.getPointing()) + " px";
    return "(" + point(m.getX1(), m.getY1()) + ") – (" + point(m.getX2(), m.getY2()) + ") px" + each;
  }

  private static String point(Double x, Double y) {
    return Stream.of(x, y).map(c -> c == null ? "?" : Printed.fixed(c, 1)).collect(Collectors.joining(", "));
  }

  private static String bare(Reading reading) {
    Unit unit = reading instanceof ResidueMass ? Units.canonical(daubline.base.Quantity.MASS) : Units.canonical(daubline.base.Quantity.NUMBER);
    return Printed.withUnit(Readings.amount(reading), unit);
  }

  private static void origin(Reading reading, List<Trail> from) {
    if (reading.getCitation() != null) {
      from.add(cited(reading.getCitation(), reading.getPage(), reading.getVerbatim()));
    }
    if (reading.getBy() != null) {
      String who = text(reading.getBy().getName()) + (reading.getAt() == null ? "" : ", " + reading.getAt());
      from.add(Trail.entry(reading.getCitation() == null ? "recorded by" : "read by", who, text(reading.getBy().getId())));
    }
    BlindRecordings.of(reading).ifPresent(r -> from.add(Trail.entry("recorded blind by", BlindRecordings.said(r), text(r.getId()))));
    if (reading.getHow() != null) {
      from.add(Trail.of("how it was got", reading.getHow().word()));
    }
  }

  /** The trail of one analysis. */
  Trail of(Analysis analysis) {
    List<Trail> from = new ArrayList<>();
    if (analysis.getCitation() != null) {
      from.add(cited(analysis.getCitation(), analysis.getPage(), null));
    }
    if (analysis.getMethod() != null) {
      from.add(Trail.of("method", join(analysis.getMethod(), analysis.getInstrument(), analysis.getLaboratory())));
    }
    analysis.getComponents().stream().filter(c -> c.getPrintedAs() != null).forEach(c -> from.add(Trail.of(c.getSymbol() + " printed as", c.getPrintedAs())));
    return new Trail("Analysis " + text(analysis.getName()), "", text(analysis.getId()), from);
  }

  private static Trail cited(Citation citation, String page, String verbatim) {
    String reference = join(citation.getAuthors(), citation.getYear(), citation.getTitle()) + (page == null || page.isBlank() ? "" : ", " + place(page));
    Trail words = verbatim == null ? null : Trail.of("in the words of the source", "“" + verbatim + "”");
    return new Trail("citation", reference, text(citation.getId()), words == null ? List.of() : List.of(words));
  }

  /** A bare number is a page; anything else, such as "fig. 9", says itself what it is. */
  private static String place(String page) {
    return Character.isDigit(page.strip().charAt(0)) ? "p. " + page.strip() : page.strip();
  }

  private static String join(String... parts) {
    return Stream.of(parts).filter(p -> p != null && !p.isBlank()).collect(Collectors.joining(", "));
  }

  private static String text(String text) {
    return text == null ? "" : text;
  }
}
