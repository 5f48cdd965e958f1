package daubline.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.model.Trial;
import daubline.session.Visits;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Visits to a furnace left to decay, as they are written down; invented. */
class VisitTableTest {

  private static final LocalDate TODAY = LocalDate.of(2032, 3, 1);

  @TempDir
  Path folder;
  private Desk desk;
  private Trial trial;
  private VisitTable table;

  @BeforeEach
  void open() throws Exception {
    desk = Desks.desk(folder);
    trial = Desks.trial(desk);
    desk.session().edit("plan", () -> Visits.plan(trial, LocalDate.of(2031, 8, 31), List.of(1, 6, 12)));
    table = new VisitTable(desk, trial, () -> TODAY);
  }

  @AfterEach
  void close() {
    desk.session().close();
  }

  private List<Visits.State> states() {
    return Visits.of(desk.session().study(), TODAY).stream().map(Visits.Planned::state).toList();
  }

  @Test
  void monthsEndOnTheLastDayAndNothingIsPlannedTwice() {
    assertEquals(List.of("2031-09-30", "2032-02-29", "2032-08-31"), trial.getVisits().stream().map(v -> v.getDueOn()).toList());
    desk.session().edit("plan", () -> assertEquals(1, Visits.plan(trial, LocalDate.of(2031, 8, 31), List.of(1, 24)).size()));
    assertEquals(4, trial.getVisits().size());
  }

  @Test
  void whatIsDueIsVisitedOrSaidWhyNot() {
    assertEquals(List.of(Visits.State.DUE, Visits.State.DUE, Visits.State.TO_COME), states());
    assertEquals("Due by today: T4 2031-09-30, T4 2032-02-29", table.summary());
    Desks.type(table, 0, "visitedOn", "2031-10-02");
    Desks.type(table, 0, "by", "Ann");
    assertEquals("", Desks.type(table, 0, "surviving_height", "455 ± 10 mm"));
    Desks.type(table, 1, "notVisitedBecause", "the lane was flooded");
    assertEquals(List.of(Visits.State.VISITED, Visits.State.NOT_VISITED, Visits.State.TO_COME), states());
    assertEquals("No visit is due.", table.summary());
    assertEquals("not visited", Desks.cell(table, 1, "state"));
    assertEquals("455 ± 10 mm", Desks.cell(table, 0, "surviving_height"));
    assertEquals(0.455, trial.getVisits().get(0).getRemains().getClaims().get(0).getValue(), 1e-12);
    assertEquals("Ann", trial.getVisits().get(0).getRemains().getRecordedBy().getName());
    Desks.type(table, 0, "surviving_height", "");
    assertTrue(trial.getVisits().get(0).getRemains().getClaims().isEmpty());
  }

  @Test
  void afterTheEndNothingIsDue() {
    Desks.type(table, 0, "visitedOn", "2031-10-02");
    Desks.type(table, 0, "endedBecause", "a shed was built on the spot");
    assertEquals(List.of(Visits.State.VISITED, Visits.State.ENDED, Visits.State.ENDED), states());
    assertTrue(table.summary().contains("The watching ended: a shed"), table.summary());
  }

  @Test
  void aNewRowProposesTheIntervalOfTheLastTwo() {
    Desks.row(table, "note", "one more");
    assertEquals("2033-03-03", trial.getVisits().get(3).getDueOn());
  }

  @Test
  void whatCannotBeReadIsSaid() {
    assertEquals("date.form", Desks.type(table, 0, "visitedOn", "last week"));
    Desks.type(table, 0, "visitedOn", "2031-10-02");
    assertTrue(!Desks.type(table, 0, "surviving_height", "knee-high").isEmpty());
  }
}
