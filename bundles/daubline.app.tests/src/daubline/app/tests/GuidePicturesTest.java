package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.model.EvidenceSheet;
import daubline.model.Series;
import daubline.model.Study;
import daubline.model.Trial;
import daubline.ui.Parts;
import daubline.ui.look.Themes;
import daubline.ui.study.OpenStudy;
import daubline.ui.study.Start;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.PaletteData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledIfSystemProperty;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/**
 * The pictures of docs/guide: every screen in every theme, drawn by releng/guide, which names the folder to write to. An
 * ordinary run of the tests looks whether the guide has them all.
 */
class GuidePicturesTest {

  private static final int WIDTH = 1366;
  private static final int HEIGHT = 768;
  private static final int LEFT = 4;
  private static final int COLOURS = 256;
  private static final long SETTLE_MILLIS = 1500;

  /** Brings a screen to the front. */
  private interface Opening {
    void open(OpenStudy study) throws Exception;
  }

  /** One screen: the name of its picture, its perspective, what is to be seen, and how it is opened. */
  private record Screen(String name, String perspective, String caption, Opening opening) {
  }

  private static final List<Screen> SCREENS = List.of(
      new Screen("start", "evidence", "Hearthside, the start page: go on, begin, or open the demonstration study as a copy.", s -> Start.hearthside()),
      new Screen("evidence-sheet", "evidence", "An evidence sheet: every claim with its citation; claims that contradict each other stand together.",
          s -> page(sheet(s), "page.values")),
      new Screen("report", "evidence", "Reading a report: the publication at one side, its claims over all sheets at the other.",
          s -> page(study(s).getCitations().get(0), "page.report")),
      new Screen("wall", "evidence", "What the fire did to the wall, by clock and height, with its map.", s -> page(sheet(s), "record.zones")),
      new Screen("spread", "evidence", "Where residue lay, square by square.", s -> page(sheet(s), "record.spread")),
      new Screen("photographs", "evidence", "Photographs, linked with checksum, time, rights and consent.", s -> page(sheet(s), "record.photos")),
      new Screen("picture", "evidence", "A photographed section, scaled and measured.", s -> page(sheet(s), "record.measured")),
      new Screen("reconstruction", "plan", "A reconstruction: each choice with its basis, and its section.", s -> page(study(s).getReconstructions().get(0), "page.values")),
      new Screen("reconstructions", "plan", "Two reconstructions side by side: only what differs.", s -> {
        page(study(s).getReconstructions().get(0), "page.values");
        Window.view(Parts.RECONSTRUCTIONS, Object.class);
      }),
      new Screen("lot", "plan", "A lot of the store: what was done to it, and what is left.", s -> page(study(s).getLots().get(0), "record.steps")),
      new Screen("size-bands", "plan", "Size bands of a lot; fines are kept.", s -> page(study(s).getLots().get(0), "record.bands")),
      new Screen("recipe", "plan", "What a lot was mixed from.", s -> page(study(s).getLots().get(study(s).getLots().size() - 3), "record.mix")),
      new Screen("trace", "plan", "From a lot back to its delivery, and on to the trials it was charged in.", s -> page(study(s).getLots().get(1), "record.trace")),
      new Screen("drying", "plan", "The drying diary of a furnace.", s -> page(study(s).getBuilds().get(0), "record.drying")),
      new Screen("roles", "plan", "Who does what, and who relieves whom.", s -> page(series(s), "record.roles")),
      new Screen("hazards", "plan", "Hazards, their control and who sees to it; a memory aid, not advice.", s -> page(study(s), "record.hazards")),
      new Screen("permissions", "plan", "Permissions and when they run out.", s -> page(study(s), "record.permissions")),
      new Screen("visits", "record", "Visits to a furnace that is left to decay.", s -> page(trial(s), "record.visits")),
      new Screen("plan", "plan", "The plan of a series: stock, hands and days, factors, the proposed design.", s -> page(series(s), "page.plan")),
      new Screen("effects", "plan", "What moved an outcome, and what could not have been seen.", s -> page(series(s), "page.effects")),
      new Screen("before-the-fire", "plan", "Before the fire: what physics and experience can say of a trial.", s -> {
        page(trial(s), "page.before");
        Window.waitFor("the forecast", () -> Window.find("before-status", daubline.ui.look.Passage.class).getText().contains("300"));
      }),
      new Screen("predictions", "plan", "What a trial is to show, stated before the fire.", s -> page(trial(s), "record.predictions")),
      new Screen("run-day", "runday", "The day of the fire: one key for every event, the clock, what stops the run.", s -> Window.view(Parts.RUN_DAY, Object.class)),
      new Screen("trial-values", "record", "A trial: planned, as built, as fired, as found, the evidence beside it, and how far the plan was missed.", s -> page(trial(s), "page.values")),
      new Screen("run-log", "record", "The run log, typed from paper without the mouse.", s -> page(trial(s), "record.log")),
      new Screen("loggers", "record", "A logger file beside the run log.", s -> page(logged(s), "record.loggers")),
      new Screen("pieces", "record", "Pieces, their masses from heat to heat.", s -> page(trial(s), "record.pieces")),
      new Screen("residues", "record", "Residues by class.", s -> page(trial(s), "record.residues")),
      new Screen("samples", "record", "Samples and where they are.", s -> page(trial(s), "record.samples")),
      new Screen("analyses", "record", "Analyses as printed, and normalised below.", s -> page(trial(s), "record.analyses")),
      new Screen("balance", "record", "The balance: what went in, what was found, what is left over.", s -> page(trial(s), "page.balance")),
      new Screen("compare", "compare", "Trials beside evidence: agreement and coverage, the ranking, the reasons.", s -> Window.view(Parts.COMPARISON, Object.class)),
      new Screen("ranks", "compare", "How far the order can be relied on.", s -> Window.view(Parts.RANKS, Object.class)),
      new Screen("weights", "compare", "Weights and tolerances with their sources; a change ranks anew at once.", s -> Window.view(Parts.WEIGHTS, Object.class)),
      new Screen("publish", "publish", "Tables and figures as they will be published.", s -> Window.view(Parts.TABLES, Object.class)));

