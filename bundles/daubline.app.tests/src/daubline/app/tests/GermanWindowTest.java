package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import daubline.base.CatalogueWords;
import daubline.base.Variable;
import daubline.base.Variables;
import daubline.criteria.Criteria;
import daubline.engine.inference.Criterion;
import daubline.export.TableSpec;
import daubline.export.Tables;
import daubline.charts.FigureSpec;
import daubline.charts.Figures;
import daubline.model.Claim;
import daubline.model.EvidenceSheet;
import daubline.model.Study;
import daubline.ui.Words;
import daubline.ui.grid.Grid;
import daubline.ui.grid.GridModel;
import daubline.ui.study.OpenStudy;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.help.HelpSystem;
import org.eclipse.help.IContext;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** In the German window the tool speaks German, and what is typed in German is kept in English; run in the German pass. */
class GermanWindowTest {

  @BeforeEach
  void inGerman() {
    assumeTrue(Locale.getDefault().getLanguage().equals(CatalogueWords.GERMAN), "the German pass");
  }

  @AfterEach
  void clear() {
    Window.clear();
  }

  /** Every view and every page of the sheets: no text that the tool could tell in German, no English name of the catalogues. */
  @Test
  void nothingOfTheToolIsLeftInEnglish() throws Exception {
    OpenStudy study = Window.demonstration();
    Window.waitForResults(study);
    Set<String> own = own(study.session().study());
    List<String> names = names().stream().filter(n -> !own.contains(n)).toList();
    TreeSet<String> complaints = new TreeSet<>();
    new WindowWalk(study, 2).texts().forEach((where, texts) -> texts.stream().flatMap(String::lines).map(String::strip).distinct().forEach(line -> {
      boolean told = Words.said(line).equals(line) && names.stream().noneMatch(n -> line.equals(n) || line.contains(n + " ") || line.contains(n + ","));
      // conditions are typed in English; a bar is drawn, not written
      if (!told && !own.contains(line) && !line.contains("Furnace type is domed") && !line.startsWith("bar:")) {
        complaints.add(where + ": " + line);
      }
    }));
    assertEquals(List.of(), List.copyOf(complaints));
  }

  /** Names of the tool that read otherwise in German. */
  private static List<String> names() {
    return Stream.of(Variables.standard().all().stream().map(Variable::name), Criteria.all().stream().map(Criterion::name), Tables.all().stream().map(TableSpec::title),
        Figures.all().stream().map(FigureSpec::title)).flatMap(n -> n).filter(n -> n.contains(" ") && !Words.said(n).equals(n)).distinct().toList();
  }

  /** What stands in the study, and the parts of lists of it. */
  private static Set<String> own(Study study) {
    Set<String> own = new HashSet<>();
    List<EObject> all = new ArrayList<>(List.of(study));
    for (Iterator<EObject> i = study.eAllContents(); i.hasNext();) {
      all.add(i.next());
    }
    for (EObject object : all) {
      for (EAttribute attribute : object.eClass().getEAllAttributes()) {
        if (object.eGet(attribute) instanceof String text) {
          text.lines().map(String::strip).forEach(own::add);
        }
      }
    }
    return own;
  }

  /** A word of the catalogue is offered, shown and typed in German; the study holds the English one, as if that had been typed. */
  @Test
  void aWordTypedInGermanIsKeptInEnglish() throws Exception {
    OpenStudy study = Window.demonstration();
    EvidenceSheet sheet = study.session().study().getSites().get(0).getContexts().get(0).getSheets().get(0);
    Window.sheet(sheet).show("page.values");
    GridModel model = ((Grid) Window.find("values", NatTable.class).getData(Grid.GRID)).model();
    int row = 0;
    while (!model.cell(0, row).text().equals("Führung der Schlacke")) {
      row++;
    }
    assertTrue(model.choices(1, row).contains("mit Abstich"), String.valueOf(model.choices(1, row)));
    model.put(1, row, "slag tapping");
    assertEquals("mit Abstich", model.cell(1, row).text());
    Claim claim = sheet.getClaims().stream().filter(c -> "slag_management".equals(c.getVariable())).findFirst().orElseThrow();
    List<Object> english = kept(claim);
    model.put(1, row, "Schlackengrube");
    model.put(1, row, "mit Abstich");
    assertEquals("mit Abstich", model.editText(1, row));
    assertEquals("slag tapping", claim.getCategory());
    assertEquals(english, kept(claim));
    Window.waitForResults(study);
  }

  /** What F1 opens: the line about a part, and the page it leads to. */
  @Test
  void theGuideIsGermanToo() throws Exception {
    IContext context = HelpSystem.getContext("daubline.help.checks");
    assertTrue(context.getText().contains("führt zur Stelle"), context.getText());
    try (InputStream page = HelpSystem.getHelpContent(context.getRelatedTopics()[0].getHref())) {
      String text = new String(page.readAllBytes(), StandardCharsets.UTF_8);
      assertTrue(text.contains("<html lang=\"de\">"), text);
    }
  }

  /** All that a claim keeps. */
  private static List<Object> kept(Claim claim) {
    return claim.eClass().getEAllAttributes().stream().map(claim::eGet).map(value -> Optional.ofNullable(value).orElse("")).toList();
  }
}
