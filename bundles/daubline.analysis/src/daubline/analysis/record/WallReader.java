package daubline.analysis.record;

import daubline.model.Context;
import daubline.model.EvidenceSheet;
import daubline.model.Named;
import daubline.model.Series;
import daubline.model.Sheet;
import daubline.model.Site;
import daubline.model.SpreadSquare;
import daubline.model.Study;
import daubline.model.Trial;
import daubline.model.WallZone;
import daubline.session.Readings;
import daubline.session.StudySession;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import org.eclipse.emf.ecore.EObject;

/** Reads where walls are changed by fire and where residue lay. */
public final class WallReader {

  private WallReader() {
  }

  /** Every sheet that holds zones or squares, excavated ones first. */
  static List<WallData> of(Study study) {
    List<WallData> all = new ArrayList<>();
    for (Site site : study.getSites()) {
      for (Context context : site.getContexts()) {
        for (EvidenceSheet sheet : context.getSheets()) {
          add(all, of(sheet));
        }
      }
    }
    for (Series series : study.getSeries()) {
      for (Trial trial : series.getTrials()) {
        if (trial.getRemains() != null) {
          add(all, of(trial.getRemains()));
        }
      }
    }
    return all;
  }

  private static void add(List<WallData> all, WallData wall) {
    if (!wall.zones().isEmpty() || !wall.squares().isEmpty()) {
      all.add(wall);
    }
  }

  /** One sheet as it stands now; the remains of a trial stand under the trial's name. */
  public static WallData of(Sheet sheet) {
    Named owner = owner(sheet);
    return of(sheet, name(owner.getName(), owner.getId()), entry -> true);
  }

  /** What of a sheet may be shown to who edits it, under the name that may be shown. */
  public static WallData of(Sheet sheet, StudySession session) {
    Named owner = owner(sheet);
    return of(sheet, name(owner instanceof Trial trial ? session.nameOf(trial) : owner.getName(), owner.getId()), session::shows);
  }

  private static Named owner(Sheet sheet) {
    return sheet.eContainer() instanceof Trial trial ? trial : sheet;
  }

  private static WallData of(Sheet sheet, String name, Predicate<EObject> shown) {
    List<WallData.Zone> zones = sheet.getZones().stream().filter(shown).filter(WallReader::isPlaced)
        .map(z -> new WallData.Zone(z.getClock(), z.getLow(), z.getHigh(), z.getState().strip().toLowerCase(Locale.ROOT), String.valueOf(z.getId()))).toList();
    List<WallData.Square> squares = sheet.getSpread().stream().filter(shown).filter(s -> isNumber(s.getEast()) && isNumber(s.getNorth())).map(WallReader::square).toList();
    return new WallData(String.valueOf(owner(sheet).getId()), name, sheet instanceof EvidenceSheet, zones, squares);
  }

  private static boolean isPlaced(WallZone zone) {
    return zone.getClock() != null && zone.getClock() >= 1 && zone.getClock() <= 12 && isNumber(zone.getLow()) && isNumber(zone.getHigh())
        && zone.getHigh() > zone.getLow() && zone.getState() != null && !zone.getState().isBlank();
  }

  private static boolean isNumber(Double value) {
    return value != null && Double.isFinite(value);
  }

  private static WallData.Square square(SpreadSquare s) {
    return new WallData.Square(s.getEast(), s.getNorth(), s.getSide() == null ? Double.NaN : s.getSide(),
        s.getResidueClass() == null || s.getResidueClass().getName() == null ? "" : s.getResidueClass().getName(), Readings.amount(s), String.valueOf(s.getId()));
  }

  private static String name(String name, String id) {
    return name == null || name.isBlank() ? String.valueOf(id) : name;
  }
}
