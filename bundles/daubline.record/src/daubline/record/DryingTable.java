package daubline.record;

import daubline.base.Amount;
import daubline.base.Finding;
import daubline.base.Printed;
import daubline.base.Variable;
import daubline.model.FurnaceBuild;
import daubline.model.LogEntry;
import daubline.model.ModelFactory;
import daubline.model.ModelPackage.Literals;
import daubline.session.Readings;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** The diary of a furnace that dries: lifts of clay, small fires, and the same thing weighed again and again until it is dry. */
public final class DryingTable extends ObjectTable<LogEntry> {

  private static final List<String> KINDS = List.of("lift", "weighing", "drying fire", "crack", "note");
  private static final String MASS = "drying_mass";

  private final FurnaceBuild build;

  /** The diary of a furnace. */
  public DryingTable(Desk desk, FurnaceBuild build) {
    super("drying", desk);
    this.build = build;
    refresh();
  }

  @Override
  protected List<LogEntry> find() {
    return build.getLog();
  }

  @Override
  protected LogEntry begin() {
    LogEntry made = ModelFactory.eINSTANCE.createLogEntry();
    last().ifPresent(before -> {
      made.setKind(before.getKind());
      made.setText("weighing".equals(before.getKind()) ? before.getText() : null);
    });
    build.getLog().add(made);
    return made;
  }

  private Optional<LogEntry> last() {
    return build.getLog().stream().reduce((a, b) -> b);
  }

  @Override
  protected List<EntryColumn<LogEntry>> make() {
    return List.of(moment(), Columns.<LogEntry>known(desk(), "kind", 0.9, Literals.LOG_ENTRY__KIND, "dryingkind.", KINDS),
        Columns.<LogEntry>text("text", 1.6, Literals.LOG_ENTRY__TEXT).offering(e -> List.copyOf(things())),
        value("top", "lift_top").askedWhen(e -> e == null || "lift".equals(e.getKind())),
        value("lift", "lift_mass").askedWhen(e -> e == null || "lift".equals(e.getKind())),
        value("mass", MASS).askedWhen(e -> e == null || "weighing".equals(e.getKind())),
        EntryColumn.shown("lost", 0.8, this::lost),
        Columns.<LogEntry>person(desk(), "by", 0.9, Literals.LOG_ENTRY__BY).askedWhen(e -> false));
  }

  private EntryColumn<LogEntry> value(String id, String variable) {
    Variable known = desk().variables().get(variable);
    return Columns.<LogEntry>value(desk(), id, 0.9, known, LogEntry::getValues);
  }

  private EntryColumn<LogEntry> moment() {
    return EntryColumn.<LogEntry>typed("at", 1.2, e -> Columns.text(e.getAt()).replace('T', ' '), typed -> {
      String iso = typed.strip().replace(' ', 'T');
      return iso.isEmpty() || time(iso).isPresent() ? Entry.of(e -> e.setAt(iso.isEmpty() ? null : iso))
          : Entry.wrong("date.form", "“" + typed + "” is no date with time", "write it as 2031-04-20 14:30; the day alone counts as noon");
    }).dated().doubting(this::order);
  }

  private Optional<Finding> order(LogEntry entry) {
    Optional<LocalDateTime> at = time(entry.getAt());
    boolean back = at.isPresent() && build.getLog().stream().takeWhile(e -> e != entry).flatMap(e -> time(e.getAt()).stream()).anyMatch(at.get()::isBefore);
    return back ? Optional.of(Finding.warning("log.order", "", "earlier than a row above", "correct its time")) : Optional.empty();
  }

  /** The moment of an ISO text; a day alone is its noon. */
  private static Optional<LocalDateTime> time(String at) {
    try {
      return at == null || at.isBlank() ? Optional.empty() : Optional.of(at.length() <= 10 ? LocalDate.parse(at).atTime(12, 0) : LocalDateTime.parse(at));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }

  private Set<String> things() {
    Set<String> things = new LinkedHashSet<>();
    build.getLog().stream().filter(e -> mass(e).isPresent()).map(e -> Columns.text(e.getText())).forEach(things::add);
    return things;
  }

  private static Optional<Amount> mass(LogEntry entry) {
    return entry.getValues().stream().filter(r -> MASS.equals(r.getVariable())).map(Readings::amount).filter(Amount::isNumber).findFirst();
  }

  private List<LogEntry> weighings(String thing) {
    return build.getLog().stream().filter(e -> mass(e).isPresent() && thing.equals(Columns.text(e.getText()))).toList();
  }

  private String lost(LogEntry entry) {
    Optional<Amount> now = mass(entry);
    if (now.isEmpty()) {
      return "";
    }
    double first = mass(weighings(Columns.text(entry.getText())).get(0)).orElseThrow().value();
    return Columns.local(desk(), Printed.number(100 * (first - now.get().value()) / first, 3)) + " %";
  }

  /** What is foreseen of each thing that is weighed. */
  @Override
  public String summary() {
    List<String> all = new ArrayList<>();
    things().forEach(thing -> all.add(foreseen(thing)));
    return String.join(" ", all);
  }

  private String foreseen(String thing) {
    List<LogEntry> timed = weighings(thing).stream().filter(e -> time(e.getAt()).isPresent()).sorted(java.util.Comparator.comparing(e -> time(e.getAt()).orElseThrow())).toList();
    String name = thing.isEmpty() ? desk().words().of("drying.unnamed") : thing;
    if (timed.size() < DryingCurve.FEWEST) {
      return desk().words().of("drying.few", name, String.valueOf(timed.size()), String.valueOf(DryingCurve.FEWEST));
    }
    LocalDateTime start = time(timed.get(0).getAt()).orElseThrow();
    Optional<DryingCurve> curve = DryingCurve.fit(timed.stream().map(e -> {
      Amount mass = mass(e).orElseThrow();
      return new DryingCurve.Weighing(Duration.between(start, time(e.getAt()).orElseThrow()).toMinutes() / 60.0, mass.value(), mass.sigma());
    }).toList());
    double now = mass(timed.get(timed.size() - 1)).orElseThrow().value();
    return curve.map(c -> now <= c.low() * (1 + DryingCurve.NEAR) ? desk().words().of("drying.dry", name, kg(c.dry()), kg(c.low()), kg(c.high()))
        : desk().words().of("drying.expected", name, kg(c.dry()), kg(c.low()), kg(c.high()), moment(start, c.hours()), moment(start, c.hoursLow()), moment(start, c.hoursHigh())))
        .orElseGet(() -> desk().words().of("drying.early", name));
  }

  private String kg(double mass) {
    return Printed.number(mass).replace('.', desk().decimal().get().sign());
  }

  private static String moment(LocalDateTime start, double hours) {
    LocalDateTime at = start.plusMinutes(Math.round(60 * hours));
    return String.format(Locale.ROOT, "%s %02d h", at.toLocalDate(), at.getHour());
  }
}
