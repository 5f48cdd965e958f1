package daubline.seeds;

import static daubline.seeds.Make.NEW;

import daubline.model.Factor;
import daubline.model.Hazard;
import daubline.model.Labour;
import daubline.model.Permission;
import daubline.model.Person;
import daubline.model.Provision;
import daubline.model.RoleAssignment;
import daubline.model.Series;
import daubline.model.Study;
import daubline.seeds.SeedTable.Row;

/** The people of Aldervale, what they may do, what they must mind, and who does what. */
final class AldervaleTeam {

  private final SeedTable tables;
  private final Study study;

  AldervaleTeam(SeedTable tables, Study study) {
    this.tables = tables;
    this.study = study;
  }

  /** Adds people, permissions and hazards. */
  void fill() {
    tables.rows("people").forEach(this::person);
    tables.rows("permissions").forEach(this::permission);
    tables.rows("hazards").forEach(this::hazard);
  }

  private void person(Row row) {
    Person person = NEW.createPerson();
    person.setId(row.get("id"));
    person.setName(row.get("name"));
    person.setRole(row.get("role"));
    person.setNote(row.orNull("note"));
    person.setSmeltsBefore(row.orNull("smelts_before") == null ? null : Integer.valueOf(row.get("smelts_before")));
    person.setMayPublishName(row.get("publish_name").equals("yes"));
    person.setMayPublishPhotograph(row.get("publish_photograph").equals("yes"));
    study.getPeople().add(person);
  }

  private void permission(Row row) {
    Permission permission = NEW.createPermission();
    permission.setId(row.get("id"));
    permission.setName(row.get("name"));
    permission.setReference(row.get("reference"));
    permission.setIssuer(row.get("issuer"));
    permission.setValidFrom(row.get("valid_from"));
    permission.setValidUntil(row.get("valid_until"));
    permission.setNote(row.orNull("note"));
    study.getPermissions().add(permission);
  }

  private void hazard(Row row) {
    Hazard hazard = NEW.createHazard();
    hazard.setName(row.get("name"));
    hazard.setWho(row.get("who"));
    hazard.setControl(row.orNull("control"));
    hazard.setOwner(row.orNull("owner") == null ? null : Make.find(study.getPeople(), row.get("owner")).getName());
    hazard.setReviewOn(row.get("review_on"));
    hazard.setNotApplicableBecause(row.orNull("not_applicable"));
    study.getHazards().add(hazard);
  }

  /** Adds factors, roles, stock and days to the series; the lots must be in the study. */
  void fill(Series series) {
    tables.rows("provisions").forEach(row -> series.getProvisions().add(provision(row)));
    series.setLabour(labour());
    for (Row row : tables.rows("factors")) {
      Factor factor = NEW.createFactor();
      factor.setVariable(row.get("variable"));
      factor.setLevels(row.get("levels"));
      factor.setHardToChange(row.get("hard_to_change").equals("yes"));
      series.getFactors().add(factor);
    }
    for (Row row : tables.rows("roles")) {
      RoleAssignment role = NEW.createRoleAssignment();
      role.setRole(row.get("role"));
      role.setPerson(Make.find(study.getPeople(), row.get("person")));
      role.setFrom(row.orNull("from"));
      role.setUntil(row.orNull("until"));
      series.getRoles().add(role);
    }
  }

  private Provision provision(Row row) {
    Provision provision = NEW.createProvision();
    provision.setId(row.get("id"));
    provision.setName(row.get("name"));
    provision.setUnit(row.get("unit"));
    provision.setAvailable(Double.valueOf(row.get("available")));
    provision.setLosses(row.orNull("losses"));
    provision.setReserve(Double.valueOf(row.get("reserve")));
    provision.setPerTrial(number(row.orNull("per_trial")));
    provision.setPerFurnace(number(row.orNull("per_furnace")));
    provision.setPerRefit(number(row.orNull("per_refit")));
    for (String lot : row.get("lots").split(" ")) {
      provision.getLots().add(Make.find(study.getLots(), lot));
    }
    return provision;
  }

  private static Double number(String text) {
    return text == null ? null : Double.valueOf(text);
  }

  /** The Saturdays of one summer; a furnace is daubed on two of them and dries a fortnight. */
  private Labour labour() {
    Labour labour = NEW.createLabour();
    labour.setId("labour-2031");
    labour.setTeam(5);
    labour.setFirstDay("2031-04-05");
    labour.setLastDay("2031-10-25");
    labour.setWeekdays("Saturday");
    labour.setDaysOff("2031-04-19; 2031-06-28");
    labour.setBuildDays(2);
    labour.setBuildPeople(3);
    labour.setDryDays(14);
    labour.setBurnDays(1);
    labour.setBurnPeople(5);
    labour.setRefitDays(1);
    labour.setRefitPeople(2);
    labour.setRefitDryDays(6);
    labour.setFirings(3);
    labour.setFailureShare(0.1);
    labour.setAssurance(0.9);
    labour.getPermissions().add(Make.find(study.getPermissions(), "permission-land"));
    labour.getPermissions().add(Make.find(study.getPermissions(), "permission-fire"));
    return labour;
  }
}
