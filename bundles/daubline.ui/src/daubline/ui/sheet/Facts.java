package daubline.ui.sheet;

import daubline.model.Citation;
import daubline.model.Context;
import daubline.model.EvidenceSheet;
import daubline.model.FurnaceBuild;
import daubline.model.Lot;
import daubline.model.Person;
import daubline.model.Reconstruction;
import daubline.model.ResidueClass;
import daubline.model.Series;
import daubline.model.Site;
import daubline.model.Study;
import daubline.model.Trial;
import daubline.model.VariableDefinition;
import org.eclipse.emf.ecore.EObject;

/** Which plain features of an object its page of facts shows, in the order of the page. */
final class Facts {

  private Facts() {
  }

  /** Whether an object has a sheet of its own in which its facts stand. */
  static boolean isOwner(EObject object) {
    return object instanceof Trial || object instanceof EvidenceSheet || object instanceof Reconstruction || object instanceof FurnaceBuild
        || object instanceof Lot || object instanceof Series || object instanceof Site || object instanceof Context || object instanceof Citation
        || object instanceof Person || object instanceof Study || object instanceof VariableDefinition || object instanceof ResidueClass;
  }

  static String[] of(EObject object) {
    return switch (object) {
      case Trial trial -> new String[] {"name", "number", "kind", "status", "readyBecause", "on", "build", "reconstruction", "repeatOf", "leader", "people", "lots", "excluded",
          "excludedBecause", "conclusion", "note"};
      case EvidenceSheet sheet -> new String[] {"name", "feature", "recordedBy", "recordedOn", "samplingFraction", "note"};
      case Reconstruction r -> new String[] {"name", "hypothesis", "variantOf", "retired", "retiredBecause", "note"};
      case FurnaceBuild build -> new String[] {"name", "reconstruction", "builtOn", "lots", "note"};
      case Lot lot -> new String[] {"name", "material", "supplier", "origin", "deliveredOn", "note"};
      case Series series -> new String[] {"name", "question", "plan", "budget", "stopCriteria", "seed", "frozen", "note"};
      case Study study -> new String[] {"name", "question", "licence", "note"};
      case Site site -> new String[] {"name", "place", "region", "country", "latitude", "longitude", "sensitive", "note"};
      case Context context -> new String[] {"name", "period", "phase", "deposit", "note"};
      case Citation citation -> new String[] {"name", "authors", "year", "title", "editors", "container", "volume", "issue", "pages", "publisher",
          "place", "doi", "isbn", "url", "kind", "note"};
      case Person person -> new String[] {"name", "role", "smeltsBefore", "mayPublishName", "mayPublishPhotograph", "note"};
      case VariableDefinition v -> new String[] {"name", "meaning", "group", "type", "quantity", "unit", "low", "high", "stages", "categories", "evidencedBy", "source"};
      case ResidueClass residue -> new String[] {"name", "definition", "source"};
      default -> new String[] {"name", "note"};
    };
  }
}
