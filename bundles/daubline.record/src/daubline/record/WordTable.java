package daubline.record;

import daubline.base.Finding;
import daubline.base.ValueType;
import daubline.base.Variable;
import daubline.base.Variables;
import daubline.model.LogEntry;
import daubline.model.ModelFactory;
import daubline.model.Reading;
import daubline.model.Setting;
import daubline.model.Study;
import daubline.session.Readings;
import daubline.session.StudyVariables;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * The pick-lists of what is looked at and listened to during the fire: flame, smoke, sound, inlet. A row is a thing looked at;
 * its words are typed with semicolons between them, and an empty cell goes back to the words of the catalogue. What was
 * logged keeps its word when a word is taken out of the list; the row says so.
 */
public final class WordTable extends ObjectTable<Variable> {

  private static final String BETWEEN = "; ";

  /** The pick-lists of the study. */
  public WordTable(Desk desk) {
    super("words", desk);
    refresh();
  }

  private Study study() {
    return desk().session().study();
  }

  /** What is chosen from words in the run log. */
  @Override
  protected List<Variable> find() {
    return StudyVariables.of(study()).all().stream().filter(v -> v.isAt(Variable.Place.LOG) && v.type() == ValueType.CATEGORY).toList();
  }

  @Override
  protected EObject subject(Variable variable) {
    return study();
  }

  @Override
  public boolean canAdd() {
    return false;
  }

  @Override
  protected List<EntryColumn<Variable>> make() {
    return List.of(EntryColumn.shown("what", 1, v -> desk().words().told(v).name()),
        EntryColumn.<Variable>typed("words", 3, v -> shown(v, v.words()), this::read).doubting(this::unlisted),
        EntryColumn.shown("standard", 2, v -> shown(v, standard(v.id()))));
  }

  private String shown(Variable variable, List<String> words) {
    return words.stream().map(w -> desk().words().word(variable, w)).collect(Collectors.joining(BETWEEN));
  }

  private List<String> standard(String id) {
    return Variables.standard().find(id).map(Variable::words).orElseGet(() -> study().getVariables().stream().filter(d -> id.equals(d.getId()))
        .map(d -> words(Columns.text(d.getCategories()))).findFirst().orElse(List.of()));
  }

  private static List<String> words(String typed) {
    return Arrays.stream(typed.split(";")).map(String::strip).filter(w -> !w.isEmpty()).distinct().toList();
  }

  private Entry<Variable> read(String typed) {
    List<String> words = words(typed);
    Optional<String> colon = words.stream().filter(w -> w.contains(":")).findFirst();
    if (colon.isPresent()) {
      return Entry.wrong("words.colon", "“" + colon.get() + "” has a colon, which parts a word from its share", "write the word without it");
    }
    if (words.size() == 1) {
      return Entry.wrong("words.one", "there is nothing to choose from one word", "write at least two, such as: none; violet; white");
    }
    return Entry.of(v -> keep(v, words));
  }

  private void keep(Variable variable, List<String> typed) {
    List<String> words = typed.stream().map(w -> desk().words().kept(variable, w)).toList();
    String key = StudyVariables.WORDS + variable.id();
    Optional<Setting> kept = study().getSettings().stream().filter(s -> key.equals(s.getKey())).findFirst();
    if (words.isEmpty() || words.equals(standard(variable.id()))) {
      kept.ifPresent(EcoreUtil::delete);
      return;
    }
    kept.orElseGet(() -> {
      Setting made = ModelFactory.eINSTANCE.createSetting();
      made.setKey(key);
      study().getSettings().add(made);
      return made;
    }).setValue(String.join(BETWEEN, words));
  }

  /** Words that stand in a run log and are not on offer any more. */
  private Optional<Finding> unlisted(Variable variable) {
    TreeSet<String> used = logged(variable.id()).collect(Collectors.toCollection(TreeSet::new));
    used.removeAll(variable.words());
    return used.isEmpty() ? Optional.empty()
        : Optional.of(Finding.note("words.unlisted", variable.name(), "logged, but not in the list: " + String.join(", ", used),
            "nothing to do: what was logged keeps its word; put it back to go on using it"));
  }

  private Stream<String> logged(String id) {
    Stream<LogEntry> entries = study().getSeries().stream().flatMap(s -> s.getTrials().stream()).flatMap(t -> t.getLog().stream());
    Stream<Reading> values = entries.flatMap(e -> e.getValues().stream());
    return values.filter(r -> id.equals(r.getVariable())).map(r -> Readings.amount(r).category()).flatMap(c -> words(c).stream()).map(w -> w.split(":")[0].strip());
  }

  @Override
  public String summary() {
    return desk().words().of("words.summary");
  }
}
