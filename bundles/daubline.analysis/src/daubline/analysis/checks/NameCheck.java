package daubline.analysis.checks;

import daubline.base.Finding;
import daubline.base.LookAlike;
import daubline.model.Named;
import daubline.model.Sample;
import daubline.model.Trial;
import java.util.HashMap;
import java.util.Map;

/** Names and labels that stand twice or look alike. */
final class NameCheck implements Check {

  @Override
  public String id() {
    return "name";
  }

  @Override
  public String description() {
    return "Trials and sample labels whose names are the same or can be taken for each other.";
  }

  @Override
  public void run(CheckedStudy study) {
    look(study, Trial.class, "trial");
    look(study, Sample.class, "sample");
  }

  private static <T extends Named> void look(CheckedStudy study, Class<T> type, String word) {
    Map<String, T> seen = new HashMap<>();
    study.each(type, object -> {
      if (object.getName() == null || object.getName().isBlank()) {
        study.report(Finding.warning("name.none", "", "a " + word + " has no name", "give it one"), object, null);
        return;
      }
      T other = seen.putIfAbsent(LookAlike.of(object.getName()), object);
      if (other != null) {
        boolean same = other.getName().equals(object.getName());
        study.report(Finding.warning(same ? "name.twice" : "name.alike", "", same ? "two are named “" + object.getName() + "”"
            : "“" + object.getName() + "” and “" + other.getName() + "” are easily taken for each other", "rename one"), object, null);
      }
    });
  }
}
