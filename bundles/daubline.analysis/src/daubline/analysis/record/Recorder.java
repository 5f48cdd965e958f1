package daubline.analysis.record;

import daubline.base.Amount;
import daubline.base.Material;
import daubline.base.Printed;
import daubline.engine.inference.AnalysisData;
import daubline.analysis.evidence.Hypotheses;
import daubline.engine.inference.Statement;
import daubline.model.Analysis;
import daubline.model.Charge;
import daubline.model.ChargeItem;
import daubline.model.Citation;
import daubline.model.Incident;
import daubline.model.LogEntry;
import daubline.model.LoggerFile;
import daubline.model.Lot;
import daubline.model.Named;
import daubline.model.Person;
import daubline.model.Piece;
import daubline.model.Reading;
import daubline.model.ModelFactory;
import daubline.model.RemainsSheet;
import daubline.model.Sample;
import daubline.model.Series;
import daubline.model.Site;
import daubline.model.Study;
import daubline.model.Treatment;
import daubline.model.Trial;
import daubline.model.Visit;
import daubline.session.Predictions;
import daubline.session.Readings;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Makes the record of a study. */
public final class Recorder {

  private final Function<Reading, Statement> statement;
  private final Function<Analysis, AnalysisData> analysis;

  /** A recorder that reads values and analyses by these functions. */
  public Recorder(Function<Reading, Statement> statement, Function<Analysis, AnalysisData> analysis) {
    this.statement = statement;
    this.analysis = analysis;
  }

  /** The record of a study. */
  public StudyRecord of(Study study) {
    List<Trial> trials = study.getSeries().stream().flatMap(s -> s.getTrials().stream()).toList();
    return new StudyRecord(text(study.getQuestion()), text(study.getLicence()), study.getPeople().stream().map(p -> person(p, trials)).toList(),
        study.getCitations().stream().map(Recorder::citation).toList(), study.getLots().stream().map(this::lot).toList(),
        study.getSeries().stream().map(s -> series(s, new PlanningReader(study))).toList(), trials.stream().map(this::trial).toList(), evidence(study),
        study.getReconstructions().stream().filter(r -> !r.isRetired()).map(Recorder::name).toList(),
        study.getReconstructions().stream().map(r -> Hypotheses.of(r, c -> statement.apply(c).trail())).toList(), WallReader.of(study));
  }

  private static PersonData person(Person p, List<Trial> trials) {
    String at = trials.stream().filter(t -> t.getLeader() == p || t.getPeople().contains(p)).map(Recorder::name).collect(Collectors.joining(", "));
    return new PersonData(text(p.getId()), text(p.getName()), text(p.getRole()), whole(p.getSmeltsBefore()), p.isMayPublishName(), at);
  }

  private static CitationData citation(Citation c) {
    return new CitationData(text(c.getId()), text(c.getAuthors()), text(c.getYear()), text(c.getTitle()), text(c.getContainer()), text(c.getVolume()),
        text(c.getPages()), text(c.getPublisher()), text(c.getDoi()), text(c.getUrl()), text(c.getEditors()), text(c.getIssue()), text(c.getPlace()),
        text(c.getIsbn()), text(c.getKind()), text(c.getNote()));
  }

  private LotData lot(Lot lot) {
    return new LotData(text(lot.getId()), name(lot), material(lot.getMaterial()), text(lot.getSupplier()), text(lot.getOrigin()),
        text(lot.getDeliveredOn()), lot.getFrom().stream().map(Recorder::name).collect(Collectors.joining(", ")), text(lot.getMoistureBasis()),
        values(lot.getValues()), lot.getTreatments().stream().map(Recorder::treatment).toList());
  }

  private static String treatment(Treatment t) {
    String masses = t.getMassIn() == null || t.getMassOut() == null ? ""
        : " (" + Printed.number(t.getMassIn()) + " kg to " + Printed.number(t.getMassOut()) + " kg)";
    return (t.getStep() == null ? name(t) : t.getStep()) + masses;
  }

  private static SeriesData series(Series s, PlanningReader planning) {
    return new SeriesData(text(s.getId()), name(s), text(s.getQuestion()), text(s.getPlan()), s.isFrozen(),
        s.getSeed() == null ? "" : s.getSeed().toString(),
        s.getFactors().stream().map(f -> new SeriesData.FactorData(text(f.getVariable()), text(f.getLevels()), f.isHardToChange(), f.isDaily())).toList(),
        s.getTrials().stream().map(Trial::getId).toList(), planning.of(s));
  }

  private TrialRecord trial(Trial t) {
    List<PieceData> pieces = new ArrayList<>();
    t.getPieces().forEach(piece -> addPiece(pieces, piece, 0));
    return new TrialRecord(text(t.getId()), whole(t.getNumber()), text(t.getOn()), nameOf(t.getBuild()), nameOf(t.getReconstruction()),
        t.getLeader() == null ? "" : text(t.getLeader().getId()), text(t.getConclusion()), t.getLog().stream().map(this::log).toList(), pieces,
        t.getSamples().stream().map(Recorder::sample).toList(), analyses(name(t), t), predictions(t),
        t.getLoggers().stream().map(Recorder::logger).toList(), visits(t));
  }

