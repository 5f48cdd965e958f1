package daubline.record;

import daubline.base.Finding;
import daubline.base.TrialStatus;
import daubline.model.ModelFactory;
import daubline.model.ModelPackage.Literals;
import daubline.model.Permission;
import daubline.model.Study;
import daubline.session.team.Readiness;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** The permissions with their terms, and the trials to come for which they do not hold. */
public final class PermissionTable extends ObjectTable<Permission> {

  private final Supplier<LocalDate> today;

  /** The permissions of the study. */
  public PermissionTable(Desk desk, Supplier<LocalDate> today) {
    super("permissions", desk);
    this.today = today;
    refresh();
  }

  private Study study() {
    return desk().session().study();
  }

  @Override
  protected List<Permission> find() {
    return study().getPermissions();
  }

  @Override
  protected Permission begin() {
    Permission made = ModelFactory.eINSTANCE.createPermission();
    study().getPermissions().add(made);
    return made;
  }

  @Override
  protected List<EntryColumn<Permission>> make() {
    return List.of(Columns.<Permission>text("name", 1.8, Literals.NAMED__NAME), Columns.<Permission>text("reference", 1.2, Literals.PERMISSION__REFERENCE),
        Columns.<Permission>text("issuer", 1.5, Literals.PERMISSION__ISSUER), Columns.<Permission>date("validFrom", 0.9, Literals.PERMISSION__VALID_FROM),
        Columns.<Permission>date("validUntil", 0.9, Literals.PERMISSION__VALID_UNTIL).doubting(p -> expired(p).or(() -> Readiness.turned(p))),
        EntryColumn.shown("lacking", 1.4, this::lacking), Columns.<Permission>text("note", 1.6, Literals.NAMED__NOTE).askedWhen(p -> false));
  }

  /** Whether it ran out by today; one that does not hold yet is no fault. */
  private Optional<Finding> expired(Permission permission) {
    return Readiness.ended(permission, today.get().toString());
  }

  private String lacking(Permission permission) {
    return String.join(", ", study().getSeries().stream().flatMap(s -> s.getTrials().stream()).filter(t -> TrialStatus.of(t.getStatus()).isToCome())
        .filter(t -> Readiness.isUncovered(study(), t, permission)).map(t -> Columns.text(t.getName())).toList());
  }

  @Override
  public Optional<Finding> problem() {
    return find().stream().flatMap(p -> expired(p).stream()).findFirst();
  }

  @Override
  public String summary() {
    return desk().words().of("permissions.local");
  }
}
