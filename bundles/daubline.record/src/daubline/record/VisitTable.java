package daubline.record;

import daubline.base.Finding;
import daubline.base.Variable;
import daubline.model.Claim;
import daubline.model.ModelFactory;
import daubline.model.ModelPackage.Literals;
import daubline.model.Person;
import daubline.model.RemainsSheet;
import daubline.model.Trial;
import daubline.model.Visit;
import daubline.session.Visits;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** The visits to a furnace that is left to decay: planned, made, missed with the reason, and how the watching ended. */
public final class VisitTable extends ObjectTable<Visit> {

  private static final List<String> OBSERVED = List.of("surviving_height", "wall_thickness", "base_internal_diameter", "vitrified_height", "disturbance");

  private final Trial trial;
  private final Supplier<LocalDate> today;

  /** The visits to what a trial left. */
  public VisitTable(Desk desk, Trial trial, Supplier<LocalDate> today) {
    super("visits", desk);
    this.trial = trial;
    this.today = today;
    refresh();
  }

  @Override
  protected List<Visit> find() {
    return trial.getVisits();
  }

  @Override
  protected Visit begin() {
    Visit made = ModelFactory.eINSTANCE.createVisit();
    Visits.next(trial).ifPresent(day -> made.setDueOn(day.toString()));
    trial.getVisits().add(made);
    return made;
  }

  @Override
  protected List<EntryColumn<Visit>> make() {
    List<EntryColumn<Visit>> columns = new java.util.ArrayList<>(List.of(Columns.<Visit>date("dueOn", 0.9, Literals.VISIT__DUE_ON),
        Columns.<Visit>date("visitedOn", 0.9, Literals.VISIT__VISITED_ON).doubting(VisitTable::twice), person(),
        EntryColumn.shown("state", 0.8, this::state)));
    OBSERVED.forEach(v -> columns.add(value(desk().variables().get(v))));
    columns.add(Columns.<Visit>text("notVisitedBecause", 1.3, Literals.VISIT__NOT_VISITED_BECAUSE).askedWhen(v -> v == null || v.getVisitedOn() == null));
    columns.add(Columns.<Visit>text("endedBecause", 1.3, Literals.VISIT__ENDED_BECAUSE).askedWhen(v -> false));
    columns.add(Columns.<Visit>text("note", 1.3, Literals.NAMED__NOTE).askedWhen(v -> false));
    return columns;
  }

  private static Optional<Finding> twice(Visit visit) {
    boolean both = visit.getVisitedOn() != null && visit.getNotVisitedBecause() != null;
    return both ? Optional.of(Finding.warning("visit.both", "", "visited, and not visited because: " + visit.getNotVisitedBecause(), "take one of the two out")) : Optional.empty();
  }

  private String state(Visit visit) {
    return desk().words().of("visits.state." + Visits.state(trial, visit, today.get()).name().toLowerCase(Locale.ROOT));
  }

  private RemainsSheet remains(Visit visit) {
    if (visit.getRemains() == null) {
      visit.setRemains(ModelFactory.eINSTANCE.createRemainsSheet());
    }
    return visit.getRemains();
  }

  private EntryColumn<Visit> person() {
    return EntryColumn.<Visit>typed("by", 0.9, v -> v.getRemains() == null || v.getRemains().getRecordedBy() == null ? "" : Columns.text(v.getRemains().getRecordedBy().getName()),
        typed -> Entry.of(v -> {
          Person person = typed.isBlank() ? null : Columns.person(desk().session().study(), typed);
          if (person != null || v.getRemains() != null) {
            remains(v).setRecordedBy(person);
          }
        })).offering(v -> desk().session().study().getPeople().stream().map(p -> Columns.text(p.getName())).toList());
  }

  /** A value is a claim of the remains sheet of the visit, as though the ruin were dug up that day. */
  private EntryColumn<Visit> value(Variable variable) {
    return EntryColumn.<Visit>typed(variable.id(), 0.9, v -> claim(v, variable).map(c -> Columns.print(desk(), c, variable)).orElse(""),
        typed -> Columns.value(desk(), variable, typed, (v, change) -> {
          if (change == null) {
            claim(v, variable).ifPresent(c -> EcoreUtil.delete(c, true));
          } else {
            change.accept(claim(v, variable).orElseGet(() -> {
              Claim made = ModelFactory.eINSTANCE.createClaim();
              remains(v).getClaims().add(made);
              return made;
            }));
          }
        })).offering(v -> Columns.offered(desk(), variable)).doubting(v -> claim(v, variable).flatMap(c -> Columns.odd(c, variable)))
        .askedWhen(v -> v == null || v.getVisitedOn() != null);
  }

  private static Optional<Claim> claim(Visit visit, Variable variable) {
    return visit.getRemains() == null ? Optional.empty() : visit.getRemains().getClaims().stream().filter(c -> variable.id().equals(c.getVariable())).findFirst();
  }

  /** What is due in the whole study by today. */
  @Override
  public String summary() {
    String due = Visits.of(desk().session().study(), today.get()).stream().filter(p -> p.state() == Visits.State.DUE)
        .map(p -> Columns.text(p.trial().getName()) + " " + p.visit().getDueOn()).collect(Collectors.joining(", "));
    String ended = Visits.ended(trial).map(v -> desk().words().of("visits.ended", v.getEndedBecause()) + " ").orElse("");
    return ended + (due.isEmpty() ? desk().words().of("visits.nothing") : desk().words().of("visits.due", due));
  }
}
