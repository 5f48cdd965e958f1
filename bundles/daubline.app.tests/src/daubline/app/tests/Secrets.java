package daubline.app.tests;

import daubline.base.ValueKind;
import daubline.base.Variable;
import daubline.model.BlindRecording;
import daubline.model.Citation;
import daubline.model.Hazard;
import daubline.model.Permission;
import daubline.model.Person;
import daubline.model.ResidueClass;
import daubline.model.Series;
import daubline.model.Study;
import daubline.model.VariableDefinition;
import daubline.session.StudyVariables;
import java.util.Collection;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;

/** The texts of a study that tell of run or evidence: names, notes and typed values long enough to be told from anything else. */
final class Secrets {

  private static final int SHORTEST = 6;
  private static final Set<String> HARMLESS = Set.of("id", "variable", "unit", "symbol", "mediaType", "kind", "sha256", "rights", "state", "stage");

  private final Set<String> secrets = new TreeSet<>();
  private final StringBuilder open = new StringBuilder();

  private Secrets() {
  }

  /** What a study holds. */
  static Secrets of(Study study) {
    Secrets all = new Secrets();
    all.read(study);
    for (Iterator<EObject> i = study.eAllContents(); i.hasNext();) {
      all.read(i.next());
    }
    for (Variable variable : StudyVariables.of(study).all()) {
      all.open.append(String.join("\n", variable.name(), variable.group(), variable.meaning(), variable.source(), String.join("\n", variable.words()))).append('\n');
    }
    for (ValueKind kind : ValueKind.values()) {
      all.open.append(kind.word()).append('\n');
    }
    String shown = all.open.toString();
    all.secrets.removeIf(shown::contains);
    return all;
  }

  private static boolean isOpen(EObject o) {
    return o instanceof Study || o instanceof Series || o instanceof Person || o instanceof Hazard || o instanceof Permission || o instanceof ResidueClass
        || o instanceof VariableDefinition || o instanceof Citation || o instanceof BlindRecording;
  }

  private void read(EObject object) {
    for (EAttribute attribute : object.eClass().getEAllAttributes()) {
      if (object.eGet(attribute) instanceof String text && !HARMLESS.contains(attribute.getName())) {
        if (isOpen(object)) {
          open.append(text).append('\n');
        } else if (text.strip().length() >= SHORTEST && text.matches("(?s).*[\\d ].*")) {
          secrets.add(text.strip());
        }
      }
    }
  }

  int size() {
    return secrets.size();
  }

  /** Those that stand in texts. */
  Set<String> in(List<String> texts) {
    String all = String.join("\n", texts);
    Set<String> found = new TreeSet<>(secrets);
    found.removeIf(secret -> !all.contains(secret));
    return found;
  }

  /** Those that stand in texts of several places. */
  Set<String> in(Map<String, List<String>> places) {
    return in(places.values().stream().flatMap(Collection::stream).toList());
  }
}
