package daubline.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.Finding;
import daubline.base.TrialStatus;
import daubline.model.Series;
import daubline.model.Trial;
import daubline.session.team.Readiness;
import daubline.session.team.Roles;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Reliefs, risks and permissions are typed, and what is missing or over is said; people invented. */
class TeamTablesTest {

  @TempDir
  Path folder;
  private Desk desk;
  private Series series;
  private Trial trial;

  @BeforeEach
  void open() throws Exception {
    desk = Desks.desk(folder);
    trial = Desks.trial(desk);
    series = (Series) trial.eContainer();
  }

  @AfterEach
  void close() {
    desk.session().close();
  }

  private List<String> codes() {
    return Roles.of(series).stream().map(Finding::code).toList();
  }

  @Test
  void overlapsGapsAndMissingRolesAreFlagged() {
    assertEquals(List.of(), codes(), "a series nobody plans yet is not nagged");
    RoleTable table = new RoleTable(desk, series);
    Desks.row(table, "role", "lead", "person", "Ann");
    assertEquals(List.of("role.missing", "role.missing", "role.missing"), codes());
    Desks.row(table, "role", "charger", "person", "Ben");
    Desks.row(table, "role", "recorder", "person", "Cem");
    Desks.row(table, "role", "safety watch", "person", "Dor");
    Desks.row(table, "role", "bellows", "person", "Eve", "from", "900", "until", "12:30");
    Desks.row(table, "role", "bellows", "person", "Fay", "from", "12:30", "until", "16:30");
    assertEquals(List.of(), codes());
    assertEquals("09:00", series.getRoles().get(4).getFrom());
    Desks.type(table, 5, "from", "13:00");
    assertEquals(List.of("role.gap"), codes());
    assertTrue(table.problem().orElseThrow().what().contains("12:30 to 13:00"), table.problem().toString());
    Desks.type(table, 5, "from", "12:00");
    assertEquals(List.of(), codes(), "two at the bellows are no fault");
    Desks.type(table, 5, "person", "Eve");
    assertEquals(List.of("role.overlap"), codes());
    assertEquals("role.overlap", table.finding(5, table.columns().indexOf("person")).map(Finding::code).orElse(""));
    Desks.type(table, 5, "from", "22:00");
    Desks.type(table, 5, "until", "02:00");
    assertEquals(List.of("role.gap"), codes(), "past midnight, with a gap from 12:30 to 22:00");
    Desks.type(table, 5, "person", "");
    assertEquals("role.empty", table.finding(5, 0).map(Finding::code).orElse(""));
    assertEquals("role.time", Desks.type(table, 4, "from", "early"));
    Desks.type(table, 4, "until", "09:00");
    assertEquals("role.time", table.finding(4, 0).map(Finding::code).orElse(""));
  }

  @Test
  void hazardsWantControlOwnerAndReview() {
    HazardTable table = new HazardTable(desk, () -> LocalDate.of(2031, 8, 1));
    Desks.row(table, "name", "Dust", "who", "crushers");
    assertEquals("hazard.control", table.problem().map(Finding::code).orElse(""));
    Desks.type(table, 0, "control", "damp it down");
    assertEquals("hazard.owner", table.problem().map(Finding::code).orElse(""));
    Desks.type(table, 0, "owner", "Ann");
    Desks.type(table, 0, "reviewOn", "2031-07-01");
    assertEquals("hazard.review", table.finding(0, table.columns().indexOf("reviewOn")).map(Finding::code).orElse(""));
    Desks.type(table, 0, "reviewOn", "2031-08");
    assertTrue(table.problem().isEmpty(), "within the month it is not overdue");
    Desks.row(table, "name", "Dung", "notApplicable", "straw is used");
    assertTrue(table.problem().isEmpty());
  }

