package daubline.ui.record;

import daubline.analysis.record.WallData;
import daubline.analysis.record.WallReader;
import daubline.charts.SpreadMap;
import daubline.charts.WallMap;
import daubline.model.Analysis;
import daubline.model.DataFile;
import daubline.model.EvidenceSheet;
import daubline.model.FurnaceBuild;
import daubline.model.Hazard;
import daubline.model.LogEntry;
import daubline.model.LoggerFile;
import daubline.model.Lot;
import daubline.model.Measure;
import daubline.model.Measurement;
import daubline.model.MixPart;
import daubline.model.ModelFactory;
import daubline.model.Permission;
import daubline.model.Piece;
import daubline.model.Prediction;
import daubline.model.RemainsSheet;
import daubline.model.ResidueMass;
import daubline.model.RoleAssignment;
import daubline.model.Sample;
import daubline.model.Series;
import daubline.model.Sheet;
import daubline.model.SizeBand;
import daubline.model.SpreadSquare;
import daubline.model.Study;
import daubline.model.Treatment;
import daubline.model.Trial;
import daubline.model.Visit;
import daubline.model.WallZone;
import daubline.record.AnalysisTable;
import daubline.record.BandTable;
import daubline.record.Desk;
import daubline.record.DryingTable;
import daubline.record.HazardTable;
import daubline.record.MeasureTable;
import daubline.record.MixTable;
import daubline.record.PermissionTable;
import daubline.record.PieceTable;
import daubline.record.PredictionTable;
import daubline.record.RecordWords;
import daubline.record.ResidueTable;
import daubline.record.RoleTable;
import daubline.record.SpreadTable;
import daubline.record.StepTable;
import daubline.record.TraceTable;
import daubline.record.VisitTable;
import daubline.record.WordTable;
import daubline.record.ZoneTable;
import daubline.session.BlindRecordings;
import daubline.ui.Words;
import daubline.ui.prefs.Preferred;
import daubline.ui.sheet.Page;
import daubline.ui.store.StepsPage;
import daubline.ui.store.TracePage;
import daubline.ui.study.OpenStudy;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.widgets.Composite;

/** Which pages of records each kind of object has, in the order in which a trial goes. */
public final class RecordPages {

  private RecordPages() {
  }

  /** One page that can be opened: the key of its title, and how it is made. */
  public record Kind(String key, Maker maker) {
  }

  /** Makes a page. */
  @FunctionalInterface
  public interface Maker {
    /** Makes it. */
    Page make(Composite parent, OpenStudy study);
  }

  /**
   * The pages of what remains of a furnace: one definition for evidence sheets and for the remains of trials.
   *
   * @param sheet the sheet; may say null when there is none yet
   * @param make the sheet, made when there is none; called inside a change
   */
  private static List<Kind> remains(Supplier<Sheet> sheet, Supplier<Sheet> make) {
    return List.of(new Kind("record.residues", (p, s) -> new ResiduesPage(p, new ResidueTable(desk(s), sheet, make))),
        new Kind("record.zones", (p, s) -> new MapPage(p, new ZoneTable(desk(s), sheet, make), row -> wall(s, sheet).flatMap(WallMap::of))),
        new Kind("record.spread", (p, s) -> new MapPage(p, new SpreadTable(desk(s), sheet, make), row -> wall(s, sheet).flatMap(w -> SpreadMap.of(w, residue(row))))));
  }

  private static Optional<WallData> wall(OpenStudy study, Supplier<Sheet> sheet) {
    return Optional.ofNullable(sheet.get()).map(s -> WallReader.of(s, study.session()));
  }

  private static String residue(EObject row) {
    return row instanceof SpreadSquare square && square.getResidueClass() != null ? String.valueOf(square.getResidueClass().getName()) : "";
  }

