package daubline.record;

import daubline.base.Finding;
import daubline.model.ModelFactory;
import daubline.model.ModelPackage.Literals;
import daubline.model.RoleAssignment;
import daubline.model.Series;
import daubline.session.team.Roles;
import java.util.List;
import java.util.Optional;
import org.eclipse.emf.ecore.EAttribute;

/** Who does what from when to when in a series. The next row of a role begins when the last one ends. */
public final class RoleTable extends ObjectTable<RoleAssignment> {

  private final Series series;

  /** The roles of a series. */
  public RoleTable(Desk desk, Series series) {
    super("roles", desk);
    this.series = series;
    refresh();
  }

  @Override
  protected List<RoleAssignment> find() {
    return series.getRoles();
  }

  @Override
  protected RoleAssignment begin() {
    RoleAssignment made = ModelFactory.eINSTANCE.createRoleAssignment();
    series.getRoles().add(made);
    return made;
  }

  @Override
  protected List<EntryColumn<RoleAssignment>> make() {
    return List.of(Columns.<RoleAssignment>known(desk(), "role", 1.3, Literals.ROLE_ASSIGNMENT__ROLE, "role.", Roles.KNOWN).doubting(Roles::of),
        Columns.<RoleAssignment>person(desk(), "person", 1.6, Literals.ROLE_ASSIGNMENT__PERSON).doubting(this::elsewhere),
        time("from", Literals.ROLE_ASSIGNMENT__FROM), time("until", Literals.ROLE_ASSIGNMENT__UNTIL));
  }

  private EntryColumn<RoleAssignment> time(String id, EAttribute attribute) {
    return EntryColumn.<RoleAssignment>typed(id, 1, r -> Columns.text((String) r.eGet(attribute)), typed -> {
      String clock = typed.strip().matches("\\d{3,4}") ? typed.strip().replaceFirst("(\\d{2})$", ":$1") : typed.strip();
      String whole = clock.matches("\\d:\\d{2}") ? "0" + clock : clock.replace(' ', 'T');
      return whole.isEmpty() || Roles.isTime(whole) ? Entry.of(r -> r.eSet(attribute, whole.isEmpty() ? null : whole))
          : Entry.wrong("role.time", "“" + typed + "” is no time of the clock", "write it as 09:30 or 930, or with its day as 2031-08-16 09:30");
    }).dated();
  }

  /** Whether the person is planned elsewhere at the same time. */
  private Optional<Finding> elsewhere(RoleAssignment role) {
    return Roles.overlap(series, role);
  }

  /** What is wrong with the plan as a whole, the first of it; the Checks list all. */
  @Override
  public Optional<Finding> problem() {
    return series.getRoles().isEmpty() ? Optional.empty() : Roles.of(series).stream().findFirst();
  }

  @Override
  public String summary() {
    return series.getRoles().isEmpty() ? desk().words().of("roles.none", String.join(", ", Roles.NEEDED.stream().map(r -> desk().words().of("role." + r.replace(' ', '_'))).toList()))
        : desk().words().of("roles.good");
  }
}
