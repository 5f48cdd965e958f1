package daubline.ui.study;

import daubline.base.Quantity;
import daubline.base.TrialKind;
import daubline.base.TrialStatus;
import daubline.base.ValueType;
import daubline.base.Variable.Place;
import daubline.model.Context;
import daubline.model.EvidenceSheet;
import daubline.model.ModelFactory;
import daubline.model.Named;
import daubline.model.ResidueClass;
import daubline.model.Series;
import daubline.model.Site;
import daubline.model.Study;
import daubline.model.Trial;
import daubline.model.VariableDefinition;
import daubline.session.Repeats;
import daubline.ui.Words;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.eclipse.emf.ecore.EObject;

/** Adds new objects to a study, each where it belongs: beside or under what is selected, and otherwise at the end. */
public final class Additions {

  private static final ModelFactory MAKE = ModelFactory.eINSTANCE;

  private Additions() {
  }

  /** What can be added. */
  public enum Kind { SITE, CONTEXT, EVIDENCE_SHEET, RECONSTRUCTION, FURNACE, SERIES, TRIAL, LOT, CITATION, PERSON, VARIABLE, RESIDUE_CLASS }

  /**
   * Adds an object.
   *
   * @param selected what is selected in the study; may be null
   * @return the new object
   */
  public static EObject add(OpenStudy study, Kind kind, EObject selected) {
    Study model = study.session().study();
    return switch (kind) {
      case SITE -> add(study, kind, model.getSites(), MAKE::createSite);
      case CONTEXT -> add(study, kind, null, () -> context(model, selected));
      case EVIDENCE_SHEET -> add(study, kind, null, () -> sheet(model, selected));
      case RECONSTRUCTION -> add(study, kind, model.getReconstructions(), MAKE::createReconstruction);
      case FURNACE -> add(study, kind, model.getBuilds(), MAKE::createFurnaceBuild);
      case SERIES -> add(study, kind, model.getSeries(), MAKE::createSeries);
      case TRIAL -> add(study, kind, null, () -> trial(model, selected));
      case LOT -> add(study, kind, model.getLots(), MAKE::createLot);
      case CITATION -> add(study, kind, model.getCitations(), MAKE::createCitation);
      case PERSON -> add(study, kind, model.getPeople(), MAKE::createPerson);
      case VARIABLE -> variable(study, kind);
      case RESIDUE_CLASS -> residueClass(study, kind);
    };
  }

  @SuppressWarnings("unchecked")
  private static EObject add(OpenStudy study, Kind kind, List<? extends Named> list, Supplier<? extends Named> make) {
    Named[] made = new Named[1];
    String name = Words.of(kind);
    study.edit("change.add", name, () -> {
      made[0] = make.get();
      if (list != null) {
        ((List<Named>) list).add(made[0]);
      }
      made[0].setName(free(name, siblings(made[0])));
    });
    return made[0];
  }

  @SuppressWarnings("unchecked")
  private static List<? extends Named> siblings(Named made) {
    return (List<? extends Named>) made.eContainer().eGet(made.eContainmentFeature());
  }

  /** A name with the first number that makes it the only one, counted from how many there are. */
  private static String free(String name, List<? extends Named> among) {
    return IntStream.iterate(Math.max(1, among.size()), i -> i + 1).mapToObj(i -> name + " " + i)
        .filter(n -> among.stream().noneMatch(o -> n.equals(o.getName()))).findFirst().orElseThrow();
  }

  /** A variable of the study's own begins as a number that is asked for on remains. */
  private static VariableDefinition variable(OpenStudy study, Kind kind) {
    List<VariableDefinition> all = study.session().study().getVariables();
    VariableDefinition variable = MAKE.createVariableDefinition();
    variable.setName(Words.of(kind) + " " + (all.size() + 1));
    variable.setGroup(Words.of("variable.group"));
    variable.setType(ValueType.NUMBER.name().toLowerCase(Locale.ROOT));
    variable.setQuantity(Quantity.NUMBER.name().toLowerCase(Locale.ROOT));
    variable.setStages(Place.REMAINS.name().toLowerCase(Locale.ROOT));
    study.edit("change.add", variable.getName(), () -> all.add(variable));
    return variable;
  }

  private static ResidueClass residueClass(OpenStudy study, Kind kind) {
    List<ResidueClass> all = study.session().study().getResidueClasses();
    ResidueClass added = MAKE.createResidueClass();
    added.setName(Words.of(kind) + " " + (all.size() + 1));
    study.edit("change.add", added.getName(), () -> all.add(added));
    return added;
  }

  private static Context context(Study model, EObject selected) {
    Site site = ancestor(selected, Site.class);
    return newContext(site != null ? site : model.getSites().isEmpty() ? newSite(model) : model.getSites().get(0));
  }

  /** A sheet needs a site and a context; they are made when there is none yet. */
  private static EvidenceSheet sheet(Study model, EObject selected) {
    Context context = ancestor(selected, Context.class);
    if (context == null) {
      Site site = ancestor(selected, Site.class);
      site = site != null ? site : model.getSites().isEmpty() ? newSite(model) : model.getSites().get(0);
      context = site.getContexts().isEmpty() ? newContext(site) : site.getContexts().get(0);
    }
    EvidenceSheet sheet = MAKE.createEvidenceSheet();
    context.getSheets().add(sheet);
    return sheet;
  }

  private static Site newSite(Study model) {
    Site site = MAKE.createSite();
    site.setName(Words.of(Kind.SITE));
    model.getSites().add(site);
    return site;
  }

  private static Context newContext(Site site) {
    Context context = MAKE.createContext();
    context.setName(Words.of("context.new"));
    site.getContexts().add(context);
    return context;
  }

  private static Trial trial(Study model, EObject selected) {
    Series series = series(model, selected);
    Trial trial = MAKE.createTrial();
    trial.setKind(TrialKind.EXPERIMENT);
    trial.setStatus(TrialStatus.PLANNED);
    trial.setNumber(series.getTrials().size() + 1);
    series.getTrials().add(trial);
    return trial;
  }

  private static Series series(Study model, EObject selected) {
    Series series = ancestor(selected, Series.class);
    if (series == null && model.getSeries().isEmpty()) {
      series = MAKE.createSeries();
      series.setName(Words.of(Kind.SERIES));
      model.getSeries().add(series);
    }
    return series != null ? series : model.getSeries().get(0);
  }

  /** Adds a repeat of a trial: the same plan, furnace and lots, nothing of its outcome. */
  public static Trial repeat(OpenStudy study, Trial original) {
    List<Trial> trials = ((Series) original.eContainer()).getTrials();
    String name = Words.of("repeat.of", OpenStudy.nameOf(original));
    Trial copy = Repeats.of(original, trials.stream().anyMatch(t -> name.equals(t.getName())) ? free(name, trials) : name);
    study.edit("change.add", copy.getName(), () -> trials.add(copy));
    return copy;
  }

  private static <T> T ancestor(EObject from, Class<T> type) {
    for (EObject o = from; o != null; o = o.eContainer()) {
      if (type.isInstance(o)) {
        return type.cast(o);
      }
    }
    return null;
  }
}
