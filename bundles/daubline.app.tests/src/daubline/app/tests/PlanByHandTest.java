package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.Basis;
import daubline.base.TrialStatus;
import daubline.model.Reconstruction;
import daubline.model.Series;
import daubline.model.Study;
import daubline.model.Trial;
import daubline.ui.grid.Grid;
import daubline.ui.look.Passage;
import daubline.ui.study.OpenStudy;
import java.util.HashSet;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** From an empty study to a planned, supplied trial that may be lit, by keys and mouse alone: the work of the perspective Plan. */
class PlanByHandTest {

  @AfterEach
  void clear() throws Exception {
    Window.clear();
    Hands.forget("plan-by-hand");
  }

  @Test
  void aSeriesIsPlannedSuppliedAndMadeReady() throws Exception {
    Person.acts(() -> {
      OpenStudy study = Hands.begin("Plan by Hand");
      byte[] empty = Hands.file(study);
      Study model = Hands.model(study);
      Hands.perspective("Plan");
      hypothesis(model);
      ore();
      charcoal();
      Series series = series(study);
      Trial trial = series.getTrials().get(0);
      ready(trial);
      charge();
      before();
      Hands.undoneAndDoneAgain(study, empty);
    });
  }

  /** What is chosen is drawn at once; without a basis it counts as guessed. */
  private static void hypothesis(Study model) {
    Hands.menu("Trial", "New Reconstruction");
    Label caption = Hands.seen("sectionCaption", Label.class);
    choose("Base internal diameter", "30 cm", "evidence");
    choose("Furnace height", "90 cm", "");
    Person.await("the guess", () -> caption.getText().contains("900 mm high") && caption.getText().contains("Guessed: furnace height"));
    choose("Furnace height", "", "analogy");
    Person.await("no guess any more", () -> !caption.getText().contains("Guessed"));
    Reconstruction shaft = model.getReconstructions().get(0);
    assertEquals(0.9, shaft.getChoices().get(1).getValue(), 1e-12);
    assertEquals(Basis.ANALOGY, shaft.getChoices().get(1).getBasis());
  }

  private static void choose(String property, String value, String basis) {
    Hands.field(() -> Window.find("find", Text.class), property);
    NatTable values = Hands.grid("values");
    Hands.cell(values, property, "Value");
    if (!value.isEmpty()) {
      Keys.cells(values, value);
      Hands.cell(values, property, "Value");
    }
    if (!basis.isEmpty()) {
      Hands.choose("basis", basis);
    }
  }

  private static void lot(String name, String material) {
    Hands.menu("Trial", "New Lot");
    Hands.page("page.facts");
    Hands.field("name", name);
    Hands.choose("material", material);
    Hands.page("record.steps");
    Mouse.cell(Hands.grid("steps"), 0, 0);
  }

  /** 120 kg are delivered, 10 kg of water dried out, 10 kg of fines sieved off; the bands make the 110 kg on the sieve. */
  private static void ore() {
    lot("Bog ore", "ore");
    NatTable steps = Hands.grid("steps");
    Keys.cells(steps, "deliver", "2031-03-01", "120", "120", "0", "0.2");
    Keys.cells(steps, "dry", "2031-03-20", "120", "110", "10", "0.2");
    Keys.cells(steps, "sieve", "2031-03-21", "110", "100", "10", "0.2");
    said("steps.summary", "100");
    Hands.page("record.bands");
    NatTable bands = Hands.grid("bands");
    Mouse.cell(bands, 0, 0);
    Keys.cells(bands, "2", "8", "100", "", "0", "2", "10", "");
    Grid shown = Hands.of(bands);
    // 100 of 110 kg
    Person.await("the share of the band", () -> shown.model().cell(3, 0).text().equals("90.9 %"));
  }

  private static void charcoal() {
    lot("Beech charcoal", "charcoal");
    Keys.cells(Hands.grid("steps"), "deliver", "2031-03-01", "150", "150", "0", "0.5");
    said("steps.summary", "150");
  }

  private static void said(String id, String what) {
    Label summary = Hands.seen(id, Label.class);
    Person.await("“" + what + "” in " + Person.see(summary::getText), () -> summary.getText().contains(what));
  }

