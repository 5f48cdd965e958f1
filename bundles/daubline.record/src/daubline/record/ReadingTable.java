package daubline.record;

import daubline.base.Confidence;
import daubline.base.DecimalSign;
import daubline.base.Finding;
import daubline.base.HowGot;
import daubline.base.Numbers;
import daubline.base.Variable;
import daubline.model.Citation;
import daubline.model.Claim;
import daubline.model.EvidenceSheet;
import daubline.model.ModelFactory;
import daubline.model.ModelPackage.Literals;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.eclipse.emf.ecore.EObject;

/** What a publication claims, over all evidence sheets, in the order in which it is read; a new claim goes to the sheet of the one before. */
public final class ReadingTable extends ObjectTable<Claim> {

  private final Citation citation;
  private final OwnVariable variables;
  private final List<Claim> order = new ArrayList<>();

  /** The claims of a citation. */
  public ReadingTable(Desk desk, Citation citation) {
    super("claims", desk);
    this.citation = citation;
    variables = new OwnVariable(desk, v -> v.isAt(Variable.Place.REMAINS));
    refresh();
  }

  /** Those found before keep their places, so that a claim moved to another sheet stays in its row. */
  @Override
  protected List<Claim> find() {
    List<Claim> now = all(Claim.class).stream().filter(c -> c.getCitation() == citation).toList();
    order.retainAll(now);
    now.stream().filter(c -> !order.contains(c)).forEach(order::add);
    return order;
  }

  private <T extends EObject> List<T> all(Class<T> type) {
    List<T> found = new ArrayList<>();
    for (Iterator<EObject> all = desk().session().study().eAllContents(); all.hasNext();) {
      EObject object = all.next();
      if (type.isInstance(object)) {
        found.add(type.cast(object));
      }
    }
    return found;
  }

  private Optional<EvidenceSheet> sheet() {
    List<EvidenceSheet> sheets = order.stream().map(EObject::eContainer).filter(EvidenceSheet.class::isInstance).map(EvidenceSheet.class::cast).toList();
    return sheets.isEmpty() ? all(EvidenceSheet.class).stream().findFirst() : Optional.of(sheets.get(sheets.size() - 1));
  }

  @Override
  protected Claim begin() {
    Claim made = ModelFactory.eINSTANCE.createClaim();
    made.setCitation(citation);
    made.setHow(HowGot.READ_FROM_REPORT);
    sheet().orElseThrow().getClaims().add(made);
    return made;
  }

  @Override
  protected List<EntryColumn<Claim>> make() {
    return List.of(variables.property(1.7), variables.value(1.1, c -> c), Columns.<Claim>text("page", 0.7, Literals.READING__PAGE),
        Columns.<Claim, Confidence>word(desk(), "confidence", 0.8, Literals.READING__CONFIDENCE, Confidence.values(), Confidence::word),
        EntryColumn.typed("fraction", 0.7, this::fraction, this::readFraction), Columns.<Claim>text("verbatim", 1.3, Literals.READING__VERBATIM),
        EntryColumn.<Claim>typed("sheet", 1.2, c -> c.eContainer() instanceof EvidenceSheet s ? Columns.text(s.getName()) : "", this::readSheet)
            .offering(c -> all(EvidenceSheet.class).stream().map(s -> Columns.text(s.getName())).toList()).askedWhen(c -> false));
  }

  private String fraction(Claim claim) {
    return claim.getSamplingFraction() == null ? "" : Columns.plain(desk(), 100 * claim.getSamplingFraction()) + " %";
  }

  private Entry<Claim> readFraction(String typed) {
    boolean percent = typed.endsWith("%");
    DecimalSign sign = desk().decimal().get();
    Optional<Double> number = Numbers.parse(typed.replace("%", "").strip(), sign).map(n -> percent ? n / 100 : n).filter(n -> n > 0 && n <= 1);
    return typed.isBlank() || number.isPresent() ? Entry.of(c -> c.setSamplingFraction(number.orElse(null)))
        : Entry.wrong("number.bounds", "“" + typed + "” is no share of the whole", "write it as 0" + sign.sign() + "5 or 50 %, above 0 and up to 1");
  }

  private Entry<Claim> readSheet(String typed) {
    Optional<EvidenceSheet> meant = all(EvidenceSheet.class).stream().filter(s -> typed.equalsIgnoreCase(Columns.text(s.getName())) || typed.equals(s.getId())).findFirst();
    return meant.map(s -> Entry.<Claim>of(c -> s.getClaims().add(c)))
        .orElseGet(() -> Entry.wrong("name.unknown", "no evidence sheet is called “" + typed + "”", "choose one of the list, or add the sheet first"));
  }

  @Override
  protected Optional<Finding> refusal(Claim object, EntryColumn<Claim> column, String text) {
    if (object == null && sheet().isEmpty()) {
      return Optional.of(Finding.error("sheet.none", "", "there is no evidence sheet yet to hold a claim", "add an evidence sheet first"));
    }
    return column.id().equals("value") ? variables.refusal(object, text) : Optional.empty();
  }
}
