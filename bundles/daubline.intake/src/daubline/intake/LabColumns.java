package daubline.intake;

import daubline.base.Variables;
import daubline.intake.Recognised.Aspect;
import daubline.intake.Recognised.State;
import daubline.intake.raw.RawCell;
import daubline.intake.raw.RawRow;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What laboratories call the columns that are no formulas, in English and German (common practice, no source). */
final class LabColumns {

  private static final Set<String> NAMES = Set.of("sample", "sample name", "sample id", "sample no", "sample number", "sample label", "label", "lab no", "lab id",
      "lab number", "analysis", "analysis no", "id no", "specimen no", "probe", "proben", "probenname", "probennummer", "proben nr", "probe nr", "proben id",
      "probenbezeichnung", "bezeichnung", "analyse", "analysen nr", "labornummer", "labor nr");
  private static final Map<String, String> OTHERS = Map.ofEntries(Map.entry("sum", "total"), Map.entry("totals", "total"), Map.entry("summe", "total"),
      Map.entry("σ", "total"), Map.entry("∑", "total"), Map.entry("gesamt", "total"), Map.entry("gesamtsumme", "total"), Map.entry("analytical total", "total"),
      Map.entry("sum of oxides", "total"), Map.entry("total oxides", "total"), Map.entry("oxide total", "total"), Map.entry("oxidsumme", "total"),
      Map.entry("versuch", "trial"), Map.entry("labor", "laboratory"), Map.entry("lab", "laboratory"), Map.entry("methode", "method"),
      Map.entry("verfahren", "method"), Map.entry("gerät", "instrument"), Map.entry("datum", "date"), Map.entry("bemerkung", "note"),
      Map.entry("bemerkungen", "note"), Map.entry("remarks", "note"), Map.entry("comment", "note"), Map.entry("comments", "note"),
      Map.entry("befund", "context"), Map.entry("fundort", "site"), Map.entry("fundplatz", "site"), Map.entry("fundstelle", "site"));

  private final Form form;
  private final Variables variables;
  private final IntakeOptions options;

  LabColumns(Form form, Variables variables, IntakeOptions options) {
    this.form = form;
    this.variables = variables;
    this.options = options;
  }

  /** The column of the form that laboratories mean by a heading of their own; empty when it is none of them. */
  static Optional<String> meant(Heading heading) {
    return Optional.ofNullable(OTHERS.get(heading.key().replace(":", "")));
  }

  /** The options with a column for the names of the analyses, found where the file has none of that name; what was found is added. */
  IntakeOptions named(RawRow header, List<RawRow> rows, List<Recognised> recognised) {
    boolean there = options.family("set").containsKey("name") || options.family("column").containsValue("name")
        || header.cells().stream().anyMatch(c -> Heading.of(c.text()).key().equals("name"));
    if (there) {
      return options;
    }
    Optional<Integer> usual = first(header, i -> NAMES.contains(Heading.of(header.cell(i).text()).key()));
    Optional<Integer> place = usual.or(() -> first(header, i -> isFree(header.cell(i)) && holdsNames(rows, i)));
    if (place.isEmpty()) {
      return options;
    }
    String text = header.cell(place.get()).text();
    String setting = "column:" + (text.isEmpty() ? "#" + (place.get() + 1) : text);
    boolean confirmed = Labs.isConfirmed(options, Aspect.COLUMN);
    recognised.add(new Recognised(Aspect.COLUMN, text.isEmpty() ? "#" + (place.get() + 1) : text, "name", usual.isPresent()
        ? "laboratories name the samples so" : "no heading says where the names are; this is the first column of texts",
        usual.isPresent() ? State.USUAL : confirmed ? State.STATED : State.GUESSED, setting, choices(form, variables)));
    return options.over(Map.of(setting, "name"));
  }

  private static Optional<Integer> first(RawRow header, java.util.function.IntPredicate fits) {
    for (int i = 0; i < header.cells().size(); i++) {
      if (fits.test(i)) {
        return Optional.of(i);
      }
    }
    return Optional.empty();
  }

  private boolean isFree(RawCell heading) {
    return heading.isEmpty() || form.column(Heading.of(heading.text()), variables).isEmpty() && !options.family("column").containsKey(heading.text());
  }

  private static boolean holdsNames(List<RawRow> rows, int column) {
    long filled = rows.stream().filter(r -> !r.cell(column).isEmpty()).count();
    long texts = rows.stream().map(r -> r.cell(column)).filter(c -> !c.isEmpty() && c.text().matches(".*\\p{L}.*")).count();
    return filled > 0 && filled >= rows.size() * 0.8 && texts >= filled * 0.8;
  }

  /** The columns that a heading may be said to stand for, and the sign that leaves it unread. */
  static List<String> choices(Form form, Variables variables) {
    return java.util.stream.Stream.concat(form.columns(variables).stream().filter(c -> !Formulas.isNamed(c.id())).map(FormColumn::id),
        java.util.stream.Stream.of("-")).toList();
  }
}