  private static void row(NatTable plan, String row, String text) {
    // a click on a cell with words on offer opens their list, so the arrow goes there
    Hands.cell(plan, row, "What");
    Keys.tap(SWT.ARROW_RIGHT);
    Keys.cells(plan, text);
  }

  private static Series series(OpenStudy study) {
    Hands.menu("Trial", "New Series");
    Series series = Hands.model(study).getSeries().get(0);
    NatTable plan = Hands.grid("plan");
    row(plan, "Vary something else", "Air flow");
    row(plan, "Air flow", "400 to 800 L/min");
    row(plan, "Trials at most", "4");
    Hands.press("plan.lots.take");
    Person.await("ore and charcoal", () -> series.getProvisions().size() == 2);
    Person.await("results", study::isSettled);
    Hands.press("plan.propose");
    Button freeze = Hands.seen("plan.freeze", Button.class);
    Person.await("a proposal", freeze::isEnabled);
    Hands.press("plan.freeze");
    Person.await("the frozen plan", () -> !series.getTrials().isEmpty());
    assertTrue(series.getTrials().size() >= 2 && series.getTrials().size() <= 4, "as many as were wanted: " + series.getTrials().size());
    HashSet<Integer> places = new HashSet<>();
    series.getPlans().get(0).getRuns().forEach(run -> places.add(run.getPlace()));
    assertEquals(series.getTrials().size(), places.size(), "each has its place in the order");
    return series;
  }

  /** It is ready when what stands against it is mended: a permission that has ended, stop criteria that nobody agreed on. */
  private static void ready(Trial trial) {
    permission("2020-12-31");
    open(trial);
    Hands.page("page.facts");
    Combo status = Hands.seen("status", Combo.class);
    Hands.open(status, "ready");
    Shell question = Person.dialog("Not Ready Yet");
    Hands.press(question, "Cancel");
    Person.gone(question);
    assertEquals(TrialStatus.PLANNED, trial.getStatus());
    Hands.tab("Series 1");
    Hands.page("page.facts");
    Hands.field("stopCriteria", "wind above 6 Bft; anybody hurt");
    permission("2099-12-31");
    open(trial);
    Hands.choose("status", "ready");
    assertEquals(TrialStatus.READY, trial.getStatus());
    assertEquals(null, trial.getReadyBecause(), "nothing stood against it");
  }

  private static void permission(String until) {
    Hands.inTree("Plan by Hand");
    Hands.page("record.permissions");
    NatTable permissions = Hands.grid("permissions");
    Mouse.cell(permissions, 0, 0);
    Keys.cells(permissions, "Fire permit", "R-17", "Parish of Wend", "2020-01-01", until);
  }

  private static void open(Trial trial) {
    Hands.inTree("Series", "Series 1", trial.getName());
  }

  /** The furnace of the hypothesis, 10 kg of ore with half its mass of iron, 14 kg of charcoal. */
  private static void charge() {
    Hands.choose("reconstruction", "Reconstruction 1");
    Hands.page("page.values");
    planned("Ore iron content", "50 %");
    planned("Ore charged", "10 kg");
    planned("Charcoal burnt", "14 kg");
  }

  private static void planned(String property, String value) {
    Hands.field(() -> Window.find("find", Text.class), property);
    NatTable values = Hands.grid("values");
    Hands.cell(values, property, "Planned");
    Keys.cells(values, value);
  }

  private static void before() {
    Hands.page("page.before");
    NatTable figures = Hands.grid("before-figures");
    Person.await("the forecast", () -> Hands.of(figures).model().rows() > 3);
    double air = figure(figures, "air going in");
    double burnt = figure(figures, "charcoal burnt [");
    assertEquals(air / (Math.PI * 15 * 15), figure(figures, "blast per hearth area"), 1e-3, "litres a minute on each cm² of a furnace of 30 cm");
    assertEquals(14 / burnt, figure(figures, "duration of charging"), 0.02, "14 kg of charcoal by the rate of burning");
    Passage status = Hands.seen("before-status", Passage.class);
    Person.sees(Person.see(status::getText), () -> status.getText().contains(" 1: "));
  }

  private static double figure(NatTable figures, String name) {
    Grid grid = Hands.of(figures);
    return Double.parseDouble(Person.see(() -> grid.model().cell(1, Hands.rowWith(grid, name)).text()));
  }
}
