package daubline.record.runday;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.DecimalSign;
import daubline.base.Stage;
import daubline.base.Variable;
import daubline.model.Charge;
import daubline.model.LogEntry;
import daubline.model.ModelFactory;
import daubline.model.StagedValue;
import daubline.model.Trial;
import daubline.record.Desk;
import daubline.record.Desks;
import daubline.record.EventKind;
import daubline.record.MeasureTable;
import daubline.session.Readings;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A whole run by keys alone, with a clock that only goes forward. */
class RunDayTest {

  @TempDir
  Path folder;

  private Desk desk;
  private Trial trial;
  private long nanos;
  private RunDay day;

  @BeforeEach
  void open() throws Exception {
    desk = Desks.desk(folder);
    trial = Desks.trial(desk);
    day = dayAt("2031-08-16T09:00:00+01:00");
  }

  @AfterEach
  void close() {
    desk.session().close();
  }

  private RunDay dayAt(String wall) {
    return new RunDay(desk, trial, new RunClock(() -> nanos, () -> OffsetDateTime.parse(wall)));
  }

  private void pass(double seconds) {
    nanos += Math.round(seconds * 1e9);
  }

  /** Presses a key, types what is asked for, and ends with Enter. */
  private void press(char key, String... texts) {
    Draft draft = day.press(key).orElseThrow();
    List<String> typed = new java.util.ArrayList<>(draft.offered());
    for (int i = 0; i < texts.length; i++) {
      typed.set(i, texts[i]);
    }
    assertEquals("", day.write(draft, typed).map(Object::toString).orElse(""));
  }

  private void plan(String variable, String typed) {
    desk.session().edit("Plan", () -> {
      StagedValue value = ModelFactory.eINSTANCE.createStagedValue();
      value.setStage(Stage.PLANNED);
      Variable v = desk.variables().get(variable);
      Readings.put(value, v, typed, v.unit().symbol(), DecimalSign.POINT);
      trial.getValues().add(value);
    });
  }

  @Test
  void everyKindOfEventHasOneKeyOfItsOwn() {
    Set<Character> keys = new HashSet<>();
    Arrays.stream(EventKind.values()).forEach(k -> assertTrue(keys.add(k.key()), k + " shares its key"));
    assertFalse(keys.contains('K') || keys.contains('Z') || keys.contains('J'), "these have other duties");
    assertEquals(EventKind.values().length + 6, RunDay.keys(desk).size());
    assertTrue(day.press('@').isEmpty());
  }

  @Test
  void aRunIsWrittenByKeysWithTheTimeOfTheKey() {
    press('n', "team briefed");
    assertFalse(day.isLit());
    pass(600);
    press('h');
    assertTrue(day.isLit());
    assertEquals("lit", trial.getLog().get(1).getText());
    pass(1800.4);
    Draft charge = day.press('c').orElseThrow();
    pass(40);
    assertTrue(day.write(charge, List.of("1.2", "2 kg", "")).isEmpty());
    LogEntry entry = trial.getLog().get(2);
    assertEquals("2031-08-16T09:40:00+01:00", entry.getAt());
    assertEquals(1800.4, entry.getElapsed(), 1e-6);
    assertEquals(2, ((Charge) entry).getItems().size());
    pass(600);
    press('c');
    assertEquals(1.2, ((Charge) trial.getLog().get(3)).getItems().get(0).getValue(), 1e-12, "key and Enter repeat the last charge");
    press('t', "1170/930/open");
    press(' ');
    assertEquals("mark", trial.getLog().get(5).getKind());
    assertEquals("Entry: mark", desk.session().undoLabel().orElseThrow());
    desk.session().undo();
    assertEquals(5, trial.getLog().size());
  }

  @Test
  void whatIsNotUnderstoodIsNotWrittenAndSaysWhere() {
    press('h');
    Draft draft = day.press('c').orElseThrow();
    var finding = day.write(draft, List.of("1.2", "two", "")).orElseThrow();
    assertEquals("Charcoal (kg)", finding.where());
    assertEquals(1, trial.getLog().size());
  }

