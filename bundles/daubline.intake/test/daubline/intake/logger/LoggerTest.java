package daubline.intake.logger;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.Finding;
import daubline.base.Severity;
import daubline.base.Variables;
import daubline.intake.Intake;
import daubline.intake.IntakeException;
import daubline.intake.IntakeOptions;
import daubline.intake.Target;
import daubline.model.LoggerFile;
import daubline.model.Trial;
import daubline.session.StudySession;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Logger files of several makes of clock, invented. */
class LoggerTest {

  @TempDir
  Path folder;

  private StudySession session;

  @BeforeEach
  void open() throws Exception {
    session = StudySession.create(folder.resolve("study"), "Test");
    Path trials = Files.writeString(folder.resolve("trials.csv"), "series,name,date\nSeason 2031,T1,2031-08-16\n");
    Intake.preview(session, trials, Target.TRIALS, IntakeOptions.none()).apply(session);
    session.save();
  }

  @AfterEach
  void close() {
    session.close();
  }

  private Trial trial() {
    return session.study().getSeries().get(0).getTrials().get(0);
  }

  private Path file(String... lines) throws Exception {
    return Files.writeString(folder.resolve("station.csv"), String.join("\n", lines) + "\n", StandardCharsets.UTF_8);
  }

  private LoggerPreview look(Path file, String... settings) throws Exception {
    IntakeOptions options = IntakeOptions.none();
    for (int i = 0; i < settings.length; i += 2) {
      options = options.with(settings[i], settings[i + 1]);
    }
    return LoggerIntake.preview(session, file, "T1", options);
  }

  private static List<String> codes(LoggerPreview preview, Severity least) {
    return preview.findings().stream().filter(f -> f.severity().compareTo(least) <= 0).map(Finding::code).toList();
  }

  @Test
  void semicolonsCommaGapAndStates() throws Exception {
    Path file = file("Station;box 2;;", "Time;temperature base (°C);air flow (L/min);inlet pressure (mbar)",
        "09:41:15;665,5;583;4,6", "09:41:16;saturated;584;4,6",
        "09:41:17;667;open;4,7", "09:45:00;668,0;;4,7", "09:45:01;removed;590;4,8");
    LoggerPreview preview = look(file);
    assertEquals(List.of(), codes(preview, Severity.WARNING), preview.findings().toString());
    LoggerLayout layout = preview.layout().orElseThrow();
    assertEquals(2, layout.headerRows());
    assertEquals(1, layout.timeColumn());
    assertEquals("HH:mm:ss", layout.time().text());
    assertEquals(List.of("temperature_base", "air_flow", "inlet_pressure"), layout.channels().stream()
        .map(ChannelLayout::variable).toList());
    assertEquals("2031-08-16T09:41:15", preview.startAt().orElseThrow());
    preview.apply(session);
    LoggerFile entry = trial().getLoggers().get(0);
    assertEquals("logs/station.csv", entry.getPath());
    assertArrayEquals(Files.readAllBytes(file), Files.readAllBytes(session.folder().resolve(entry.getPath())));
    LoggerSeries series = LoggerSeries.read(session.folder(), entry, Variables.standard());
    assertArrayEquals(new double[] {0, 1, 2, 225, 226}, series.seconds());
    assertEquals(List.of(new Gap(2, 225)), series.gaps());
    ChannelSeries base = series.channel("temperature_base").orElseThrow();
    assertArrayEquals(new double[] {665.5, Double.NaN, 667, 668, Double.NaN}, base.values());
    assertEquals(List.of("", "saturated", "", "", "removed"), List.of(base.state(0), base.state(1), base.state(2),
        base.state(3), base.state(4)));
    ChannelSeries flow = series.channel("air_flow").orElseThrow();
    assertEquals("open", flow.state(2));
    assertEquals("", flow.state(3), "an empty cell is no state");
    assertEquals(583e-3 / 60, flow.value(0), 1e-12);
    assertEquals(460, series.channel("inlet_pressure").orElseThrow().value(0), 1e-9);
    assertEquals(List.of(), series.findings());
  }

  @Test
  void againChangesNothingAndUndoTakesBack() throws Exception {
    Path file = file("Time,temperature base (°C)", "09:41:15,665.5", "09:41:16,666", "09:41:17,667");
    String before = session.digest();
    look(file, "save", "Box 2", "offset", "-75").apply(session);
    String after = session.digest();
    assertEquals(-75, trial().getLoggers().get(0).getOffset());
    LoggerPreview again = look(file, "mapping", "Box 2");
    assertFalse(again.changesAnything());
    again.apply(session);
    assertEquals(after, session.digest());
    assertEquals("Import logger file station.csv", session.undoLabel().orElseThrow());
    session.undo();
    assertEquals(before, session.digest());
    session.redo();
    assertEquals(after, session.digest());
    LoggerPreview moved = look(file, "offset", "-60");
    moved.apply(session);
    assertEquals(1, trial().getLoggers().size());
    assertEquals(-60, trial().getLoggers().get(0).getOffset());
  }

