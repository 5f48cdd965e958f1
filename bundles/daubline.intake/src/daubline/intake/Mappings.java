package daubline.intake;

import daubline.model.ImportMapping;
import daubline.model.ModelFactory;
import daubline.model.Setting;
import daubline.model.Study;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The mappings that a study keeps: how the files of one laboratory or logger are read. */
public final class Mappings {

  /** What is true of one file alone, or confirms what was seen in it. */
  private static final List<String> NOT_KEPT = List.of("mapping", "save", "sheet", "confirm");

  private Mappings() {
  }

  /** The mapping of a name for one target. */
  public static Optional<ImportMapping> find(Study study, String name, String target) {
    return study.getMappings().stream().filter(m -> name.equals(m.getName()) && target.equals(m.getTarget())).findFirst();
  }

  /** The names of all mappings of a target. */
  public static List<String> names(Study study, String target) {
    return study.getMappings().stream().filter(m -> target.equals(m.getTarget())).map(ImportMapping::getName).toList();
  }

  /** The settings of a mapping. */
  public static Map<String, String> settings(ImportMapping mapping) {
    Map<String, String> settings = new TreeMap<>();
    mapping.getSettings().forEach(s -> settings.put(s.getKey(), s.getValue()));
    return settings;
  }

  /** Whether a study keeps these very settings under a name. */
  public static boolean isKept(Study study, String name, String target, Map<String, String> settings) {
    return find(study, name, target).filter(m -> settings(m).equals(kept(settings))).isPresent();
  }

  /** Keeps settings under a name, in place of those kept before; only inside an edit. */
  public static void keep(Study study, String name, String target, Map<String, String> settings) {
    if (isKept(study, name, target, settings)) {
      return;
    }
    ImportMapping mapping = find(study, name, target).orElseGet(() -> {
      ImportMapping made = ModelFactory.eINSTANCE.createImportMapping();
      made.setName(name);
      made.setTarget(target);
      study.getMappings().add(made);
      return made;
    });
    mapping.getSettings().clear();
    kept(settings).forEach((key, value) -> {
      Setting setting = ModelFactory.eINSTANCE.createSetting();
      setting.setKey(key);
      setting.setValue(value);
      mapping.getSettings().add(setting);
    });
  }

  private static Map<String, String> kept(Map<String, String> settings) {
    Map<String, String> kept = new TreeMap<>(settings);
    NOT_KEPT.forEach(kept::remove);
    kept.keySet().removeIf(key -> key.startsWith("of:") || key.startsWith("row:"));
    return kept;
  }
}