  @Test
  void aTrialIsReadyOnlyWithinItsPermissionsAndWithStopCriteria() {
    PermissionTable table = new PermissionTable(desk, () -> LocalDate.of(2031, 6, 1));
    Desks.row(table, "name", "Fire notice", "reference", "F/7", "issuer", "Fire watch", "validFrom", "2031-04-01", "validUntil", "2031-08-15");
    assertTrue(table.problem().isEmpty());
    assertEquals("T4", Desks.cell(table, 0, "lacking"), "the trial is on 2031-08-16");
    assertEquals(List.of("trial.stop", "trial.permission"), obstacles(""));
    desk.session().edit("stop", () -> series.setStopCriteria("wind above force 5"));
    Desks.type(table, 0, "validUntil", "2031-08");
    assertEquals(List.of(), obstacles(""), "the month holds the day");
    desk.session().edit("day", () -> trial.setOn("2031-03-01"));
    assertEquals(List.of("trial.permission"), obstacles(""), "it does not hold yet");
    desk.session().edit("day", () -> trial.setOn(null));
    assertEquals(List.of(), obstacles(""));
    assertEquals(List.of("trial.permission"), obstacles("2032-01-01"), "without a day of its own, today counts");
    desk.session().edit("day", () -> trial.setOn("2031-10-05"));
    assertEquals(List.of("trial.permission"), obstacles(""));
    int renewed = Desks.row(table, "name", "Fire notice", "validFrom", "2031-09-01", "validUntil", "2031-12-31");
    assertEquals(List.of(), obstacles(""), "it was renewed under the same name");
    assertEquals("", Desks.cell(table, 0, "lacking"));
    Desks.type(table, renewed, "name", "Public day");
    assertEquals(List.of("trial.permission"), obstacles(""));
    desk.session().edit("plan", () -> {
      series.setLabour(daubline.model.ModelFactory.eINSTANCE.createLabour());
      series.getLabour().getPermissions().add(desk.session().study().getPermissions().get(1));
    });
    assertEquals(List.of(), obstacles(""), "the plan names what this series needs");
    desk.session().edit("status", () -> trial.setStatus(TrialStatus.FIRED));
    assertEquals("", Desks.cell(table, 0, "lacking"));
    assertEquals("trial.permission", new PermissionTable(desk, () -> LocalDate.of(2031, 9, 1)).problem().map(Finding::code).orElse(""));
    Desks.type(table, 0, "validFrom", "2031-12-01");
    assertEquals("permission.term", table.finding(0, table.columns().indexOf("validUntil")).map(Finding::code).orElse(""));
  }

  private List<String> obstacles(String today) {
    return Readiness.obstacles(desk.session().study(), trial, today).stream().map(Finding::code).toList();
  }

  @Test
  void aDayOnOneSideOfAReliefCountsForBoth() {
    RoleTable table = new RoleTable(desk, series);
    Desks.row(table, "role", "lead", "person", "Ann");
    Desks.row(table, "role", "charger", "person", "Ben");
    Desks.row(table, "role", "recorder", "person", "Cem");
    Desks.row(table, "role", "safety watch", "person", "Dor");
    Desks.row(table, "role", "bellows", "person", "Eve", "from", "2031-08-16 09:30", "until", "12:30");
    Desks.row(table, "role", "bellows", "person", "Fay", "from", "12:30", "until", "2031-08-16 16:30");
    assertEquals(List.of(), codes());
    Desks.type(table, 5, "from", "13:00");
    assertEquals(List.of("role.gap"), codes());
    Desks.type(table, 5, "from", "12:00");
    Desks.type(table, 5, "person", "Eve");
    assertEquals(List.of("role.overlap"), codes());
    Desks.type(table, 5, "from", "2031-08-17 09:00");
    assertEquals("role.time", table.finding(5, 0).map(Finding::code).orElse(""), "the days are the wrong way round");
    assertTrue(table.finding(5, 0).orElseThrow().what().contains("ends before it begins"));
  }

  @Test
  void aTermThatEndsBeforeItBeginsIsNoPermission() {
    PermissionTable table = new PermissionTable(desk, () -> LocalDate.of(2031, 6, 1));
    Desks.row(table, "name", "Fire notice", "validFrom", "2031-09", "validUntil", "2031-08-15");
    assertEquals("permission.term", table.finding(0, table.columns().indexOf("validUntil")).map(Finding::code).orElse(""));
    assertEquals(List.of("permission.term"), Readiness.turned(desk.session().study().getPermissions().get(0)).stream().map(Finding::code).toList());
    assertTrue(Readiness.ended(desk.session().study().getPermissions().get(0), "2031-08-15").isEmpty());
  }

}
