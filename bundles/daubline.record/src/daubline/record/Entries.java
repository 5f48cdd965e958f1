package daubline.record;

import daubline.model.Charge;
import daubline.model.Incident;
import daubline.model.LogEntry;
import daubline.model.ModelFactory;
import daubline.model.ModelPackage.Literals;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EStructuralFeature;

/** What the entries of a run log have in common, whatever their kind. */
public final class Entries {

  private Entries() {
  }

  /** A new entry of a kind, in no log yet. */
  public static LogEntry make(String kind) {
    LogEntry made = switch (kind == null ? "" : kind) {
      case "charge" -> ModelFactory.eINSTANCE.createCharge();
      case "incident" -> ModelFactory.eINSTANCE.createIncident();
      default -> ModelFactory.eINSTANCE.createLogEntry();
    };
    made.setKind(kind);
    return made;
  }

  /**
   * Makes an entry one of another kind, in its place in the log; what both kinds have is kept, its id too. A charge that
   * holds masses stays what it is, so that no mass is lost by a slip.
   *
   * @return the entry of the new kind, the same object when its class fits
   */
  static LogEntry become(LogEntry entry, String kind) {
    LogEntry wanted = make(kind);
    boolean holds = entry instanceof Charge c && !c.getItems().isEmpty() || entry instanceof Incident i && (i.getDuration() != null || i.getEffect() != null);
    if (wanted.eClass() == entry.eClass() || holds && wanted.eClass() == Literals.LOG_ENTRY) {
      entry.setKind(kind);
      return entry;
    }
    EList<LogEntry> log = log(entry);
    String id = entry.getId();
    log.add(log.indexOf(entry) + 1, wanted);
    for (EStructuralFeature feature : Literals.LOG_ENTRY.getEAllStructuralFeatures()) {
      boolean own = feature == Literals.LOG_ENTRY__KIND || feature == Literals.IDENTIFIED__ID;
      if (!own && entry.eIsSet(feature)) {
        Object value = entry.eGet(feature);
        wanted.eSet(feature, value instanceof List<?> list ? new ArrayList<>(list) : value);
      }
    }
    log.remove(entry);
    wanted.setId(id);
    return wanted;
  }

  @SuppressWarnings("unchecked")
  private static EList<LogEntry> log(LogEntry entry) {
    return (EList<LogEntry>) entry.eContainer().eGet(entry.eContainingFeature());
  }

  /** Does a change to an entry that may put another in its place, and tells which stands there now. */
  static LogEntry after(LogEntry entry, Consumer<LogEntry> change) {
    EList<LogEntry> log = log(entry);
    int place = log.indexOf(entry);
    change.accept(entry);
    return log.get(place);
  }

  /** Whether the paper can be read at a column of an entry. */
  static boolean isLegible(LogEntry entry, String column) {
    return !illegible(entry).contains(column);
  }

  private static List<String> illegible(LogEntry entry) {
    return entry.getIllegible() == null ? List.of() : Arrays.asList(entry.getIllegible().split(" "));
  }

  /** Says whether the paper can be read at a column of an entry. */
  static void legible(LogEntry entry, String column, boolean legible) {
    List<String> now = new ArrayList<>(illegible(entry));
    now.remove(column);
    if (!legible) {
      now.add(column);
    }
    entry.setIllegible(now.isEmpty() ? null : String.join(" ", now));
  }
}