  /** The pages of an object. */
  public static List<Kind> of(EObject object) {
    return switch (object) {
      case Trial trial -> together(
          List.of(new Kind("record.predictions", (p, s) -> new RecordPage(p, new PredictionTable(desk(s), trial, Instant::now))),
              new Kind("record.log", (p, s) -> new LogPage(p, s, trial)),
              new Kind("record.loggers", (p, s) -> new LoggersPage(p, s, trial)),
              new Kind("record.measures", (p, s) -> new RecordPage(p, new MeasureTable(desk(s), trial))),
              new Kind("record.pieces", (p, s) -> new RecordPage(p, new PieceTable(desk(s), trial)))),
          remains(trial::getRemains, () -> remains(trial)),
          List.of(new Kind("record.samples", (p, s) -> new SamplesPage(p, desk(s), trial)),
              new Kind("record.analyses", (p, s) -> new AnalysesPage(p, new AnalysisTable(desk(s), trial::getAnalyses, trial::getSamples))),
              new Kind("record.photos", (p, s) -> new PhotosPage(p, s, () -> pictures(trial), trial::getFiles)),
              new Kind("record.measured", (p, s) -> new PicturePage(p, s, () -> pictures(trial), () -> remains(trial).getFiles(), () -> remains(trial))),
              new Kind("record.visits", (p, s) -> new RecordPage(p, new VisitTable(desk(s), trial, LocalDate::now)))));
      case EvidenceSheet sheet -> together(remains(() -> sheet, () -> sheet),
          List.of(new Kind("record.analyses", (p, s) -> new AnalysesPage(p, new AnalysisTable(desk(s), sheet::getAnalyses, List::of))),
              new Kind("record.photos", (p, s) -> new PhotosPage(p, s, sheet::getFiles, sheet::getFiles)),
              new Kind("record.measured", (p, s) -> new PicturePage(p, s, sheet::getFiles, sheet::getFiles, () -> sheet))));
      case Lot lot -> List.of(
          new Kind("record.steps", (p, s) -> new StepsPage(p, s, new StepTable(desk(s), lot))),
          new Kind("record.bands", (p, s) -> new RecordPage(p, new BandTable(desk(s), lot))),
          new Kind("record.mix", (p, s) -> new RecordPage(p, new MixTable(desk(s), lot))),
          new Kind("record.trace", (p, s) -> new TracePage(p, new TraceTable(desk(s), lot))));
      case FurnaceBuild build -> List.of(new Kind("record.drying", (p, s) -> new RecordPage(p, new DryingTable(desk(s), build))));
      case Series series -> List.of(new Kind("record.roles", (p, s) -> new RecordPage(p, new RoleTable(desk(s), series))));
      case Study study -> List.of(new Kind("record.hazards", (p, s) -> new RecordPage(p, new HazardTable(desk(s), LocalDate::now))),
          new Kind("record.permissions", (p, s) -> new RecordPage(p, new PermissionTable(desk(s), LocalDate::now))),
          new Kind("record.words", (p, s) -> new RecordPage(p, new WordTable(desk(s)))));
      default -> List.of();
    };
  }

  @SafeVarargs
  private static List<Kind> together(List<Kind>... parts) {
    return Stream.of(parts).flatMap(List::stream).toList();
  }

  /** The key of the page on which a thing stands; empty when it stands on none. */
  public static Optional<String> pageOf(EObject thing) {
    for (EObject o = thing; o != null; o = o.eContainer()) {
      String key = switch (o) {
        case Prediction prediction -> "record.predictions";
        case LogEntry entry -> entry.eContainer() instanceof FurnaceBuild ? "record.drying" : "record.log";
        case LoggerFile file -> "record.loggers";
        case Visit visit -> "record.visits";
        case DataFile file -> "record.photos";
        case Measure measure -> "record.measures";
        case Piece piece -> "record.pieces";
        case ResidueMass mass -> "record.residues";
        case WallZone zone -> "record.zones";
        case SpreadSquare square -> "record.spread";
        case Sample sample -> "record.samples";
        case Analysis analysis -> "record.analyses";
        case Hazard hazard -> "record.hazards";
        case MixPart part -> "record.mix";
        case Permission permission -> "record.permissions";
        case RoleAssignment role -> "record.roles";
        case SizeBand band -> "record.bands";
        case Treatment step -> "record.steps";
        case Measurement measurement -> "record.measured";
        default -> "";
      };
      if (!key.isEmpty()) {
        return Optional.of(key);
      }
    }
    return Optional.empty();
  }

  /** Where somebody writes in the window. */
  public static Desk desk(OpenStudy study) {
    return new Desk(study.session(), Preferred::decimal, new RecordWords(Locale.getDefault()));
  }

  /** What was photographed at a trial, and of its remains. */
  private static List<DataFile> pictures(Trial trial) {
    return Stream.concat(trial.getFiles().stream(), trial.getRemains() == null ? Stream.empty() : trial.getRemains().getFiles().stream())
        .filter(BlindRecordings::isSeen).toList();
  }

  /** The remains sheet of a trial, made when there is none; called inside a change. */
  public static RemainsSheet remains(Trial trial) {
    if (trial.getRemains() == null) {
      trial.setRemains(ModelFactory.eINSTANCE.createRemainsSheet());
      trial.getRemains().setName(Words.of("remains.of", String.valueOf(trial.getName())));
    }
    return trial.getRemains();
  }
}
