package daubline.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** What each bundle may use (docs/architecture.md), and what engines never do. */
class HouseRulesTest {

  private static final String[] ENGINES = {"engine.stats", "engine.process", "engine.design", "engine.inference", "criteria"};
  private static final Map<String, List<String>> MAY_USE = new TreeMap<>(Map.ofEntries(
      Map.entry("base", List.of()),
      Map.entry("engine.stats", List.of("base")),
      Map.entry("engine.process", List.of("base", "engine.stats")),
      Map.entry("engine.design", List.of("base", "engine.stats")),
      Map.entry("engine.inference", List.of("base", "engine.stats")),
      Map.entry("criteria", List.of("base", "engine.stats", "engine.process", "engine.inference")),
      Map.entry("model", List.of("base")),
      Map.entry("session", List.of("base", "model")),
      Map.entry("analysis", List.of("base", "model", "session", "criteria", "engine.stats", "engine.process", "engine.design", "engine.inference")),
      Map.entry("intake", List.of("base", "model", "session")),
      Map.entry("record", List.of("base", "model", "session")),
      Map.entry("export", List.of("base", "analysis", "engine.stats", "engine.process", "engine.design", "engine.inference")),
      Map.entry("charts", List.of("base", "analysis", "engine.stats", "engine.process", "engine.design", "engine.inference")),
      Map.entry("publication", List.of("base", "analysis", "export", "charts", "engine.inference", "session")),
      Map.entry("validation", List.of("base", "analysis", "charts", "criteria", "engine.stats", "engine.process", "engine.design", "engine.inference")),
      Map.entry("cli", List.of("validation", "base", "analysis", "export", "charts", "publication", "intake", "record", "session", "model", "criteria",
          "engine.stats", "engine.process", "engine.design", "engine.inference"))));

  private static JavaClasses house;

  @BeforeAll
  static void importClasses() {
    List<Path> places = Stream.of("releng/flat/target/classes", "bundles/daubline.ui/target/classes", "bundles/daubline.app/target/classes")
        .map(Path::of).filter(Files::isDirectory).toList();
    house = new ClassFileImporter().importPaths(places);
    assertTrue(house.size() > 100, "only " + house.size() + " classes were found; build the bundles first");
  }

  @TestFactory
  Stream<DynamicTest> eachBundleUsesOnlyWhatItMay() {
    return MAY_USE.entrySet().stream().map(entry -> DynamicTest.dynamicTest(entry.getKey(), () -> {
      String[] forbidden = house.stream().map(HouseRulesTest::bundle).distinct()
          .filter(b -> !b.isEmpty() && !b.equals(entry.getKey()) && !entry.getValue().contains(b))
          .flatMap(b -> Stream.of("daubline." + b, "daubline." + b + ".(*)..")).map(p -> p.replace(".(*)..", "..")).toArray(String[]::new);
      noClasses().that(inBundle(entry.getKey())).should().dependOnClassesThat().resideInAnyPackage(forbidden)
          .allowEmptyShould(true).check(house);
    }));
  }

  @Test
  void everyBundleIsKnownHere() {
    Set<String> known = Stream.concat(MAY_USE.keySet().stream(), Stream.of("ui", "app")).collect(java.util.stream.Collectors.toSet());
    List<String> unknown = house.stream().map(HouseRulesTest::bundle).distinct().filter(b -> !b.isEmpty() && !known.contains(b)).toList();
    assertTrue(unknown.isEmpty(), "say in HouseRulesTest and docs/architecture.md what these bundles may use: " + unknown);
  }

  @Test
  void enginesAreOfThisWorldOnlyThroughTheirArguments() {
    String[] packages = Arrays.stream(ENGINES).map(e -> "daubline." + e + "..").toArray(String[]::new);
    noClasses().that().resideInAnyPackage(packages).should().dependOnClassesThat()
        .resideInAnyPackage("java.nio.file..", "java.io..", "java.util.logging..", "java.awt..", "java.time..", "org.eclipse..")
        .orShould().callMethod(System.class, "currentTimeMillis").orShould().callMethod(System.class, "nanoTime")
        .orShould().callMethod(Math.class, "random").check(house.that(new NotResourceReaders()));
  }

  @Test
  void onlyChartsDraws() {
    noClasses().that().resideOutsideOfPackages("daubline.charts..", "daubline.ui..", "daubline.publication..", "daubline.record.print..").should().dependOnClassesThat()
        .resideInAnyPackage("java.awt..", "org.jfree..").check(house);
  }

  @Test
  void onlyTheWindowKnowsWidgets() {
    noClasses().that().resideOutsideOfPackages("daubline.ui..", "daubline.app..").should().dependOnClassesThat()
        .resideInAnyPackage("org.eclipse.swt..", "org.eclipse.jface..", "org.eclipse.ui..").check(house);
  }

  @Test
  void onlyAnalysisReadsTheModelForResults() {
    noClasses().that().resideInAnyPackage("daubline.export..", "daubline.charts..").should().dependOnClassesThat()
        .resideInAPackage("daubline.model..").check(house);
  }

  @Test
  void classesStayReadable() throws Exception {
    try (Stream<Path> files = Files.walk(Path.of("bundles"))) {
      List<String> tooLong = files.filter(f -> f.toString().endsWith(".java") && !f.toString().contains("src-gen"))
          .filter(f -> lines(f) > 500).map(Path::toString).toList();
      assertTrue(tooLong.isEmpty(), "over 500 lines: " + tooLong);
    }
  }

  @Test
  void theModelIsGeneratedOnly() {
    classes().that().resideInAPackage("daubline.model..").should().onlyDependOnClassesThat()
        .resideInAnyPackage("daubline.model..", "daubline.base..", "org.eclipse.emf..", "java..").check(house);
  }

  private static long lines(Path file) {
    try (Stream<String> lines = Files.lines(file)) {
      return lines.count();
    } catch (java.io.IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static com.tngtech.archunit.base.DescribedPredicate<JavaClass> inBundle(String name) {
    return com.tngtech.archunit.base.DescribedPredicate.describe("classes of daubline." + name, c -> bundle(c).equals(name));
  }

  /** The bundle of a class: the longest known bundle name that its package begins with. */
  private static String bundle(JavaClass c) {
    String name = c.getPackageName();
    if (!name.startsWith("daubline.")) {
      return "";
    }
    String rest = name.substring("daubline.".length());
    return MAY_USE.keySet().stream().filter(b -> rest.equals(b) || rest.startsWith(b + ".")).max(java.util.Comparator.comparingInt(String::length))
        .orElse(rest.split("\\.")[0]);
  }

  /** Tables that an engine carries as resources on its class path may be read by classes named …Resource. */
  private static final class NotResourceReaders extends com.tngtech.archunit.base.DescribedPredicate<JavaClass> {
    NotResourceReaders() {
      super("classes other than readers of an engine's own tables");
    }

    @Override
    public boolean test(JavaClass c) {
      return !c.getSimpleName().endsWith("Resource");
    }
  }
}
