package daubline.seeds;

import static daubline.seeds.Make.NEW;

import daubline.model.Factor;
import daubline.model.Hazard;
import daubline.model.Permission;
import daubline.model.Person;
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

  /** Adds factors and roles to the series. */
  void fill(Series series) {
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
}
