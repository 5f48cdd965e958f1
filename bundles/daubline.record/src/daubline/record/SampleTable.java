package daubline.record;

import daubline.base.Finding;
import daubline.base.LookAlike;
import daubline.base.Material;
import daubline.model.ModelFactory;
import daubline.model.ModelPackage.Literals;
import daubline.model.Piece;
import daubline.model.Sample;
import daubline.model.Series;
import daubline.model.Trial;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The sample register of a trial: a label stands once in the whole study, and one easily taken for another is flagged. */
public final class SampleTable extends ObjectTable<Sample> {

  private final Trial trial;

  /** The samples of a trial. */
  public SampleTable(Desk desk, Trial trial) {
    super("samples", desk);
    this.trial = trial;
    refresh();
  }

  @Override
  protected List<Sample> find() {
    return shown(trial.getSamples());
  }

  @Override
  protected Sample begin() {
    Sample made = ModelFactory.eINSTANCE.createSample();
    made.setName(nextLabel());
    trial.getSamples().add(made);
    return made;
  }

  /** The next label that is free in the study and looks like no other: the trial's name and S with a number. */
  public String nextLabel() {
    String stem = Columns.text(desk().session().nameOf(trial)).replaceAll("[^\\p{L}\\p{N}]+", "-").replaceAll("^-|-$", "");
    int number = trial.getSamples().size() + 1;
    String label = stem + "-S" + number;
    while (isTaken(label, null)) {
      label = stem + "-S" + ++number;
    }
    return label;
  }

  private boolean isTaken(String label, Sample except) {
    return others(except).stream().anyMatch(s -> LookAlike.of(Columns.text(s.getName())).equals(LookAlike.of(label)));
  }

  private List<Sample> others(Sample except) {
    List<Sample> all = new ArrayList<>();
    for (Series series : desk().session().study().getSeries()) {
      series.getTrials().forEach(t -> all.addAll(t.getSamples()));
    }
    all.remove(except);
    return all;
  }

  @Override
  protected List<EntryColumn<Sample>> make() {
    return List.of(
        Columns.<Sample>text("name", 1.2, Literals.NAMED__NAME).doubting(this::alike),
        Columns.<Sample, Material>word(desk(), "material", 0.9, Literals.SAMPLE__MATERIAL, Material.values(), Material::word),
        Columns.<Sample, Piece>named("piece", 1, Literals.SAMPLE__PIECE, Piece.class, this::pieces),
        Columns.<Sample>text("question", 2, Literals.SAMPLE__QUESTION),
        Columns.<Sample>date("takenOn", 1, Literals.SAMPLE__TAKEN_ON),
        Columns.<Sample>text("storedAt", 1.2, Literals.SAMPLE__STORED_AT),
        Columns.<Sample>text("holder", 1.1, Literals.SAMPLE__HOLDER),
        Columns.<Sample>text("note", 1.4, Literals.NAMED__NOTE).askedWhen(s -> false));
  }

  private List<Piece> pieces() {
    List<Piece> all = new ArrayList<>();
    trial.eAllContents().forEachRemaining(o -> {
      if (o instanceof Piece p) {
        all.add(p);
      }
    });
    return shown(all);
  }

  private Optional<Finding> alike(Sample sample) {
    return others(sample).stream().filter(s -> LookAlike.of(Columns.text(s.getName())).equals(LookAlike.of(Columns.text(sample.getName())))).findFirst()
        .map(s -> Finding.warning("name.alike", "", "“" + sample.getName() + "” and “" + s.getName() + "” are easily taken for each other", "rename one"));
  }

  /** Two samples never get the same label. */
  @Override
  protected Optional<Finding> refusal(Sample sample, EntryColumn<Sample> column, String text) {
    boolean twice = column.id().equals("name") && others(sample).stream().anyMatch(s -> text.strip().equalsIgnoreCase(Columns.text(s.getName())));
    boolean none = column.id().equals("name") && text.isBlank();
    return twice ? Optional.of(Finding.error("name.twice", "", "a sample of the study is labelled “" + text.strip() + "” already", "give this one a label of its own, such as " + nextLabel()))
        : none ? Optional.of(Finding.error("name.none", "", "a sample without label cannot be found again", "give it one, or take the row out")) : Optional.empty();
  }
}
