package daubline.record;

import daubline.base.Finding;
import daubline.model.Hazard;
import daubline.model.ModelFactory;
import daubline.model.ModelPackage.Literals;
import daubline.model.Study;
import daubline.session.team.Readiness;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;

/** The risk assessment: what can hurt whom, what is done against it, who answers for that, and when it is looked at again. */
public final class HazardTable extends ObjectTable<Hazard> {

  private final Supplier<LocalDate> today;

  /** The hazards of the study. */
  public HazardTable(Desk desk, Supplier<LocalDate> today) {
    super("hazards", desk);
    this.today = today;
    refresh();
  }

  private Study study() {
    return desk().session().study();
  }

  @Override
  protected List<Hazard> find() {
    return study().getHazards();
  }

  @Override
  protected Hazard begin() {
    Hazard made = ModelFactory.eINSTANCE.createHazard();
    study().getHazards().add(made);
    return made;
  }

  @Override
  protected List<EntryColumn<Hazard>> make() {
    return List.of(Columns.<Hazard>text("name", 1.4, Literals.NAMED__NAME).doubting(h -> finding(h).filter(f -> !f.code().equals("hazard.review"))),
        Columns.<Hazard>text("who", 1.2, Literals.HAZARD__WHO),
        Columns.<Hazard>text("control", 2.6, Literals.HAZARD__CONTROL),
        Columns.<Hazard>text("owner", 1, Literals.HAZARD__OWNER).offering(h -> study().getPeople().stream().map(p -> Columns.text(p.getName())).toList()),
        Columns.<Hazard>date("reviewOn", 0.9, Literals.HAZARD__REVIEW_ON).doubting(h -> finding(h).filter(f -> f.code().equals("hazard.review"))),
        Columns.<Hazard>text("notApplicable", 1.4, Literals.HAZARD__NOT_APPLICABLE_BECAUSE).askedWhen(h -> false));
  }

  private Optional<Finding> finding(Hazard hazard) {
    return Readiness.of(hazard, today.get().toString());
  }

  /** The frame of everything said about safety; the first that is due instead. */
  @Override
  public String summary() {
    return desk().words().of("print.safety");
  }

  @Override
  public Optional<Finding> problem() {
    return find().stream().filter(Objects::nonNull).flatMap(h -> finding(h).stream()).findFirst();
  }
}