  /** The clocks go back an hour at night, and somebody puts the machine's clock right: the order of entries does not care. */
  @Test
  void noClockChangeBringsEntriesOutOfOrder() {
    press('h');
    pass(3600);
    press('n', "before");
    day = dayAt("2031-08-16T09:10:00+00:00");
    assertFalse(day.isShifted(), "ten past ten by the offset of the morning");
    day = dayAt("2031-08-16T09:20:00+01:00");
    assertTrue(day.isShifted());
    pass(60);
    press('n', "after");
    double[] elapsed = trial.getLog().stream().mapToDouble(LogEntry::getElapsed).toArray();
    assertTrue(elapsed[2] >= elapsed[1], Arrays.toString(elapsed));
    assertEquals(3660, elapsed[2], 1e-6);
  }

  /** By hand: 3 fillings of 2 kg ± 0.05 (shared) and one weighing of 1 ± 0.1: √((3·0.05)² + 0.1²) = 0.1803. */
  @Test
  void totalsShareTheErrorOfAMeasure() {
    MeasureTable measures = new MeasureTable(desk, trial);
    Desks.row(measures, "name", "bucket", "material", "charcoal", "weighings", "2 ± 0.05");
    press('h');
    pass(60);
    press('f', "2×");
    pass(600);
    press('c', "1", "1 x bucket");
    pass(600);
    press('c', "1", "1 ± 0.1");
    RunTotals totals = RunTotals.of(trial);
    assertEquals(7, totals.fuel().value(), 1e-12);
    assertEquals(Math.sqrt(0.0225 + 0.01), totals.fuel().sigma(), 1e-9);
    assertEquals(2.0 / 7, totals.ratio(), 1e-12);
    assertEquals(2, totals.charges());
    assertEquals(1260, totals.lastCharge(), 1e-6);
    assertEquals(600, totals.interval(), 1e-6);
  }

  @Test
  void theBurdenSinksAndTheEndIsForeseen() {
    plan("ore_total", "5");
    press('h');
    for (int i = 0; i < 3; i++) {
      pass(600);
      press('v', "5 cm");
      pass(300);
      press('v', "15 cm");
      press('c', "1", "2");
    }
    RunTotals totals = RunTotals.of(trial);
    assertEquals(0.10 / 300, totals.descent(), 1e-9);
    assertEquals("120 cm/h", totals.descentText());
    assertEquals(0.15, totals.level(), 1e-12);
    assertEquals(2700 + 2 * 900, totals.finish(), 1e-6, "two more kilograms at one every fifteen minutes");
  }

  @Test
  void whatIsDueCanBePutOffOrSkippedWithAReason() {
    plan("charge_interval", "10");
    plan("bellows_shift", "5");
    assertTrue(day.prompts().all().isEmpty(), "nothing is due before the fire is lit");
    press('h');
    pass(60);
    press('c', "1", "2");
    assertEquals(List.of("relief", "charge"), day.prompts().all().stream().map(Prompt::id).toList());
    assertEquals(300, day.prompts().all().get(0).due(), 1e-6);
    day.prompts().putOff("relief", 900);
    assertEquals("charge", day.prompts().all().get(0).id());
    assertEquals(660, day.prompts().all().get(0).due(), 1e-6);
    pass(600);
    day.skip(day.prompts().all().get(0), "shaft hangs");
    assertEquals("skipped: charge – shaft hangs", trial.getLog().get(2).getText());
    assertEquals(1260, day.prompts().all().stream().filter(p -> p.id().equals("charge")).findFirst().orElseThrow().due(), 1e-6);
  }

  @Test
  void theExtractionIsStampedByOneKey() {
    press('h');
    List<String> steps = day.checklist().steps();
    for (String step : steps) {
      pass(20);
      assertEquals(step, day.checklist().next().orElseThrow());
      assertTrue(day.press('x').orElseThrow().isComplete());
      press('x');
    }
    assertTrue(day.checklist().next().isEmpty());
    assertEquals(20.0 * steps.size(), trial.getLog().get(trial.getLog().size() - 1).getElapsed(), 1e-6);
    assertTrue(day.prompts().all().isEmpty());
  }

  @Test
  void strokesAreTappedAlong() {
    for (int i = 0; i < 12; i++) {
      day.strokes().tap(i * 2.5);
    }
    assertEquals(24, day.strokes().perMinute(), 1e-9);
    assertEquals("24", day.press('b').orElseThrow().offered().get(0));
    day.strokes().tap(100);
    assertTrue(Double.isNaN(day.strokes().perMinute()), "a long pause begins a new count");
  }
}
