package daubline.intake;

import daubline.base.ResidueKinds;
import daubline.model.Citation;
import daubline.model.Context;
import daubline.model.EvidenceSheet;
import daubline.model.Identified;
import daubline.model.Lot;
import daubline.model.ModelFactory;
import daubline.model.Named;
import daubline.model.Person;
import daubline.model.RemainsSheet;
import daubline.model.ResidueClass;
import daubline.model.Series;
import daubline.model.Sheet;
import daubline.model.Site;
import daubline.model.Trial;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.eclipse.emf.ecore.EObject;

/** Finds what a row refers to by id or name, and makes what a row may bring along: people, sites, sheets, series. */
final class Finder {

  private static final ModelFactory NEW = ModelFactory.eINSTANCE;

  private final Row row;
  private final Draft draft;

  Finder(Row row, Draft draft) {
    this.row = row;
    this.draft = draft;
  }

  private static <T extends EObject> Optional<T> in(List<T> all, String wanted) {
    Optional<T> exact = all.stream().filter(o -> wanted.equals(((Identified) o).getId())).findFirst()
        .or(() -> all.stream().filter(o -> wanted.equals(name(o))).findFirst());
    if (exact.isPresent()) {
      return exact;
    }
    String key = Heading.key(wanted);
    return all.stream().filter(o -> key.equals(Heading.key(name(o)))).findFirst();
  }

  private static String name(EObject object) {
    String name = object instanceof Named named ? named.getName() : object instanceof ResidueClass kind ? kind.getName() : null;
    return name == null ? "" : name;
  }

  private static List<String> names(List<? extends EObject> all) {
    return all.stream().map(Finder::name).filter(n -> !n.isEmpty()).distinct().toList();
  }

  private <T extends Named> T bring(List<T> all, String name, Supplier<T> make) {
    return in(all, name).orElseGet(() -> {
      T made = draft.tally().fresh(make.get());
      made.setName(name);
      all.add(made);
      return made;
    });
  }

  /** A person by name, new when unknown; null when the cell is empty. */
  Person person(String column) {
    return row.has(column) ? person(column, row.text(column)) : null;
  }

  List<Person> people(String column) {
    return row.names(column).stream().map(name -> person(column, name)).toList();
  }

  private Person person(String column, String name) {
    if (in(draft.study().getPeople(), name).isEmpty()) {
      row.note("person.new", column, "“" + name
          + "” is new and is added to the people of the study, without consent to be named in public",
          "set the consent in the study when it was given");
    }
    return bring(draft.study().getPeople(), name, NEW::createPerson);
  }

  /** A citation by key, new when unknown; null when the cell is empty. */
  Citation citation() {
    String key = row.text("citation");
    if (key.isEmpty()) {
      return null;
    }
    Optional<Citation> known = in(draft.study().getCitations(), key);
    if (known.isEmpty()) {
      row.warning("citation.new", "citation", "“" + key + "” is no citation of the study; it is added with its key alone",
          Nearest.remedy(key, names(draft.study().getCitations()), "import the citations too, or complete it in the study"));
    }
    return known.orElseGet(() -> {
      Citation made = bring(draft.study().getCitations(), key, NEW::createCitation);
      draft.giveId(made, key);
      return made;
    });
  }

  /** The series of a row, new when unknown; the only one of the study when the cell is empty. Null when neither helps. */
  Series series() {
    List<Series> all = draft.study().getSeries();
    if (!row.has("series") && all.size() == 1) {
      return all.get(0);
    }
    String name = row.must("series");
    return name.isEmpty() ? null : bring(all, name, NEW::createSeries);
  }

  /** The trial that a column names by id or name; an error is noted and null given when there is none. */
  Trial trial(String column) {
    String wanted = row.text(column);
    List<Trial> all = draft.study().getSeries().stream()
        .filter(s -> !row.has("series") || in(List.of(s), row.text("series")).isPresent()).flatMap(s -> s.getTrials()
        .stream()).toList();
    List<Trial> found = all.stream().filter(t -> wanted.equals(t.getId())
        || Heading.key(wanted).equals(Heading.key(name(t)))).toList();
    if (found.isEmpty()) {
      row.error("trial.unknown", column, "there is no trial “" + wanted + "”", Nearest.remedy(wanted, names(all),
          "import the trials first, or mend the name"));
    } else if (found.size() > 1) {
      row.error("trial.ambiguous", column, "“" + wanted + "” is the name of " + found.size() + " trials",
          "add a column “series”, or name the trial by its id");
    }
    return found.size() == 1 ? found.get(0) : null;
  }

