package daubline.record;

import daubline.base.Finding;
import daubline.base.Variable;
import daubline.model.Reading;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.emf.ecore.EObject;

/**
 * A table whose rows are objects of the study, or views of them.
 *
 * @param <T> what a row shows
 */
public abstract class ObjectTable<T> implements EntryTable {

  private static final int SHORTEST_BEGINNING = 3;
  private static final Object NEXT = new Object();

  private final String id;
  private final Desk desk;
  private final Map<Cell, Refused> refused = new HashMap<>();
  private List<EntryColumn<T>> columns = List.of();
  private List<String> ids = List.of();
  private List<T> objects = List.of();

  private record Cell(Object row, String column) {
  }

  private record Refused(String text, Finding complaint) {
  }

  /** A table; the subclass calls {@link #refresh} when it is ready. */
  protected ObjectTable(String id, Desk desk) {
    this.id = id;
    this.desk = desk;
  }

  /** Where it is written. */
  protected final Desk desk() {
    return desk;
  }

  /** The objects in the order of the rows. */
  protected abstract List<T> find();

  /** The columns as they are for these objects. */
  protected abstract List<EntryColumn<T>> make();

  /** The rows among things that who writes here may see. */
  protected final <E extends EObject> List<E> shown(List<E> things) {
    return things.stream().filter(desk.session()::shows).toList();
  }

  /** The object of the study that a row shows. */
  protected EObject subject(T object) {
    return (EObject) object;
  }

  /** Makes a new object and puts it into the study; called inside a change. */
  protected T begin() {
    throw new IllegalStateException("Nothing can be added to " + id);
  }

  /** Called inside a change before a text is put into an object that was there before. */
  protected void beforeChange(T object, EntryColumn<T> column, String text) {
    // nothing to keep unless a table says so
  }

  @Override
  public boolean canAdd() {
    return true;
  }

  @Override
  public final void refresh() {
    objects = List.copyOf(find());
    columns = List.copyOf(make());
    ids = columns.stream().map(EntryColumn::id).toList();
    refused.keySet().removeIf(cell -> cell.row() != NEXT && !objects.contains(cell.row()));
  }

  @Override
  public final String id() {
    return id;
  }

  @Override
  public final List<String> columns() {
    return ids;
  }

  @Override
  public String heading(int column) {
    return desk.words().of(id + "." + columns.get(column).id());
  }

  @Override
  public String about(int column) {
    String name = columns.get(column).id();
    return desk.words().orElse(id + "." + name + ".about", desk.words().orElse("column." + name + ".about",
        ofColumn(column).map(Variable::meaning).orElse("")));
  }

  private Optional<Variable> ofColumn(int column) {
    return desk.variables().find(columns.get(column).id());
  }

  @Override
  public final Optional<Variable> variable(int row, int column) {
    return ofColumn(column).or(() -> object(row).filter(Reading.class::isInstance).map(o -> ((Reading) o).getVariable())
        .flatMap(desk.variables()::find));
  }

  @Override
  public final double share(int column) {
    return columns.get(column).share();
  }

  @Override
  public final int rows() {
    return objects.size() + (canAdd() ? 1 : 0);
  }

  /** The object of a row; null for the row not begun yet. */
  protected final T at(int row) {
    return row >= 0 && row < objects.size() ? objects.get(row) : null;
  }

  private Cell cell(int row, int column) {
    T object = at(row);
    return new Cell(object == null ? NEXT : object, columns.get(column).id());
  }

  @Override
  public final String text(int row, int column) {
    Refused no = refused.get(cell(row, column));
    T object = at(row);
    return no != null ? no.text() : object == null ? "" : columns.get(column).print().apply(object);
  }

  @Override
  public final String editText(int row, int column) {
    Refused no = refused.get(cell(row, column));
    T object = at(row);
    return no != null ? no.text() : object == null ? "" : columns.get(column).edit().apply(object);
  }

