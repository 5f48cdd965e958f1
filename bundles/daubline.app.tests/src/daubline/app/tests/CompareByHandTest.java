package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;

import daubline.ui.compare.Selection;
import daubline.ui.grid.Grid;
import daubline.ui.study.OpenStudy;
import daubline.ui.views.FigureCanvas;
import java.util.Arrays;
import java.util.stream.Collectors;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** From an empty study to a ranking that is understood and weighted, by keys and mouse alone: the work of the perspective Compare. */
class CompareByHandTest {

  private static final double INNER = Math.sqrt(10 * 10 + 5 * 5 + 20 * 20);
  private static final double OUTER = Math.sqrt(20 * 20 + 5 * 5 + 50 * 50);
  private static final int LEAST_HEIGHT = 100;

  @AfterEach
  void clear() throws Exception {
    Selection.set(null);
    Window.clear();
    Hands.forget("compare-by-hand");
  }

  @Test
  void twoTrialsAreRankedExplainedAndWeighted() throws Exception {
    Person.acts(() -> {
      OpenStudy study = Hands.begin("Compare by Hand");
      byte[] empty = Hands.file(study);
      Scene.evidence();
      Scene.trial("Inner", "288 ± 5 mm", "560 ± 5 mm");
      Scene.trial("Outer", "340 ± 5 mm", "482 ± 5 mm");
      Hands.perspective("Compare");
      Person.await("results", study::isSettled);
      Person.await("the first place", () -> trialAt(0).equals("Inner") && trialAt(1).equals("Outer"));
      reasons();
      weighted(study);
      besides();
      Hands.undoneAndDoneAgain(study, empty);
    });
  }

  private static String trialAt(int place) {
    return ((Grid) Window.find("ranking", NatTable.class).getData(Grid.GRID)).model().cell(1, place).text();
  }

  /** Combined standard uncertainties: of the report, of the trial and the tolerance of the criterion, as stands in Weights. */
  private static void reasons() {
    Mouse.cell(Hands.grid("pairs"), 1, 0);
    NatTable reasons = Hands.grid("reasons");
    Person.await("the reasons", () -> Hands.rowWith((Grid) reasons.getData(Grid.GRID), "Base external diameter") == 1);
    assertEquals((288 - 285) / INNER, difference(reasons, 0), 0.051);
    assertEquals((560 - 480) / OUTER, difference(reasons, 1), 0.051);
    Mouse.cell(reasons, 2, 1);
    Tree from = Hands.seen("wherefrom", Tree.class);
    Person.await("where the number is from", () -> texts(from.getItems()).contains("480 ± 20 mm") && texts(from.getItems()).contains("Quern"));
  }

  private static String texts(TreeItem[] items) {
    return Arrays.stream(items).map(i -> i.getText() + "\n" + texts(i.getItems())).collect(Collectors.joining("\n"));
  }

  private static double difference(NatTable reasons, int row) {
    return Double.parseDouble(Person.see(() -> ((Grid) reasons.getData(Grid.GRID)).model().cell(4, row).text()));
  }

  /** With ninefold weight on the outer diameter the other trial comes first; agreements are geometric means of exp(−d²/2), within a draw's reach. */
  private static void weighted(OpenStudy study) {
    Hands.tab("Weights");
    NatTable weights = Hands.grid("weights");
    Hands.cell(weights, "Base external diameter: weight", "Value");
    Keys.cells(weights, "9");
    Person.await("the other in the first place", () -> study.isSettled() && trialAt(0).equals("Outer"));
    assertEquals(agreement((340 - 285) / INNER, (482 - 480) / OUTER), agreementAt(0), 5);
    assertEquals(agreement((288 - 285) / INNER, (560 - 480) / OUTER), agreementAt(1), 5);
  }

  private static double agreement(double inner, double outer) {
    return 100 * Math.exp(-(inner * inner + 9 * outer * outer) / 2 / 10);
  }

  private static double agreementAt(int place) {
    return Double.parseDouble(Person.see(() -> ((Grid) Window.find("ranking", NatTable.class).getData(Grid.GRID)).model().cell(2, place).text()).split(" ")[0]);
  }

  private static void besides() {
    Hands.tab("Side by Side");
    FigureCanvas section = Hands.seen("figure-canvas", FigureCanvas.class);
    Person.await("one section over the other", () -> section.getSize().y > LEAST_HEIGHT);
    Combo choice = Hands.seen("beside", Combo.class);
    String last = Person.see(() -> choice.getItem(choice.getItemCount() - 1));
    Hands.choose("beside", last);
  }
}
