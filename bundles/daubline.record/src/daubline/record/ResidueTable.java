package daubline.record;

import daubline.base.Finding;
import daubline.base.HowGot;
import daubline.base.Confidence;
import daubline.base.RecoveredTotal;
import daubline.model.EvidenceSheet;
import daubline.model.ModelFactory;
import daubline.model.ModelPackage.Literals;
import daubline.model.ResidueMass;
import daubline.model.Sheet;
import daubline.session.Readings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Residues by class: a mass, 0 for weighed and nothing found, or "not weighed" for there and not put on a scale. */
public final class ResidueTable extends ObjectTable<ResidueMass> {

  private final Supplier<Sheet> sheet;
  private final Supplier<Sheet> make;
  private final ResidueEntry residues;

  /**
   * The residues of a sheet.
   *
   * @param sheet the sheet; may say null when there is none yet
   * @param make the sheet, made when there is none; called inside a change
   */
  public ResidueTable(Desk desk, Supplier<Sheet> sheet, Supplier<Sheet> make) {
    super("residues", desk);
    this.sheet = sheet;
    this.make = make;
    residues = new ResidueEntry(desk);
    refresh();
  }

  /** The total of the classes weighed, as at least where only a share was recovered or something was not weighed. */
  @Override
  public String summary() {
    RecoveredTotal all = RecoveredTotal.sum(find().stream().map(r -> new RecoveredTotal.Part(Readings.amount(r), share(r.getSamplingFraction()), r.getConfidence() == Confidence.LOW)).toList(),
        share(sheet.get() == null ? null : sheet.get().getSamplingFraction()), !(sheet.get() instanceof EvidenceSheet));
    if (!all.total().isNumber()) {
      return "";
    }
    String number = Columns.local(desk(), all.number());
    return all.isLeast() ? desk().words().of("residues.least", number, why(all)) : desk().words().of("residues.all", number);
  }

  private String why(RecoveredTotal all) {
    List<String> why = new ArrayList<>();
    if (all.share() < 1) {
      why.add(desk().words().of("residues.share", Columns.local(desk(), all.percent())));
    } else if (Double.isNaN(all.share()) && sheet.get() instanceof EvidenceSheet) {
      why.add(desk().words().of("residues.unstated"));
    }
    if (all.doubtful()) {
      why.add(desk().words().of("residues.doubtful"));
    }
    if (all.unweighed() > 0) {
      why.add(desk().words().of("residues.unweighed", all.unweighed()));
    }
    return why.isEmpty() ? desk().words().of("residues.limit") : String.join("; ", why);
  }

  private static double share(Double stated) {
    return stated == null ? Double.NaN : stated;
  }

  @Override
  protected List<ResidueMass> find() {
    return sheet.get() == null ? List.of() : shown(sheet.get().getResidues());
  }

  @Override
  protected ResidueMass begin() {
    ResidueMass made = ModelFactory.eINSTANCE.createResidueMass();
    made.setKind(daubline.base.ValueKind.NOT_RECORDED);
    make.get().getResidues().add(made);
    return made;
  }

  @Override
  protected List<EntryColumn<ResidueMass>> make() {
    return List.of(
        EntryColumn.<ResidueMass>typed("class", 1.4, r -> r.getResidueClass() == null ? "" : Columns.text(r.getResidueClass().getName()), this::readClass)
            .offering(r -> residues.names()),
        residues.<ResidueMass>mass(1),
        Columns.<ResidueMass>whole(desk(), "count", 0.6, Literals.RESIDUE_MASS__COUNT),
        Columns.<ResidueMass, HowGot>word(desk(), "how", 0.9, Literals.READING__HOW, HowGot.values(), HowGot::word).askedWhen(r -> false),
        Columns.<ResidueMass>text("note", 1.4, Literals.READING__NOTE).askedWhen(r -> false),
        EntryColumn.<ResidueMass>typed("definition", 2.6, r -> r.getResidueClass() == null ? "" : Columns.text(r.getResidueClass().getDefinition()),
            typed -> Entry.of(r -> {
              if (r.getResidueClass() != null) {
                r.getResidueClass().setDefinition(typed.isBlank() ? null : typed);
              }
            })).askedWhen(r -> false));
  }

  private Entry<ResidueMass> readClass(String typed) {
    return Entry.of(r -> r.setResidueClass(typed.isBlank() ? null : residues.residueClass(typed)));
  }

  /** A class stands once in a sheet unless two sources say different things; and one of the study's own needs a definition. */
  @Override
  protected Optional<Finding> refusal(ResidueMass object, EntryColumn<ResidueMass> column, String text) {
    boolean twice = column.id().equals("class") && find().stream().filter(r -> r != object && r.getResidueClass() != null)
        .filter(r -> object == null || r.getCitation() == object.getCitation()).anyMatch(r -> text.strip().equalsIgnoreCase(r.getResidueClass().getName()));
    return twice ? Optional.of(Finding.error("residue.twice", "", "“" + text.strip() + "” has a row already", "change that row, or choose another class")) : Optional.empty();
  }

  /** Gives each class that has no row one, to be filled in; nothing is said about them yet. */
  public void layOut() {
    List<String> there = find().stream().filter(r -> r.getResidueClass() != null).map(r -> r.getResidueClass().getName()).toList();
    List<String> missing = residues.names().stream().filter(n -> !there.contains(n)).toList();
    if (!missing.isEmpty()) {
      desk().edit("change.layOut", "", () -> missing.forEach(name -> begin().setResidueClass(residues.residueClass(name))));
      refresh();
    }
  }
}
