package daubline.publication;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.analysis.ComparisonOptions;
import daubline.analysis.StudyComparison;
import daubline.analysis.StudyResults;
import daubline.analysis.deposit.DepositData;
import daubline.analysis.deposit.Disclosure;
import daubline.analysis.deposit.StudyFromRows;
import daubline.analysis.deposit.StudyRows;
import daubline.base.Finding;
import daubline.model.DataFile;
import daubline.model.Identified;
import daubline.model.ModelFactory;
import daubline.model.ModelPackage;
import daubline.model.Named;
import daubline.model.Study;
import daubline.session.StudySession;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.CancellationException;
import javax.xml.parsers.DocumentBuilderFactory;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Studies that nobody would enter by hand: random ones over the whole model, hostile texts, missing files, no room to write. */
class HostileStudyTest {

  private static final List<String> TEXTS = List.of("=1+1", "a\"b,c\r\nd", "-0.5", "שלום עולם", "مرحبا", "x".repeat(300), "../../etc/passwd", "a/b\\c:d*?", "<b>&amp;",
      "NOT_WEIGHED", " leads and trails ", "tab\there", "😀 e\u0301", "'", "true", "_x0041_", "\u202Eevil", "CON", "%n%s", "{0}", "\\input{x}");
  private static final int OBJECTS = 400;

  @TempDir
  Path folder;

  /** A study in which every class of the model may stand wherever the model allows, every feature filled at random. */
  private static Study random(long seed) {
    Random random = new Random(seed);
    Study study = ModelFactory.eINSTANCE.createStudy();
    List<EObject> all = new ArrayList<>(List.of(study));
    for (int i = 0; i < OBJECTS; i++) {
      EObject holder = all.get(random.nextInt(all.size()));
      List<EReference> parts = holder.eClass().getEAllContainments();
      if (!parts.isEmpty()) {
        EReference part = parts.get(random.nextInt(parts.size()));
        List<EClass> classes = ModelPackage.eINSTANCE.getEClassifiers().stream().filter(EClass.class::isInstance).map(EClass.class::cast)
            .filter(c -> !c.isAbstract() && part.getEReferenceType().isSuperTypeOf(c)).toList();
        EObject object = EcoreUtil.create(classes.get(random.nextInt(classes.size())));
        ((Identified) object).setId("o" + i);
        put(holder, part, object);
        all.add(object);
      }
    }
    all.removeIf(o -> o != study && o.eContainer() == null);
    study.setId("study");
    all.forEach(object -> object.eClass().getEAllStructuralFeatures().forEach(feature -> fill(random, all, object, feature)));
    return study;
  }

  @SuppressWarnings("unchecked")
  private static void put(EObject holder, EReference part, EObject object) {
    if (part.isMany()) {
      ((List<EObject>) holder.eGet(part)).add(object);
    } else if (holder.eGet(part) == null) {
      holder.eSet(part, object);
    }
  }

  @SuppressWarnings("unchecked")
  private static void fill(Random random, List<EObject> all, EObject object, EStructuralFeature feature) {
    if (feature instanceof EReference reference) {
      List<EObject> targets = all.stream().filter(t -> reference.getEReferenceType().isInstance(t)).toList();
      if (!reference.isContainment() && !targets.isEmpty() && random.nextInt(3) > 0) {
        EObject target = targets.get(random.nextInt(targets.size()));
        if (!reference.isMany()) {
          object.eSet(reference, target);
        } else if (!((List<EObject>) object.eGet(reference)).contains(target)) {
          ((List<EObject>) object.eGet(reference)).add(target);
        }
      }
      return;
    }
    Class<?> type = ((EAttribute) feature).getEAttributeType().getInstanceClass();
    if (feature.getName().equals("id") || random.nextInt(4) == 0) {
      return;
    }
    object.eSet(feature, type == String.class ? TEXTS.get(random.nextInt(TEXTS.size())) : type == Double.class ? number(random)
        : type == boolean.class ? (Object) random.nextBoolean() : type == Integer.class || type == int.class ? (Object) random.nextInt()
        : type == Long.class ? (Object) random.nextLong() : type.getEnumConstants()[random.nextInt(type.getEnumConstants().length)]);
  }