  /** The visits, before them what was found after the fire: the first that was seen of the ruin. */
  private static List<TrialRecord.VisitData> visits(Trial t) {
    List<TrialRecord.VisitData> all = new ArrayList<>();
    if (!t.getVisits().isEmpty() && t.getRemains() != null) {
      Visit first = ModelFactory.eINSTANCE.createVisit();
      first.setVisitedOn(text(t.getRemains().getRecordedOn()).isEmpty() ? t.getOn() : t.getRemains().getRecordedOn());
      first.setNote("as found after the fire");
      all.add(visit(first, t.getRemains()));
    }
    t.getVisits().forEach(v -> all.add(visit(v, v.getRemains())));
    return all;
  }

  private static TrialRecord.VisitData visit(Visit v, RemainsSheet remains) {
    Map<String, Amount> values = new LinkedHashMap<>();
    if (remains != null) {
      remains.getClaims().stream().filter(c -> c.getVariable() != null).forEach(c -> values.putIfAbsent(c.getVariable(), Readings.amount(c)));
    }
    return new TrialRecord.VisitData(text(v.getDueOn()), text(v.getVisitedOn()), remains == null || remains.getRecordedBy() == null ? "" : text(remains.getRecordedBy().getId()),
        text(v.getNotVisitedBecause()), text(v.getEndedBecause()), text(v.getNote()), values);
  }

  private List<AnalysisRecord> analyses(String owner, Trial t) {
    List<AnalysisRecord> all = new ArrayList<>();
    if (t.getRemains() != null) {
      t.getRemains().getAnalyses().forEach(a -> all.add(analysis(owner, a)));
    }
    t.getAnalyses().forEach(a -> all.add(analysis(owner, a)));
    return all;
  }

  private List<AnalysisRecord> evidence(Study study) {
    List<AnalysisRecord> all = new ArrayList<>();
    for (Site site : study.getSites()) {
      site.getContexts().forEach(c -> c.getSheets().forEach(s -> s.getAnalyses().forEach(a -> all.add(analysis(name(s), a)))));
    }
    study.getLots().forEach(lot -> lot.getAnalyses().forEach(a -> all.add(analysis(name(lot), a))));
    return all;
  }

  private AnalysisRecord analysis(String owner, Analysis a) {
    return new AnalysisRecord(owner, name(a), nameOf(a.getSample()), text(a.getReplicate()), converted(a), text(a.getMethod()), text(a.getInstrument()), text(a.getStandards()),
        text(a.getLaboratory()), text(a.getOn()), whole(a.getAreas()), analysis.apply(a));
  }

  private static String converted(Analysis a) {
    return a.getComponents().stream().filter(c -> c.getPrintedAs() != null).map(c -> c.getSymbol() + ": " + c.getPrintedAs()).collect(Collectors.joining("; "));
  }

  private List<TrialRecord.PredictionData> predictions(Trial t) {
    return t.getPredictions().stream().filter(p -> p.getVariable() != null).map(p -> new TrialRecord.PredictionData(p.getVariable(), statement.apply(p),
        text(p.getStatedOn()), Predictions.isLocked(p), text(p.getEngine()), Predictions.version(p))).toList();
  }

  private LogData log(LogEntry e) {
    List<LogData.Charged> charged = e instanceof Charge charge ? charge.getItems().stream().map(Recorder::charged).toList() : List.of();
    boolean isIncident = e instanceof Incident;
    return new LogData(text(e.getId()), text(e.getAt()), number(e.getElapsed()), text(e.getKind()), text(e.getText()), e.isAbout(), e.isLate(),
        e.isInferred(), charged, values(e.getValues()), isIncident ? number(((Incident) e).getDuration()) : Double.NaN,
        isIncident ? text(((Incident) e).getEffect()) : "", isIncident);
  }

  private static LogData.Charged charged(ChargeItem item) {
    return new LogData.Charged(material(item.getMaterial()), Readings.amount(item), nameOf(item.getLot()));
  }

  private void addPiece(List<PieceData> pieces, Piece piece, int depth) {
    pieces.add(new PieceData(text(piece.getId()), name(piece), text(piece.getStage()), depth, text(piece.getNote()), values(piece.getValues())));
    piece.getPieces().forEach(part -> addPiece(pieces, part, depth + 1));
  }

  private static SampleData sample(Sample s) {
    return new SampleData(text(s.getId()), name(s), material(s.getMaterial()), text(s.getQuestion()), nameOf(s.getPiece()), text(s.getTakenOn()),
        text(s.getStoredAt()), text(s.getHolder()));
  }

  private static TrialRecord.LoggerData logger(LoggerFile file) {
    return new TrialRecord.LoggerData(name(file), text(file.getPath()), file.getChannels().stream().map(Recorder::name).collect(Collectors.joining(", ")));
  }

  private Map<String, List<Statement>> values(List<Reading> readings) {
    Map<String, List<Statement>> values = new LinkedHashMap<>();
    readings.stream().filter(r -> r.getVariable() != null)
        .forEach(r -> values.computeIfAbsent(r.getVariable(), v -> new ArrayList<>()).add(statement.apply(r)));
    return values;
  }

  private static String nameOf(Named object) {
    return object == null ? "" : name(object);
  }

  private static String name(Named object) {
    return object.getName() == null || object.getName().isBlank() ? text(object.getId()) : object.getName();
  }

  private static Material material(Material material) {
    return Optional.ofNullable(material).orElse(Material.OTHER);
  }

  private static int whole(Integer value) {
    return value == null ? -1 : value;
  }

  private static double number(Double value) {
    return value == null ? Double.NaN : value;
  }

  private static String text(String text) {
    return text == null ? "" : text;
  }
}
