package daubline.cli;

import daubline.analysis.SettingEditor;
import daubline.analysis.StudySettings;
import daubline.engine.inference.Setting;
import daubline.session.StudySession;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The comparison settings of a study. */
@Command(name = "settings", mixinStandardHelpOptions = true, description = "Show the settings of the comparison – tolerances, weights, limits – and change "
    + "them: settings STUDY criterion.base_internal_diameter.tolerance \"35 mm\" --because \"our own repeats\".")
final class SettingsCommand implements Callable<Integer> {

  @Mixin
  private StudyArgument study;

  @Parameters(index = "1", arity = "0..1", paramLabel = "KEY", description = "key of a setting, or the start of keys; without it what the study changed is shown")
  private String key;

  @Parameters(index = "2", arity = "0..1", paramLabel = "VALUE", description = "new value, with or without unit")
  private String value;

  @Option(names = "--because", paramLabel = "SOURCE", defaultValue = "", description = "where the new value comes from")
  private String because;

  @Option(names = "--standard", description = "go back to the standard value")
  private boolean standard;

  @Override
  public Integer call() throws Exception {
    boolean change = value != null || standard;
    try (StudySession session = change ? study.unreadToChange() : study.unread()) {
      SettingEditor editor = new SettingEditor(session);
      if (change) {
        change(session, editor);
      }
      int shown = 0;
      for (Map.Entry<String, Setting> setting : SettingEditor.known().entrySet()) {
        boolean wanted = key == null ? editor.kept(setting.getKey()).isPresent() : change ? setting.getKey().equals(key) : setting.getKey().startsWith(key);
        if (wanted) {
          print(setting.getKey(), setting.getValue(), editor.kept(setting.getKey()));
          shown++;
        }
      }
      if (shown == 0) {
        Page.say(0, key == null ? "this study keeps the standard value of every setting; settings STUDY criterion shows those of the criteria, weight those of weights"
            : "no setting begins with “" + key + "”");
      }
      int wrong = StudySettings.check(session.study()).isEmpty() ? Out.DONE : Out.findings(StudySettings.check(session.study()));
      return shown == 0 && key != null ? Out.WRONG : wrong;
    }
  }

  private void change(StudySession session, SettingEditor editor) throws Exception {
    if (standard) {
      editor.reset(key);
    } else {
      editor.set(key, value, because);
    }
    session.save();
  }

  private static void print(String key, Setting setting, Optional<SettingEditor.Kept> kept) {
    Optional<String> value = kept.map(SettingEditor.Kept::value);
    Page.say(0, key + ": " + setting.name() + " " + value.map(v -> printed(setting, v) + ", standard ").orElse("") + printed(setting, setting.standard()));
    Page.say(4, setting.meaning());
    Page.say(4, "source: " + kept.map(k -> k.source().isEmpty() ? "entered by the user, no source given" : k.source()).orElse(setting.source().toString()));
  }

  private static String printed(Setting setting, String value) {
    try {
      String printed = setting.printed(value);
      return printed.isEmpty() ? "(empty)" : printed;
    } catch (NumberFormatException e) {
      return "“" + value + "” (cannot be read)";
    }
  }
}