  /** A lot by id or name; an error is noted and null given when there is none or the cell is empty. */
  Lot lot(String column) {
    return row.has(column) ? lot(column, row.text(column)) : null;
  }

  List<Lot> lots(String column) {
    return row.names(column).stream().map(name -> lot(column, name)).filter(l -> l != null).toList();
  }

  private Lot lot(String column, String name) {
    return required(draft.study().getLots(), column, name, "lot");
  }

  /** Something that a row may refer to, but not bring along; an error is noted and null given when there is none. */
  <T extends EObject> T required(List<T> all, String column, String name, String what) {
    Optional<T> found = in(all, name);
    if (found.isEmpty()) {
      row.error(what + ".unknown", column, "there is no " + what + " “" + name + "”",
          Nearest.remedy(name, names(all), "import it first, or mend the name"));
    }
    return found.orElse(null);
  }

  /** Something a row may bring along by its name. */
  <T extends Named> T brought(List<T> all, String column, Supplier<T> make) {
    return row.has(column) ? bring(all, row.text(column), make) : null;
  }

  /** The sheet a row speaks of: the remains of a trial, or an evidence sheet; null with an error when the row names none. */
  Sheet sheet() {
    if (row.has("trial")) {
      Trial trial = trial("trial");
      return trial == null ? null : remains(trial);
    }
    if (row.has("sheet") && draft.find(row.text("sheet")).orElse(null) instanceof EvidenceSheet known) {
      return known;
    }
    return row.must("site").isEmpty() || row.must("sheet").isEmpty() ? null : evidence();
  }

  RemainsSheet remains(Trial trial) {
    if (trial.getRemains() == null) {
      RemainsSheet remains = draft.tally().fresh(NEW.createRemainsSheet());
      remains.setName("Remains of " + name(trial));
      trial.setRemains(remains);
    }
    return trial.getRemains();
  }

  private EvidenceSheet evidence() {
    Site site = bring(draft.study().getSites(), row.text("site"), NEW::createSite);
    String wanted = row.text("sheet");
    List<EvidenceSheet> all = new ArrayList<>();
    site.getContexts().stream().filter(c -> !row.has("context")
        || in(List.of(c), row.text("context")).isPresent()).forEach(c -> all.addAll(c.getSheets()));
    Optional<EvidenceSheet> known = in(all, wanted);
    return known.orElseGet(() -> {
      String context = row.has("context") ? row.text("context") : "Not stated";
      Context home = bring(site.getContexts(), context, NEW::createContext);
      return bring(home.getSheets(), wanted, NEW::createEvidenceSheet);
    });
  }

  /** A residue class by id or name: the study's, or one of those every study may use; null with an error when there is none. */
  ResidueClass residueClass() {
    String wanted = row.must("class");
    if (wanted.isEmpty()) {
      return null;
    }
    List<ResidueClass> known = draft.study().getResidueClasses();
    return in(known, wanted).orElseGet(() -> ResidueKinds.standard().stream()
        .filter(k -> k.id().equals(wanted) || Heading.key(k.name()).equals(Heading.key(wanted))).findFirst().map(this::adopt)
        .orElseGet(() -> unknownClass(wanted)));
  }

  private ResidueClass adopt(ResidueKinds.Kind kind) {
    ResidueClass made = draft.tally().fresh(NEW.createResidueClass());
    draft.giveId(made, kind.id());
    made.setName(kind.name());
    made.setDefinition(kind.definition());
    made.setSource(kind.source());
    draft.study().getResidueClasses().add(made);
    return made;
  }

  private ResidueClass unknownClass(String wanted) {
    List<String> names = new ArrayList<>(names(draft.study().getResidueClasses()));
    ResidueKinds.standard().forEach(k -> names.add(k.name()));
    row.error("class.unknown", "class", "there is no residue class “" + wanted + "”",
        Nearest.remedy(wanted, names, "add the class with its definition to the study first"));
    return null;
  }
}
