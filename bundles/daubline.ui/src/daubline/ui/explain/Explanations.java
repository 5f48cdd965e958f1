package daubline.ui.explain;

import daubline.base.Printed;
import daubline.base.Unit;
import daubline.base.Units;
import daubline.base.ValueType;
import daubline.base.Variable;
import daubline.base.Variables;
import daubline.criteria.Criteria;
import daubline.engine.inference.Criterion;
import daubline.model.ResidueClass;
import daubline.record.EventKind;
import daubline.ui.Words;
import daubline.ui.explain.Explanation.Line;
import daubline.ui.prefs.Preferred;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.ResourceBundle;
import java.util.stream.Collectors;

/** What there is to say of variables, criteria, columns, fields, kinds of entries and classes of residue, in the language of the window. */
public final class Explanations {

  private static final ResourceBundle COLUMNS = ResourceBundle.getBundle("daubline.ui.explain.columns", Locale.getDefault(), Explanations.class.getClassLoader());

  private Explanations() {
  }

  /** A variable: its definition, unit, words, usual range, how remains show it, when it is asked, what uses it, and where that is from. */
  public static Explanation variable(Variable v) {
    Variable told = Words.told(v);
    List<Line> lines = new ArrayList<>();
    lines.add(new Line("", told.meaning()));
    lines.add(line("unit", unit(v)));
    lines.add(line("words", v.words().stream().map(w -> Words.word(v, w)).collect(Collectors.joining(", "))));
    lines.add(line("range", range(v)));
    lines.add(line("evidenced", told.evidencedBy()));
    lines.add(line("asked", v.places().stream().sorted().map(p -> word("what.place." + p.name())).collect(Collectors.joining(", "))));
    lines.add(line("criteria", criteria(v)));
    boolean added = Variables.standard().find(v.id()).isEmpty();
    lines.add(line("source", v.source().isBlank() && added ? word("what.added") : Words.said(v.source())));
    lines.add(line("id", v.id()));
    String name = named(v);
    return new Explanation(name, lines);
  }

  /** The name, with the English one after it when the window speaks another language: commands and files use that. */
  private static String named(Variable v) {
    String name = Words.told(v).name();
    return name.equals(v.name()) ? name : name + " (" + standardName(v) + ")";
  }

  private static String standardName(Variable v) {
    return Variables.standard().find(v.id()).map(Variable::name).orElse(v.name());
  }

  private static Line line(String key, String text) {
    return new Line(word("what." + key), text);
  }

  private static String unit(Variable v) {
    if (v.type() != ValueType.NUMBER) {
      return word("what.type." + v.type());
    }
    Unit shown = Preferred.unit(v.quantity()).orElse(v.unit());
    String quantity = Words.orElse("quantity." + v.quantity().name(), word("what.number"));
    String others = Units.of(v.quantity()).stream().map(Unit::symbol).filter(s -> !s.isEmpty() && !s.equals(shown.symbol())).distinct().collect(Collectors.joining(", "));
    String own = shown.symbol().isEmpty() ? quantity : shown.symbol() + " – " + quantity;
    return others.isEmpty() ? own : own + "; " + word("what.units", others);
  }

  private static String range(Variable v) {
    if (v.type() != ValueType.NUMBER || Double.isNaN(v.plausibleLow()) && Double.isNaN(v.plausibleHigh())) {
      return "";
    }
    Unit unit = Preferred.unit(v.quantity()).orElse(v.unit());
    String symbol = unit.symbol().isEmpty() ? "" : " " + unit.symbol();
    String bounds = Double.isNaN(v.plausibleHigh()) ? "≥ " + number(unit, v.plausibleLow()) : Double.isNaN(v.plausibleLow()) ? "≤ " + number(unit, v.plausibleHigh())
        : number(unit, v.plausibleLow()) + " – " + number(unit, v.plausibleHigh());
    return bounds + symbol + ". " + word("what.flagged");
  }

  private static String number(Unit unit, double canonical) {
    return Preferred.sign(Printed.number(unit.fromCanonical(canonical)));
  }

  private static String criteria(Variable v) {
    String names = Criteria.all().stream().filter(c -> c.inputs().contains(v.id())).map(Criterion::name).map(Words::said).distinct().collect(Collectors.joining(", "));
    return names.isEmpty() ? word("what.nocriterion") : names;
  }

  /** A criterion: what its agreement means, what it reads, and where it comes from. */
  public static Explanation criterion(Criterion c) {
    Variables known = Variables.standard();
    String reads = c.inputs().stream().map(id -> known.find(id).map(v -> variable(v).term()).orElse(id)).collect(Collectors.joining(", "));
    return new Explanation(Words.said(c.name()), List.of(new Line("", Words.said(c.meaning())), line("group", Words.of(c.group())), line("reads", reads),
        line("source", c.sources().stream().map(s -> Words.said(s.text())).distinct().collect(Collectors.joining("; ")))));
  }

  /** A class of residue by its own definition. */
  public static Explanation residue(ResidueClass c) {
    String definition = c.getDefinition() == null || c.getDefinition().isBlank() ? word("what.undefined") : c.getDefinition();
    return new Explanation(String.valueOf(c.getName()), List.of(new Line("", definition), line("source", c.getSource() == null ? "" : c.getSource())));
  }

  /** A kind of entry of the run log. */
  public static Explanation event(EventKind kind) {
    return new Explanation(word("event." + kind.name()), List.of(new Line("", word("event." + kind.name() + ".what")),
        line("key", kind == EventKind.MARK ? word("what.space") : String.valueOf(kind.key()))));
  }

  /** What a column holds, by the key of its heading. */
  public static Explanation column(String key, String heading) {
    return Explanation.of(heading, orElse(key, ""));
  }

  /** A thing of which its own place says what is to be known. */
  public static Explanation said(String term, String text) {
    return Explanation.of(term, text);
  }

  /** A field of an object: one said of its class when there is one, otherwise the common one. */
  public static Explanation field(String owner, String feature, String label) {
    return Explanation.of(label, orElse("field." + owner + "." + feature, orElse("field." + feature, Words.orElse("tip." + feature, ""))));
  }

  private static String word(String key, Object... parts) {
    String text = COLUMNS.getString(key);
    return parts.length == 0 ? text : new java.text.MessageFormat(text, Locale.ROOT).format(parts);
  }

  private static String orElse(String key, String otherwise) {
    try {
      return COLUMNS.getString(key);
    } catch (MissingResourceException e) {
      return otherwise;
    }
  }
}
