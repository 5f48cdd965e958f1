package daubline.analysis;

import daubline.base.DecimalSign;
import daubline.base.Numbers;
import daubline.base.Quantity;
import daubline.base.Source;
import daubline.base.Unit;
import daubline.base.Units;
import daubline.criteria.Criteria;
import daubline.engine.inference.Criterion;
import daubline.engine.inference.Group;
import daubline.engine.inference.Setting;
import daubline.model.ModelFactory;
import daubline.model.Study;
import daubline.session.StudySession;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The comparison settings of a study as somebody edits them: by key, in the unit they are shown in, with a reason. */
public final class SettingEditor {

  private static final Map<String, Setting> ALL = all();

  private final StudySession session;

  /** An editor for one session. */
  public SettingEditor(StudySession session) {
    this.session = session;
  }

  /** Every setting there is by its key: the comparison's own, weights of groups and criteria, and those of each criterion. */
  public static Map<String, Setting> known() {
    return ALL;
  }

  private static Map<String, Setting> all() {
    Map<String, Setting> all = new LinkedHashMap<>();
    Unit one = Units.find(Quantity.NUMBER, "1").orElseThrow();
    all.put(StudySettings.ALPHA, Setting.number(StudySettings.ALPHA, "Limit of compatibility", 0.05, one,
        "a compatibility below it makes the verdict “not consistent”; between 0 and 0.5", Source.commonPractice("one in twenty")));
    all.put(StudySettings.FIRMNESS, Setting.number(StudySettings.FIRMNESS, "Firmness of weights", 0, one,
        "how many votes stand behind the weights when they are drawn; 0 for as many as there are criteria, 50 for firm",
        Source.commonPractice("vague weights unless they were agreed on")));
    Source equal = Source.commonPractice("equal weights where nothing speaks for others");
    for (Group group : Group.values()) {
      String key = StudySettings.GROUP + group.name().toLowerCase(Locale.ROOT);
      all.put(key, Setting.number(key, "Weight of " + group.word(), 1, one, "how much this group of criteria counts", equal));
    }
    for (Criterion criterion : Criteria.all()) {
      String key = StudySettings.WEIGHT + criterion.id();
      all.put(key, Setting.number(key, "Weight of " + criterion.name(), 1, one, "how much it counts within its group", equal));
      criterion.settings().forEach(s -> all.put(StudySettings.CRITERION + criterion.id() + "." + s.key(), s));
    }
    return Collections.unmodifiableMap(all);
  }

  /**
   * What a study keeps of a setting.
   *
   * @param value its value, numbers in canonical units
   * @param source where it comes from, as entered; or empty
   */
  public record Kept(String value, String source) {
  }

  /** What the study keeps of one setting; empty when it keeps nothing. */
  public Optional<Kept> kept(String key) {
    return find(key).map(s -> new Kept(s.getValue() == null ? "" : s.getValue(), s.getSource() == null ? "" : s.getSource()));
  }

  private Optional<daubline.model.Setting> find(String key) {
    return session.study().getSettings().stream().filter(s -> key.equals(s.getKey())).findFirst();
  }

  /**
   * Keeps a value, as one undoable change.
   *
   * @param key one of {@link #known}
   * @param typed a number with or without unit, without it in the unit shown; or the text
   * @param because where the value comes from; may be empty
   * @throws IllegalArgumentException when there is no such setting, or the value cannot be read
   */
  public void set(String key, String typed, String because) {
    set("Set " + required(key).name(), List.of(new Entry(key, typed, because)));
  }

  /**
   * A setting to keep.
   *
   * @param key one of {@link #known}
   * @param typed its value as {@link #set} takes it
   * @param because where it comes from; may be empty
   */
  public record Entry(String key, String typed, String because) {
  }

  /**
   * Keeps several values as one undoable change; none when one of them cannot be read.
   *
   * @param label the name of the change, as undo shows it
   * @throws IllegalArgumentException when there is no such setting, or a value cannot be read
   */
  public void set(String label, List<Entry> entries) {
    List<String> values = entries.stream().map(e -> value(required(e.key()), e.key(), e.typed())).toList();
    session.edit(label, () -> {
      for (int i = 0; i < values.size(); i++) {
        Entry entry = entries.get(i);
        daubline.model.Setting kept = find(entry.key()).orElseGet(() -> added(entry.key()));
        kept.setValue(values.get(i));
        kept.setUnit(required(entry.key()).unit().map(Unit::symbol).orElse(null));
        kept.setSource(entry.because().isBlank() ? null : entry.because().strip());
      }
    });
  }

  private static String value(Setting setting, String key, String typed) {
    String value = setting.isNumber() ? Double.toString(number(setting, typed)) : typed.strip();
    if (key.equals(StudySettings.ALPHA) && !(Double.parseDouble(value) > 0 && Double.parseDouble(value) < 0.5)) {
      throw new IllegalArgumentException("The limit of compatibility must lie between 0 and 0.5, not “" + typed + "”");
    }
    return value;
  }

  /** Goes back to the standard value, as one undoable change. */
  public void reset(String key) {
    reset("Standard value of " + required(key).name(), key);
  }

  /** Goes back to the standard value, as one undoable change of this name. */
  public void reset(String label, String key) {
    required(key);
    find(key).ifPresent(k -> session.delete(label, List.of(k)));
  }

  /** Says where a kept value comes from, as one undoable change of this name; nothing when the study keeps no value. */
  public void source(String label, String key, String because) {
    find(key).ifPresent(kept -> session.edit(label, () -> kept.setSource(because.isBlank() ? null : because.strip())));
  }

  private daubline.model.Setting added(String key) {
    Study study = session.study();
    daubline.model.Setting setting = ModelFactory.eINSTANCE.createSetting();
    setting.setKey(key);
    study.getSettings().add(setting);
    return setting;
  }

  private static Setting required(String key) {
    Setting setting = ALL.get(key);
    if (setting == null) {
      throw new IllegalArgumentException("There is no setting “" + key + "”; the list of settings names them all");
    }
    return setting;
  }

  private static double number(Setting setting, String typed) {
    String text = typed.strip().replace('\u00A0', ' ');
    int end = text.length();
    while (end > 0 && Numbers.parse(text.substring(0, end).strip(), DecimalSign.POINT).isEmpty()) {
      end--;
    }
    Unit shown = setting.unit().orElseThrow();
    String symbol = text.substring(end).strip();
    Optional<Unit> unit = symbol.isEmpty() ? Optional.of(shown) : Units.find(shown.quantity(), symbol);
    Optional<Double> number = Numbers.parse(text.substring(0, end).strip(), DecimalSign.POINT).filter(n -> n >= 0);
    if (number.isEmpty() || unit.isEmpty()) {
      throw new IllegalArgumentException("“" + typed + "” is not a number of zero or more in " + (shown.symbol().isEmpty() ? "plain figures"
          : shown.symbol() + " or another unit of the kind") + ", such as “" + setting.printed(setting.standard()) + "”");
    }
    return unit.get().differenceToCanonical(number.get());
  }
}