  @Override
  public final boolean isDate(int column) {
    return columns.get(column).isDate();
  }

  @Override
  public final boolean isTyped(int column) {
    return columns.get(column).isTyped();
  }

  @Override
  public boolean isEditable(int row, int column) {
    return columns.get(column).isTyped() && !desk.session().isReadOnly();
  }

  @Override
  public final boolean isAsked(int row, int column) {
    return columns.get(column).isTyped() && columns.get(column).asked().test(at(row));
  }

  @Override
  public final List<String> choices(int row, int column) {
    List<String> words = columns.get(column).isTyped() ? columns.get(column).choices().apply(at(row)) : List.of();
    Refused no = refused.get(cell(row, column));
    return no != null && no.complaint().code().equals(SEVERAL) ? begun(words, no.text().strip()) : words;
  }

  private static List<String> begun(List<String> words, String text) {
    return words.stream().filter(w -> w.regionMatches(true, 0, text, 0, text.length())).toList();
  }

  @Override
  public final boolean isRefused(int row, int column) {
    return refused.containsKey(cell(row, column));
  }

  @Override
  public final Optional<Finding> finding(int row, int column) {
    Refused no = refused.get(cell(row, column));
    T object = at(row);
    return no != null ? Optional.of(no.complaint()) : object == null ? Optional.empty() : columns.get(column).odd().apply(object);
  }

  @Override
  public final Optional<Finding> put(int row, int column, String text) {
    Cell cell = cell(row, column);
    refused.remove(cell);
    T object = at(row);
    if (object == null && text.isBlank()) {
      return Optional.empty();
    }
    EntryColumn<T> target = columns.get(column);
    String whole = completed(target.choices().apply(object), text.strip());
    Entry<T> entry = target.read().apply(whole);
    Optional<Finding> complaint = entry.isRead() ? refusal(object, target, whole) : Optional.of(entry.complaint());
    if (complaint.isPresent()) {
      refused.put(cell, new Refused(text, complaint.get()));
    } else {
      desk.edit(object == null ? "change.row" : "change.cell", heading(column), () -> apply(object, target, entry, whole));
      refresh();
    }
    return complaint;
  }

  @Override
  public final void together(String label, Runnable steps) {
    desk.session().edit(label, steps);
  }

  /** Understands a text for a column of a new row, without writing it. */
  protected final Entry<T> read(String column, String text) {
    EntryColumn<T> target = columns.stream().filter(c -> c.id().equals(column)).findFirst().orElseThrow();
    return target.read().apply(completed(target.choices().apply(null), text.strip()));
  }

  /** The one word on offer that a text of three letters or more begins; otherwise the text itself. */
  static String completed(List<String> words, String text) {
    List<String> meant = begun(words, text);
    boolean exact = words.stream().anyMatch(w -> w.equalsIgnoreCase(text));
    return !exact && text.length() >= SHORTEST_BEGINNING && meant.size() == 1 ? meant.get(0) : text;
  }

  /** Whether an understood text must not be put into this object; null objects are rows not begun yet. */
  protected Optional<Finding> refusal(T object, EntryColumn<T> column, String text) {
    return Optional.empty();
  }

  private void apply(T object, EntryColumn<T> column, Entry<T> entry, String text) {
    if (object != null) {
      beforeChange(object, column, text);
    }
    entry.change().accept(object == null ? begin() : object);
  }

  @Override
  public final Optional<EObject> object(int row) {
    return Optional.ofNullable(at(row)).map(this::subject);
  }

  @Override
  public boolean canRemove(int row) {
    return at(row) != null && canAdd() && !desk.session().isReadOnly();
  }

  @Override
  public final void remove(int row) {
    T object = at(row);
    if (object != null) {
      desk.session().delete(desk.words().of("change.remove", text(row, 0)), removed(object));
      refresh();
    }
  }

  /** What goes when a row is taken out. */
  protected List<EObject> removed(T object) {
    return List.of(subject(object));
  }
}
