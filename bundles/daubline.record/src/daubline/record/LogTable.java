package daubline.record;

import daubline.base.Finding;
import daubline.base.Material;
import daubline.base.Numbers;
import daubline.base.Variable;
import daubline.model.Charge;
import daubline.model.DataFile;
import daubline.model.Incident;
import daubline.model.LogEntry;
import daubline.model.ModelFactory;
import daubline.model.ModelPackage.Literals;
import daubline.model.Person;
import daubline.model.Trial;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * The run log in the order of the paper: rows stay where they were written. "?" or "illegible" in any cell says that
 * the paper cannot be read there, which is not the same as an empty one. What is changed in a row that was finished
 * keeps what stood there before.
 */
public final class LogTable extends ObjectTable<LogEntry> {

  private static final String SCAN = "scan";

  private final Trial trial;
  private final LogClock clock;
  private final ProbeLine probes;
  private final BlastText blast;
  private LogEntry begun;

  /** The log of a trial. */
  public LogTable(Desk desk, Trial trial) {
    super("log", desk);
    this.trial = trial;
    this.clock = new LogClock(desk, trial);
    this.probes = new ProbeLine(desk);
    this.blast = new BlastText(desk);
    refresh();
  }

  @Override
  protected List<LogEntry> find() {
    return trial.getLog();
  }

  @Override
  protected LogEntry begin() {
    begun = ModelFactory.eINSTANCE.createLogEntry();
    trial.getLog().add(begun);
    return begun;
  }

  /** The paper does not ask where it is scanned. */
  @Override
  public boolean isPrinted(int column) {
    return isTyped(column) && !columns().get(column).equals(SCAN);
  }

  @Override
  protected List<EntryColumn<LogEntry>> make() {
    List<EntryColumn<LogEntry>> columns = new ArrayList<>();
    columns.add(EntryColumn.<LogEntry>typed("time", 0.8, clock::print, clock::read).doubting(clock::odd));
    columns.add(kind());
    columns.add(charged("ore", Material.ORE));
    columns.add(charged("charcoal", Material.CHARCOAL));
    columns.add(EntryColumn.<LogEntry>typed("probes", 1.6, probes::print, probes::read).askedWhen(is("temperature")));
    columns.add(EntryColumn.<LogEntry>typed("blast", 1.1, blast::print, blast::read).doubting(blast::odd).askedWhen(is("blast")));
    columns.add(Columns.<LogEntry>text("text", 2.4, Literals.LOG_ENTRY__TEXT));
    columns.add(Columns.<LogEntry>person(desk(), "by", 0.9, Literals.LOG_ENTRY__BY));
    words(columns, "look", "flame_colour", "smoke", "blast_sound", "inlet_view");
    words(columns, "tap", "slag_tap_fluidity");
    words(columns, "level", "burden_level");
    columns.add(charged("flux", Material.FLUX).askedWhen(e -> false));
    columns.add(incident("lasted", 0.8, i -> i.getDuration() == null ? "" : Columns.plain(desk(), i.getDuration() / 60), this::lasted));
    columns.add(incident("effect", 1.3, i -> Columns.text(i.getEffect()), typed -> Entry.of(i -> i.setEffect(typed.isBlank() ? null : typed))));
    columns.add(marks());
    columns.add(checked());
    columns.add(Columns.<LogEntry, DataFile>named(SCAN, 0.9, Literals.LOG_ENTRY__SCAN, DataFile.class,
        () -> trial.getFiles().stream().filter(f -> Pictures.isPicture(f) || Pictures.isPaper(f)).toList()).askedWhen(e -> false));
    columns.add(EntryColumn.shown("original", 1.2, e -> Columns.text(e.getOriginal())));
    return columns.stream().map(this::legible).toList();
  }

  private void words(List<EntryColumn<LogEntry>> columns, String kind, String... variables) {
    for (String id : variables) {
      desk().variables().find(id).ifPresent(v -> columns.add(Columns.<LogEntry>value(desk(), id, 0.9, v, LogEntry::getValues).askedWhen(is(kind))));
    }
  }

  private static Predicate<LogEntry> is(String kind) {
    return e -> e != null && kind.equals(e.getKind());
  }