  @Test
  void waysOfWritingTimes() throws Exception {
    assertTimes(new double[] {0, 1, 2}, file("time [s],temperature base (°C)", "10,1", "11,2", "12,3"));
    assertTimes(new double[] {0, 30, 60}, file("elapsed (min),temperature base (°C)", "0,1", "0.5,2", "1,3"));
    assertTimes(new double[] {0, 10, 20}, file("Timestamp,temperature base (°C)", "2031-08-16T10:00:00,1",
        "2031-08-16T10:00:10,2", "2031-08-16T10:00:20,3"));
    assertTimes(new double[] {0, 10, 20}, file("When;temperature base (°C)", "16.08.2031 10:00:00;1",
        "16.08.2031 10:00:10;2", "16.08.2031 10:00:20;3"));
    assertTimes(new double[] {0, 20, 40}, file("Date,Time,temperature base (°C)", "2031-08-16,23:59:40,1",
        "2031-08-17,00:00:00,2", "2031-08-17,00:00:20,3"));
    assertTimes(new double[] {0, 0.5, 1}, file("Time,temperature base (°C)", "10:00:00.0,1", "10:00:00.5,2", "10:00:01.0,3"));
    assertTimes(new double[] {0, 1, 2}, file("unix,temperature base (°C)", "1944640800,1", "1944640801,2", "1944640802,3"));
    assertTimes(new double[] {0, 1, 2}, file("Time,temperature base (°C)", "11:59:59 AM,1", "12:00:00 PM,2", "12:00:01 PM,3"));
    assertTimes(new double[] {0, 5, 10}, file("temperature base (°C),temperature top (°C)", "1,2", "2,3", "3,4"),
        "interval", "5");
  }

  private void assertTimes(double[] expected, Path file, String... settings) throws Exception {
    LoggerPreview preview = look(file, settings);
    assertTrue(preview.canApply(), preview.findings().toString());
    assertArrayEquals(expected, preview.series().orElseThrow().seconds(), 1e-9);
    preview.apply(session);
    LoggerFile entry = trial().getLoggers().get(trial().getLoggers().size() - 1);
    assertArrayEquals(expected, LoggerSeries.read(session.folder(), entry, Variables.standard()).seconds(), 1e-9);
  }

  @Test
  void aDateTellsTheStart() throws Exception {
    assertEquals("2031-09-01T10:00:00", look(file("Date,Time,temperature base (°C)", "2031-09-01,10:00:00,1",
        "2031-09-01,10:00:01,2")).startAt().orElseThrow());
    assertEquals("2031-08-16T09:00:00+02:00",
        look(file("time [s],temperature base (°C)", "0,1", "1,2"), "start",
        "2031-08-16T09:00:00+02:00").startAt().orElseThrow());
    assertEquals(List.of("logger.start"), codes(look(file("time [s],temperature base (°C)", "0,1", "1,2")), Severity.WARNING));
  }

  @Test
  void badLoggerFiles() throws Exception {
    assertEquals(List.of("time.backwards"), codes(look(file("Time,temperature base (°C)", "10:00:00,1", "10:00:05,2",
        "10:00:02,3")), Severity.ERROR));
    assertEquals(List.of("time.none"), codes(look(file("a (°C),b (°C)", "3,1", "1,2", "2,3")), Severity.ERROR));
    assertEquals(List.of("logger.data"), codes(look(file("just,words", "and,more")), Severity.ERROR));
    assertEquals(List.of("unit.unknown"), codes(look(file("Time,temperature base [furlong]", "10:00:00,1", "10:00:05,2")),
        Severity.ERROR));
    assertEquals(List.of("date.ambiguous"), codes(look(file("When,temperature base (°C)", "03/04/2031 10:00:00,1",
        "03/04/2031 10:00:10,2")), Severity.ERROR));
    assertEquals(List.of("number.ambiguous"), codes(look(file("Time;inlet pressure (Pa)", "10:00:00;1,234",
        "10:00:05;1,235")), Severity.ERROR));
    assertEquals(List.of("file.empty"), codes(look(Files.write(folder.resolve("e.csv"), new byte[0])), Severity.ERROR));
    LoggerPreview nowhere = LoggerIntake.preview(session, file("Time,temperature base (°C)", "10:00:00,1", "10:00:05,2"),
        "T9", IntakeOptions.none());
    assertEquals(List.of("trial.unknown"), codes(nowhere, Severity.ERROR));
    String digest = session.digest();
    IntakeException e = assertThrows(IntakeException.class, () -> nowhere.apply(session));
    assertFalse(e.findings().get(0).remedy().isBlank());
    assertEquals(digest, session.digest());
    assertFalse(Files.exists(session.folder().resolve("logs")));
  }