  @AfterEach
  void clear() {
    Window.clear();
  }

  private static Study study(OpenStudy open) {
    return open.session().study();
  }

  private static Series series(OpenStudy open) {
    return study(open).getSeries().get(0);
  }

  private static EvidenceSheet sheet(OpenStudy open) {
    return study(open).getSites().get(0).getContexts().get(0).getSheets().get(0);
  }

  private static Trial trial(OpenStudy open) {
    return series(open).getTrials().get(1);
  }

  private static Trial logged(OpenStudy open) {
    return series(open).getTrials().stream().filter(t -> !t.getLoggers().isEmpty()).findFirst().orElseThrow();
  }

  private static void page(EObject object, String key) {
    Window.sheet(object).show(key);
  }

  private static String file(Screen screen, String theme) {
    return screen.name() + "-" + theme + ".png";
  }

  @Test
  @DisabledIfSystemProperty(named = "daubline.guide", matches = ".+", disabledReason = "they are being drawn")
  void theGuideHasEveryScreenInEveryTheme() throws IOException {
    Path guide = Path.of(System.getProperty("daubline.bundles")).normalize().resolveSibling("docs").resolve("guide");
    List<String> wanted = SCREENS.stream().flatMap(s -> Themes.NAMES.stream().map(t -> file(s, t))).sorted().toList();
    try (Stream<Path> files = Files.list(guide)) {
      List<String> there = files.map(f -> f.getFileName().toString()).filter(f -> f.endsWith(".png")).sorted().toList();
      assertEquals(wanted, there, "draw the pictures anew: releng/guide");
    }
    for (String name : wanted) {
      ImageData picture = new ImageData(guide.resolve(name).toString());
      assertEquals(WIDTH, picture.width, name);
      assertTrue(picture.height > HEIGHT * 9 / 10, name);
    }
    assertEquals(text(), Files.readString(guide.resolve("README.md")), "write the page anew: releng/guide");
  }