  private EntryColumn<LogEntry> kind() {
    KindText kinds = new KindText(desk());
    return EntryColumn.<LogEntry>typed("kind", 1, e -> EventKind.ofWord(e.getKind()).map(kinds::word).orElse(Columns.text(e.getKind())), typed -> {
      Optional<Finding> complaint = kinds.complaint(typed);
      return complaint.isPresent() ? Entry.wrong(complaint.get()) : Entry.of(e -> become(e, kinds.read(typed).map(EventKind::word).orElse(null)));
    }).offering(e -> kinds.words());
  }

  private EntryColumn<LogEntry> charged(String id, Material material) {
    ChargeText text = new ChargeText(desk(), trial, material);
    return EntryColumn.<LogEntry>typed(id, 1, e -> e instanceof Charge c ? text.print(c) : "", typed -> {
      Entry<Charge> read = text.read(typed);
      return read.isRead() ? Entry.of(e -> charge(e, typed).ifPresent(read.change())) : Entry.wrong(read.complaint());
    }).doubting(e -> e instanceof Charge c ? text.odd(c) : Optional.empty()).askedWhen(is("charge"));
  }

  /** The entry as a charge; an empty text makes none of what is not. */
  private Optional<Charge> charge(LogEntry entry, String typed) {
    boolean already = entry instanceof Charge;
    return already || !typed.isBlank() ? Optional.of((Charge) become(entry, "charge")) : Optional.empty();
  }

  private <I> EntryColumn<LogEntry> incident(String id, double share, Function<Incident, String> print, Function<String, Entry<Incident>> read) {
    return EntryColumn.<LogEntry>typed(id, share, e -> e instanceof Incident i ? print.apply(i) : "", typed -> {
      Entry<Incident> entry = read.apply(typed);
      return entry.isRead() ? Entry.of(e -> {
        if (e instanceof Incident || !typed.isBlank()) {
          entry.change().accept((Incident) become(e, "incident"));
        }
      }) : Entry.wrong(entry.complaint());
    }).askedWhen(is("incident"));
  }

  private Entry<Incident> lasted(String typed) {
    Optional<Double> minutes = Numbers.parse(typed, desk().decimal().get()).filter(m -> m >= 0);
    return typed.isBlank() || minutes.isPresent() ? Entry.of(i -> i.setDuration(minutes.map(m -> m * 60).orElse(null)))
        : Entry.wrong(Numbers.complaint(typed, desk().decimal().get()));
  }

  private LogEntry become(LogEntry entry, String kind) {
    LogEntry now = Entries.become(entry, kind);
    begun = entry == begun ? now : begun;
    return now;
  }

  private EntryColumn<LogEntry> marks() {
    List<String> words = List.of(desk().words().of("mark.late"), desk().words().of("mark.inferred"));
    return EntryColumn.<LogEntry>typed("marks", 0.9, e -> String.join(", ", java.util.stream.Stream.of(e.isLate() ? words.get(0) : "",
        e.isInferred() ? words.get(1) : "", Columns.text(e.getOriginal()).isEmpty() ? "" : desk().words().of("mark.corrected")).filter(s -> !s.isEmpty()).toList()), typed -> {
      List<String> said = Arrays.stream(typed.toLowerCase(Locale.ROOT).split("[,;]")).map(String::strip)
          .filter(s -> !s.isEmpty() && !s.equals(desk().words().of("mark.corrected"))).toList();
      return words.containsAll(said) ? Entry.of(e -> {
        e.setLate(said.contains(words.get(0)));
        e.setInferred(said.contains(words.get(1)));
      }) : Entry.wrong("value.category", "“" + typed + "” is no mark", "write " + String.join(" or ", words) + ", with a comma between both");
    }).offering(e -> List.of(words.get(0), words.get(1), String.join(", ", words))).askedWhen(e -> false);
  }

  private EntryColumn<LogEntry> checked() {
    return Columns.<LogEntry>person(desk(), "checked", 0.9, Literals.LOG_ENTRY__CHECKED_BY).askedWhen(e -> false);
  }

