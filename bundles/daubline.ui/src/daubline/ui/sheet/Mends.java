package daubline.ui.sheet;

import daubline.base.DecimalSign;
import daubline.base.Finding;
import daubline.base.Plausibility;
import daubline.base.Unit;
import daubline.base.Units;
import daubline.base.Variable;
import daubline.model.Citation;
import daubline.model.Claim;
import daubline.model.DataFile;
import daubline.model.Identified;
import daubline.model.ModelFactory;
import daubline.model.ModelPackage.Literals;
import daubline.model.Named;
import daubline.model.Person;
import daubline.model.Reading;
import daubline.model.Sheet;
import daubline.model.Trial;
import daubline.session.Readings;
import daubline.session.StudyVariables;
import daubline.ui.Words;
import daubline.ui.look.Over;
import daubline.ui.prefs.Preferred;
import daubline.ui.study.Notices;
import daubline.ui.study.OpenStudy;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;

/**
 * What can be done at once about a finding. Each mend is one named change that undo takes back, and says before what it
 * will do; where a person has to decide something it is asked. Nothing is mended by itself.
 */
public final class Mends {

  private static final int MOST = 6;

  private final OpenStudy study;
  private final Finding finding;
  private final List<Mend> found = new ArrayList<>();

  /**
   * One thing that can be done.
   *
   * @param label what it does
   */
  public record Mend(String label, Runnable action) {
  }

  private Mends(OpenStudy study, Finding finding) {
    this.study = study;
    this.finding = finding;
  }

  /** What can be done about a finding of a study; empty where it has to be mended by hand. */
  public static List<Mend> of(OpenStudy study, Finding finding) {
    Mends mends = new Mends(study, finding);
    if (!study.session().isReadOnly() && study.blind().isEmpty()) {
      study.session().find(finding.subject(), Identified.class).ifPresent(mends::look);
    }
    return mends.found;
  }

  private void look(Identified subject) {
    switch (finding.code()) {
      case "value.implausible" -> units((Reading) subject);
      case "value.differs" -> again((Reading) subject);
      case "claims.several", "claims.picks" -> picks((Claim) subject);
      case "claims.reason" -> say(subject, Literals.READING__PICKED_BECAUSE);
      case "preserved.reason" -> say(subject, Literals.CLAIM__LIMIT_BECAUSE);
      case "trial.excluded" -> say(subject, Literals.TRIAL__EXCLUDED_BECAUSE);
      case "trial.repeat" -> repeats((Trial) subject);
      case "origin.none" -> origins((Claim) subject);
      case "name.none", "name.twice", "name.alike" -> say(subject, Literals.NAMED__NAME);
      case "file.missing" -> files((DataFile) subject);
      default -> {
        // mended by hand, where Enter goes
      }
    }
  }

  private void add(String label, Runnable action) {
    found.add(new Mend(label, action));
  }

  private Optional<Variable> variable() {
    return StudyVariables.of(study.session().study()).find(finding.variable());
  }

  private void units(Reading reading) {
    variable().ifPresent(v -> {
      Unit typedIn = Units.find(v.quantity(), Shown.text(reading.getUnit())).orElse(v.unit());
      Plausibility.meant(v, Readings.amount(reading), typedIn).stream().filter(u -> !u.symbol().isEmpty() && reading.getTyped() != null).limit(MOST)
          .forEach(u -> read(reading, v, u.symbol(), Words.of("mend.unit", reading.getTyped(), u.symbol())));
    });
  }

  private void again(Reading reading) {
    variable().filter(v -> reading.getTyped() != null)
        .ifPresent(v -> read(reading, v, Shown.text(reading.getUnit()), Words.of("mend.again", reading.getTyped(), Shown.text(reading.getUnit()))));
  }

  /** Offers to read the typed text again in a unit; with the other decimal sign where it cannot be read with the preferred one. */
  private void read(Reading reading, Variable variable, String unit, String label) {
    String typed = reading.getTyped();
    Stream.concat(Stream.of(Preferred.decimal()), Stream.of(DecimalSign.values())).filter(sign -> isRead(variable, typed, unit, sign)).findFirst()
        .ifPresent(sign -> add(label, () -> study.edit("change.value", variable.name(), () -> Readings.put(reading, variable, typed, unit, sign))));
  }

  private static boolean isRead(Variable variable, String typed, String unit, DecimalSign sign) {
    return Readings.put(ModelFactory.eINSTANCE.createReading(), variable, typed, unit, sign).isEmpty();
  }

  private void picks(Claim first) {
    variable().filter(v -> first.eContainer() instanceof Sheet).ifPresent(v -> ((Sheet) first.eContainer()).getClaims().stream()
        .filter(c -> v.id().equals(c.getVariable())).limit(MOST)
        .forEach(c -> add(Words.of("mend.pick", Shown.amount(c, v), Shown.origin(c)), () -> ask(Words.of("feature.pickedBecause"), "", why ->
            study.edit("change.value", v.name(), () -> {
              Readings.pick(c, true);
              c.setPickedBecause(why);
            })))));
  }

  private void say(Identified subject, EAttribute attribute) {
    String label = Words.of("feature." + attribute.getName());
    Object before = subject.eGet(attribute);
    add(Words.of("mend.say", label), () -> ask(label, before == null ? "" : before.toString(), text ->
        study.edit("change.field", label, () -> subject.eSet(attribute, text))));
  }

  private void repeats(Trial trial) {
    study.session().study().getSeries().stream().flatMap(s -> s.getTrials().stream()).filter(t -> t != trial && t.getBuild() != null && Objects.equals(t.getReconstruction(), trial.getReconstruction()))
        .limit(MOST).forEach(t -> add(Words.of("mend.repeat", OpenStudy.nameOf(t)), () -> study.edit("change.field", Words.of("feature.repeatOf"), () -> trial.setRepeatOf(t))));
  }

  private void origins(Claim claim) {
    Stream<Named> citations = study.session().study().getCitations().stream().map(Named.class::cast).limit(MOST);
    Stream<Named> people = study.session().study().getPeople().stream().map(Named.class::cast).limit(MOST);
    Stream.concat(citations, people).forEach(o -> add(Words.of(o instanceof Citation ? "mend.citation" : "mend.person", OpenStudy.nameOf(o)),
        () -> study.edit("change.value", variable().map(Variable::name).orElse(""), () -> {
          if (o instanceof Citation citation) {
            claim.setCitation(citation);
          } else {
            claim.setBy((Person) o);
          }
        })));
  }

  private void files(DataFile file) {
    add(Words.of("mend.file"), () -> {
      FileDialog dialog = new FileDialog(Over.shell(), SWT.OPEN);
      dialog.setFilterPath(study.folder().toString());
      String chosen = dialog.open();
      if (chosen != null) {
        moved(file, Path.of(chosen).toAbsolutePath().normalize());
      }
    });
  }

  private void moved(DataFile file, Path now) {
    if (now.startsWith(study.folder())) {
      String path = study.folder().relativize(now).toString().replace('\\', '/');
      study.edit("change.field", Words.of("mend.file.where"), () -> file.setPath(path));
    } else {
      Notices.show(Words.of("mend.file.outside", now.getFileName()), Words.of("mend.file.outside.remedy", file.getPath()));
    }
  }

  private static void ask(String label, String before, Consumer<String> then) {
    InputDialog dialog = new InputDialog(Over.shell(), Words.of("mend.title"), label, before, text -> text.isBlank() ? "" : null);
    if (dialog.open() == Window.OK) {
      then.accept(dialog.getValue().strip());
    }
  }
}