  @Test
  void oddValuesWordsAndChannelsAreSaid() throws Exception {
    LoggerPreview preview = look(file("Time,temperature base (°C),humidity (%),air flow", "10:00:00,9000,40,500",
        "10:00:01,900,41,banana", "10:00:02,900,41,500"));
    assertTrue(preview.canApply());
    assertEquals(List.of("channel.unmapped", "unit.assumed", "logger.text", "value.implausible"),
        codes(preview, Severity.WARNING));
    assertEquals("banana", preview.series().orElseThrow().channel("air_flow").orElseThrow().state(1));
    assertEquals(40, preview.series().orElseThrow().channels().get(1).value(0), "kept as it stands under its own name");
    LoggerPreview mapped = look(file("Time,T1", "10:00:00,1472", "10:00:01,1500"), "column:T1", "temperature_base",
        "unit:T1", "°F");
    assertEquals(800, mapped.series().orElseThrow().channel("temperature_base").orElseThrow().value(0), 1e-9);
  }

  @Test
  void aFileThatIsGoneOrChangedIsSaid() throws Exception {
    look(file("Time,temperature base (°C)", "10:00:00,1", "10:00:05,2")).apply(session);
    LoggerFile entry = trial().getLoggers().get(0);
    Path copy = session.folder().resolve(entry.getPath());
    Files.writeString(copy, "Time,temperature base (°C)\n10:00:00,1\n10:00:05,3\n");
    assertEquals("logger.changed", LoggerSeries.read(session.folder(), entry, Variables.standard()).findings().get(0).code());
    Files.delete(copy);
    assertEquals("logger.missing", assertThrows(IntakeException.class, () -> LoggerSeries.read(session.folder(), entry,
        Variables.standard())).findings().get(0).code());
    session.edit("Point outside", () -> entry.setPath("../trials.csv"));
    assertEquals("logger.missing", assertThrows(IntakeException.class, () -> LoggerSeries.read(session.folder(), entry,
        Variables.standard())).findings().get(0).code());
  }

  @Test
  void anotherFileOfTheSameNameGetsANumber() throws Exception {
    look(file("Time,temperature base (°C)", "10:00:00,1", "10:00:05,2")).apply(session);
    look(file("Time,temperature base (°C)", "12:00:00,1", "12:00:05,2")).apply(session);
    assertEquals(List.of("logs/station.csv", "logs/station-2.csv"), trial().getLoggers().stream().map(LoggerFile::getPath)
        .toList());
  }

  /** The demonstration study's own file, laid out by its own entry. A figure to look at, not a limit. */
  @Test
  void sixHoursOfEightChannelsOnceASecond() throws Exception {
    Path demo = Path.of("seeds/aldervale/logs/aldervale-7-station.csv");
    long start = System.nanoTime();
    LoggerPreview preview = look(demo);
    long previewed = System.nanoTime();
    preview.apply(session);
    long applied = System.nanoTime();
    LoggerSeries series = LoggerSeries.read(session.folder(), trial().getLoggers().get(0), Variables.standard());
    long read = System.nanoTime();
    System.out.printf(Locale.ROOT, "6 h × 8 channels × 1 Hz: preview %.2f s, applied %.2f s, read for a chart %.2f s%n",
        (previewed - start) / 1e9,
        (applied - previewed) / 1e9, (read - applied) / 1e9);
    assertEquals(6 * 3600 - 395, series.size());
    assertEquals(8, series.channels().size());
    assertEquals(1, series.gaps().size());
    assertEquals(396, series.gaps().get(0).length(), 1e-9);
    try (StudySession demoStudy = StudySession.read(Path.of("seeds/aldervale"))) {
      LoggerFile own = demoStudy.study().getSeries().get(0).getTrials().get(6).getLoggers().get(0);
      LoggerSeries bySeed = LoggerSeries.read(demoStudy.folder(), own, Variables.standard());
      assertArrayEquals(bySeed.seconds(), series.seconds());
      for (int i = 0; i < 8; i++) {
        assertArrayEquals(bySeed.channels().get(i).values(), series.channels().get(i).values());
      }
      assertEquals(List.of(), bySeed.findings());
    }
  }
}