  @Test
  @EnabledIfSystemProperty(named = "daubline.guide", matches = ".+", disabledReason = "only releng/guide draws")
  @DisabledIfSystemProperty(named = "osgi.nl", matches = "de.*", disabledReason = "the guide is in English")
  void drawsTheGuide() throws Exception {
    String folder = System.getProperty("daubline.guide");
    Window.shell().setMaximized(false);
    Window.shell().setBounds(0, 0, WIDTH, HEIGHT);
    // no tip stands in a picture
    Display.getCurrent().setCursorLocation(WIDTH - 1, HEIGHT - 1);
    OpenStudy study = Window.demonstration();
    Window.waitForResults(study);
    for (String theme : Themes.NAMES) {
      Themes.use(theme);
      for (Screen screen : SCREENS) {
        PlatformUI.getWorkbench().showPerspective("daubline.app." + screen.perspective(), Window.page().getWorkbenchWindow());
        Window.page().closeAllEditors(false);
        Window.pump();
        screen.opening().open(study);
        settle();
        shoot(Path.of(folder, file(screen, theme)));
      }
    }
    Themes.use(Themes.NAMES.get(0));
    Files.writeString(Path.of(folder, "README.md"), text());
    assertTrue(Files.size(Path.of(folder, file(SCREENS.get(0), "ash"))) > 1000);
  }

  private static void settle() {
    long end = System.currentTimeMillis() + SETTLE_MILLIS;
    Window.waitFor("a quiet screen", () -> System.currentTimeMillis() > end);
  }

  private static void shoot(Path file) {
    Display display = Display.getCurrent();
    Image image = new Image(display, WIDTH, HEIGHT);
    GC gc = new GC(display);
    gc.copyArea(image, 0, 0);
    gc.dispose();
    ImageLoader loader = new ImageLoader();
    loader.data = new ImageData[] {small(image.getImageData())};
    loader.save(file.toString(), SWT.IMAGE_PNG);
    image.dispose();
  }

  /** The same picture in its 256 commonest colours, down to where the window ends: the guide stays small. */
  private static ImageData small(ImageData full) {
    int height = bottom(full);
    Map<Integer, Integer> seen = new HashMap<>();
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < full.width; x++) {
        seen.merge(full.getPixel(x, y), 1, Integer::sum);
      }
    }
    List<Integer> common = seen.entrySet().stream().sorted(Map.Entry.<Integer, Integer>comparingByValue().reversed().thenComparing(Map.Entry::getKey))
        .limit(COLOURS).map(Map.Entry::getKey).toList();
    List<RGB> colours = common.stream().map(full.palette::getRGB).toList();
    Map<Integer, Integer> index = new HashMap<>();
    ImageData small = new ImageData(full.width, height, 8, new PaletteData(colours.toArray(RGB[]::new)));
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < full.width; x++) {
        small.setPixel(x, y, index.computeIfAbsent(full.getPixel(x, y), p -> nearest(colours, full.palette.getRGB(p))));
      }
    }
    return small;
  }

  /** Below the window the simulated screen is black. */
  private static int bottom(ImageData full) {
    int height = full.height;
    while (height > 1 && full.palette.getRGB(full.getPixel(LEFT, height - 1)).equals(new RGB(0, 0, 0))) {
      height--;
    }
    return height;
  }

  private static int nearest(List<RGB> colours, RGB wanted) {
    int best = 0;
    int least = Integer.MAX_VALUE;
    for (int i = 0; i < colours.size(); i++) {
      RGB c = colours.get(i);
      int apart = (c.red - wanted.red) * (c.red - wanted.red) + (c.green - wanted.green) * (c.green - wanted.green) + (c.blue - wanted.blue) * (c.blue - wanted.blue);
      if (apart < least) {
        least = apart;
        best = i;
      }
    }
    return best;
  }

  private static String text() {
    StringBuilder text = new StringBuilder("# Every screen\n\nDrawn by `releng/guide`; never by hand. The study is the demonstration, which is invented.\n");
    for (Screen screen : SCREENS) {
      text.append("\n## ").append(screen.caption()).append("\n\n");
      for (String theme : Themes.NAMES) {
        text.append("![").append(theme).append("](").append(file(screen, theme)).append(")\n");
      }
    }
    return text.toString();
  }
}