  private static Double number(Random random) {
    return switch (random.nextInt(5)) {
      case 0 -> -0.0;
      case 1 -> Double.MIN_VALUE;
      case 2 -> 1e300;
      default -> random.nextGaussian();
    };
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void aRandomStudyComesBackWhole(long seed) {
    Study study = random(seed);
    StudyFromRows.Result back = StudyFromRows.read(StudyRows.of(study));
    assertEquals(List.of(), back.findings());
    assertTrue(EcoreUtil.equals(study, back.study()), "the study that came back differs");
    assertEquals(List.of(), DepositData.losses(StudyRows.of(study)));
  }

  private Publication.Written publish(StudySession session, Path to) throws Exception {
    ComparisonOptions usual = ComparisonOptions.standard();
    StudyResults results = StudyComparison.of(session, new ComparisonOptions(false, List.of(), List.of(), 200, usual.seed(), 1));
    return Publication.write(results, Optional.of(DepositData.of(session, Disclosure.standard())), to,
        PublicationOptions.standard("0.0", List.of()).with(new DepositOptions(List.of(), "", 2031, "", "")), Progress.NONE);
  }

  @Test
  void hostileNamesReachEveryFileUnharmed() throws Exception {
    try (StudySession session = StudySession.read(Path.of("seeds/aldervale"))) {
      int[] n = new int[1];
      session.study().eAllContents().forEachRemaining(object -> {
        if (object instanceof Named named && !(object instanceof DataFile)) {
          named.setName(TEXTS.get(n[0]++ % TEXTS.size()) + " \u0007" + n[0]);
          named.setNote("\u0000" + TEXTS.get(n[0] % TEXTS.size()));
        }
      });
      session.study().setName("=cmd|' /C calc'!A0 \u0001 / .. \u05D0");
      Publication.Written written = publish(session, folder.resolve("out"));
      for (String file : written.files()) {
        Path path = folder.resolve("out").resolve(file).normalize();
        assertTrue(path.startsWith(folder.resolve("out")) && Files.size(path) > 0, file);
        if (file.endsWith(".svg")) {
          DocumentBuilderFactory.newDefaultNSInstance().newDocumentBuilder().parse(path.toFile());
        }
      }
      assertEquals(List.of(), written.findings().stream().filter(Finding::isError).toList());
      assertTrue(Cells.of(folder.resolve("out/tables.xlsx")).size() > 1000, "no cell is a formula");
      Files.readString(folder.resolve("out/spreadsheet/trials.csv")).lines()
          .forEach(line -> assertFalse(line.startsWith("=") || line.contains(",=") || line.contains(";=") || line.contains("\"="), line));
    }
  }

  @Test
  void whatIsMissingIsSaidAndTheRestIsWritten() throws Exception {
    try (StudySession session = StudySession.create(folder.resolve("s"), "No trials")) {
      for (String path : List.of("gone.csv", "../outside.csv", "", "nul\u0000.csv")) {
        DataFile file = ModelFactory.eINSTANCE.createDataFile();
        file.setId("file-" + session.study().getFiles().size());
        file.setPath(path);
        session.study().getFiles().add(file);
      }
      Publication.Written written = publish(session, folder.resolve("out"));
      List<String> codes = written.findings().stream().filter(Finding::isError).map(Finding::code).sorted().toList();
      assertEquals(List.of("deposit.missing", "deposit.path", "deposit.path", "deposit.path"), codes);
      assertTrue(Files.exists(folder.resolve("out/deposit/datapackage.json")) && Files.exists(folder.resolve("out/report.html")));
    }
  }

  @Test
  void stoppingLeavesTheFolderAsItWas() throws Exception {
    Path out = Files.createDirectories(folder.resolve("out"));
    Files.writeString(out.resolve("mine.txt"), "mine");
    StudyResults results = PublicationTest.results("aldervale", 1);
    assertThrows(CancellationException.class, () -> Publication.write(results, Optional.empty(), out, PublicationOptions.standard("0.0", List.of()),
        (what, done, all) -> done < 30));
    assertEquals(List.of("mine.txt"), PublicationTest.hashes(out).keySet().stream().toList());
  }
}