  /** A second person checks, not the one who wrote. */
  @Override
  protected Optional<Finding> refusal(LogEntry object, EntryColumn<LogEntry> column, String text) {
    Person by = object == null ? null : object.getBy();
    boolean same = column.id().equals("checked") && by != null && text.strip().equalsIgnoreCase(Columns.text(by.getName()));
    return same ? Optional.of(Finding.error("check.same", "", by.getName() + " wrote the entry", "let somebody else compare it with the paper")) : Optional.empty();
  }

  @Override
  protected void beforeChange(LogEntry entry, EntryColumn<LogEntry> column, String text) {
    String old = column.print().apply(entry);
    boolean kept = entry != begun && !old.isBlank() && !old.equals(text.strip()) && !column.id().equals("marks") && !column.id().equals("checked")
        && !column.id().equals(SCAN);
    if (kept) {
      String said = heading(columns().indexOf(column.id())) + ": " + old;
      entry.setOriginal(Columns.text(entry.getOriginal()).isEmpty() ? said : entry.getOriginal() + " | " + said);
    }
  }

  /** The same column for a paper that cannot be read everywhere. */
  private EntryColumn<LogEntry> legible(EntryColumn<LogEntry> c) {
    if (!c.isTyped()) {
      return c;
    }
    String word = desk().words().of("illegible");
    Function<String, Entry<LogEntry>> read = typed -> {
      boolean illegible = typed.equals("?") || typed.equalsIgnoreCase(word) || typed.equalsIgnoreCase("illegible");
      Entry<LogEntry> entry = illegible ? c.read().apply("") : c.read().apply(typed);
      return entry.isRead() ? Entry.of(e -> Entries.legible(Entries.after(e, entry.change()), c.id(), !illegible)) : entry;
    };
    Function<LogEntry, String> print = e -> Entries.isLegible(e, c.id()) ? c.print().apply(e) : word;
    return new EntryColumn<>(c.id(), c.share(), print, e -> Entries.isLegible(e, c.id()) ? c.edit().apply(e) : word, read, c.choices(), c.odd(), c.asked(), c.isDate());
  }

  /** The headings' variable words come from the catalogue. */
  @Override
  public String heading(int column) {
    Optional<Variable> variable = desk().variables().find(columns().get(column));
    return desk().words().orElse("log." + columns().get(column), variable.map(desk().words()::told).map(Variable::name).orElse(columns().get(column)));
  }

  /**
   * Writes an entry whose time is known, as one change.
   *
   * @param elapsed seconds since the fire was lit; null before
   * @param cells texts by column; empty ones say nothing
   * @return what was not understood, with its column; nothing is written then
   */
  public Optional<Finding> record(EventKind kind, OffsetDateTime at, Double elapsed, Map<String, String> cells) {
    List<Entry<LogEntry>> entries = new ArrayList<>();
    for (Map.Entry<String, String> cell : cells.entrySet()) {
      if (!cell.getValue().isBlank()) {
        Entry<LogEntry> entry = read(cell.getKey(), cell.getValue());
        if (!entry.isRead()) {
          return Optional.of(entry.complaint().at(heading(columns().indexOf(cell.getKey()))));
        }
        entries.add(entry);
      }
    }
    desk().edit("change.run", desk().words().of("kind." + kind.word()), () -> {
      LogEntry made = Entries.make(kind.word());
      made.setAt(DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(at));
      made.setElapsed(elapsed);
      trial.getLog().add(made);
      entries.forEach(e -> e.change().accept(trial.getLog().get(trial.getLog().size() - 1)));
      if (trial.getOn() == null) {
        trial.setOn(at.toLocalDate().toString());
      }
    });
    refresh();
    return Optional.empty();
  }

  /** The heading of a column by its id. */
  public String headingOf(String column) {
    return heading(columns().indexOf(column));
  }

  /** What a column asks for. */
  public String aboutOf(String column) {
    return about(columns().indexOf(column));
  }

  /** The words offered in a column of a new row. */
  public List<String> wordsOf(String column) {
    return choices(rows() - 1, columns().indexOf(column));
  }

  /** The words of the desk on which this log is written. */
  public RecordWords words() {
    return desk().words();
  }
}
