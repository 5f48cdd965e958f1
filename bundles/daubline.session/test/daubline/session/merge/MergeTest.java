package daubline.session.merge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.ValueKind;
import daubline.model.Claim;
import daubline.model.DataFile;
import daubline.model.EvidenceSheet;
import daubline.model.Identified;
import daubline.model.Incident;
import daubline.model.LogEntry;
import daubline.model.ModelFactory;
import daubline.model.Person;
import daubline.model.Study;
import daubline.model.Trial;
import daubline.session.StudyException;
import daubline.session.StudySession;
import daubline.session.backup.BackupWriter;
import daubline.session.backup.Work;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two copies of the demonstration study, changed at random and on purpose, are put together; the changes are invented. */
class MergeTest {

  private static final int ROUNDS = 40;
  private static final Path SEED = Path.of("seeds/aldervale");

  @TempDir
  Path temporary;
  private static Study small;
  private Study base;
  private Study mine;
  private Study theirs;

  @BeforeEach
  void copies() throws StudyException {
    base = read();
    mine = read();
    theirs = read();
  }

  /** The demonstration with its first four trials, read once. */
  private static Study read() throws StudyException {
    if (small == null) {
      try (StudySession session = StudySession.read(SEED)) {
        small = EcoreUtil.copy(session.study());
        EcoreUtil.deleteAll(List.copyOf(small.getSeries().get(0).getTrials().subList(4, small.getSeries().get(0).getTrials().size())), true);
      }
    }
    return EcoreUtil.copy(small);
  }

  private StudyMerge merge() {
    return StudyMerge.of(mine, theirs, base);
  }

  private static Trial trial(Study study, int number) {
    return study.getSeries().get(0).getTrials().get(number);
  }

  private static EvidenceSheet sheet(Study study) {
    return study.getSites().get(0).getContexts().get(0).getSheets().get(0);
  }

  // ---- what must always hold

  @Test
  void whatOnlyOneChangedComesOutAsHeLeftIt() throws Exception {
    for (int round = 0; round < ROUNDS; round++) {
      Study changed = read();
      RandomMergeChanges.change(changed, new Random(round), "a");
      Study copy = EcoreUtil.copy(changed);
      StudyMerge nothing = StudyMerge.of(changed, base, base);
      assertEquals(List.of(), nothing.conflicts(), "round " + round);
      assertEquals(List.of(), nothing.taken(), "round " + round);
      nothing.apply(Map.of());
      assertTrue(EcoreUtil.equals(copy, changed), "round " + round + ": merge(a, base, base) = a");
      Study old = read();
      StudyMerge all = StudyMerge.of(old, changed, base);
      assertEquals(List.of(), all.conflicts(), "round " + round);
      assertEquals(List.of(), all.apply(Map.of()), "round " + round);
      assertEquals(dump(changed, true), dump(old, true), "round " + round + ": merge(base, a, base) = a, order too");
    }
  }

  @Test
  void whoMergesIntoWhomMakesNoDifference() throws Exception {
    int conflicts = 0;
    for (int round = 0; round < ROUNDS; round++) {
      Study a = read();
      Study b = read();
      RandomMergeChanges.change(a, new Random(2L * round), "a");
      RandomMergeChanges.change(b, new Random(2L * round + 1), "b");
      Study intoA = EcoreUtil.copy(a);
      Study intoB = EcoreUtil.copy(b);
      StudyMerge first = StudyMerge.of(intoA, b, base);
      StudyMerge second = StudyMerge.of(intoB, a, base);
      assertEquals(first.conflicts().size(), second.conflicts().size(), "round " + round);
      Map<String, Side> aWins = first.conflicts().stream().collect(Collectors.toMap(Conflict::id, c -> Side.MINE));
      Map<String, Side> aWinsToo = second.conflicts().stream().collect(Collectors.toMap(Conflict::id, c -> Side.THEIRS));
      conflicts += first.conflicts().size();
      first.apply(aWins);
      second.apply(aWinsToo);
      assertSame(dump(intoA, false), dump(intoB, false), "round " + round);
    }
    assertTrue(conflicts > ROUNDS / 2, "the changes hardly met: " + conflicts);
  }

  private static void assertSame(Map<String, String> wanted, Map<String, String> found, String message) {
    Set<String> ids = new TreeSet<>(wanted.keySet());
    ids.addAll(found.keySet());
    for (String id : ids) {
      assertEquals(wanted.get(id), found.get(id), message + ": " + id);
    }
  }

  @Test
  void nothingIsLostWithoutAWord() throws Exception {
    for (int round = 0; round < ROUNDS; round++) {
      Study a = read();
      Study b = read();
      RandomMergeChanges.change(a, new Random(3L * round), "a");
      RandomMergeChanges.change(b, new Random(3L * round + 1), "b");
      Set<String> was = ids(base);
      Set<String> inA = ids(a);
      Set<String> inB = ids(b);
      StudyMerge merge = StudyMerge.of(a, b, base);
      Set<String> disputed = new HashSet<>();
      merge.conflicts().stream().filter(c -> c.kind() == Conflict.Kind.DELETED_HERE)
          .forEach(c -> disputed.addAll(merge.theirs.within(c.id().substring("DELETED_HERE ".length()).strip())));
      merge.apply(Map.of());
      Set<String> now = ids(a);
      for (String id : inA) {
        assertTrue(now.contains(id) || was.contains(id) && !inB.contains(id), "round " + round + ": mine lost " + id);
      }
      for (String id : inB) {
        assertTrue(now.contains(id) || disputed.contains(id) || was.contains(id) && !inA.contains(id), "round " + round + ": theirs lost " + id);
      }
    }
  }

  private static Set<String> ids(Study study) {
    Set<String> ids = new TreeSet<>();
    study.eAllContents().forEachRemaining(o -> ids.add(((Identified) o).getId()));
    return ids;
  }

  /** Every object with its place, its class and its fields; references by id. */
  private static Map<String, String> dump(Study study, boolean inOrder) {
    Map<String, String> lines = inOrder ? new LinkedHashMap<>() : new TreeMap<>();
    study.eAllContents().forEachRemaining(o -> {
      List<String> parts = new ArrayList<>(List.of(o.eClass().getName(), EcoreUtil.getID(o.eContainer()) + "." + o.eContainingFeature().getName()));
      for (EStructuralFeature feature : o.eClass().getEAllStructuralFeatures()) {
        if (feature instanceof EReference r && !r.isContainment()) {
          Stream<String> targets = Tree.children(o, r).stream().map(EcoreUtil::getID);
          parts.add(r.getName() + (inOrder ? targets : targets.sorted()).toList());
        } else if (feature instanceof EAttribute) {
          Object value = o.eGet(feature);
          parts.add(feature.getName() + "=" + ("".equals(value) ? null : value));
        }
      }
      lines.put(EcoreUtil.getID(o), String.join("; ", parts));
    });
    return lines;
  }

  // ---- what a person meets

  @Test
  void aFieldBothChangedIsAConflictAndOneIsNot() {
    trial(mine, 0).setNote("wet");
    trial(theirs, 0).setNote("rain");
    trial(theirs, 1).setConclusion("choked");
    StudyMerge merge = merge();
    Conflict only = only(merge);
    assertEquals("note", only.field());
    assertEquals("wet", only.mine());
    assertEquals("rain", only.theirs());
    assertEquals(Conflict.Kind.FIELD, only.kind());
    assertTrue(only.place().endsWith(trial(base, 0).getName()), only.place());
    assertEquals(1, merge.taken().size(), merge.taken().toString());
    merge.apply(Map.of());
    assertEquals("wet", trial(mine, 0).getNote());
    assertEquals("choked", trial(mine, 1).getConclusion());
    StudyMerge.of(mine, theirs, base).apply(Map.of(only.id(), Side.THEIRS));
    assertEquals("rain", trial(mine, 0).getNote());
  }

  private static Conflict only(StudyMerge merge) {
    assertEquals(1, merge.conflicts().size(), merge.conflicts().toString());
    return merge.conflicts().get(0);
  }

  @Test
  void aNumberWithItsUnitAndTextIsOneField() {
    Claim here = claim(mine);
    Claim there = claim(theirs);
    here.setTyped("300");
    here.setUnit("mm");
    here.setValue(0.3);
    there.setTyped("31 ± 1");
    there.setUnit("cm");
    there.setKind(ValueKind.PLUS_MINUS);
    there.setValue(0.31);
    there.setSigma(0.01);
    StudyMerge merge = merge();
    Conflict only = only(merge);
    assertEquals("300 mm", only.mine());
    assertEquals("31 ± 1 cm", only.theirs());
    merge.apply(Map.of(only.id(), Side.THEIRS));
    assertEquals(List.of("31 ± 1", "cm", 0.31, 0.01), List.of(here.getTyped(), here.getUnit(), here.getValue(), here.getSigma()));
  }

  private static Claim claim(Study study) {
    return sheet(study).getClaims().stream().filter(c -> c.getValue() != null).findFirst().orElseThrow();
  }

  @Test
  void additionsOfBothAreUnitedInTheirPlaces() {
    trialNamed(mine, "mine", 2);
    trialNamed(theirs, "theirs", 2);
    StudyMerge merge = merge();
    assertEquals(List.of(), merge.conflicts());
    merge.apply(Map.of());
    List<String> names = mine.getSeries().get(0).getTrials().stream().map(Trial::getName).toList();
    assertEquals(List.of("mine", "theirs"), names.subList(2, 4));
    assertEquals(base.getSeries().get(0).getTrials().size() + 2, names.size());
  }

  private static Trial trialNamed(Study study, String name, int at) {
    Trial added = ModelFactory.eINSTANCE.createTrial();
    added.setId("trial-" + name);
    added.setName(name);
    study.getSeries().get(0).getTrials().add(at, added);
    return added;
  }

  @Test
  void whatOneDeletedAndTheOtherLeftIsGoneAndWhatHeChangedIsAConflict() {
    EcoreUtil.deleteAll(List.of(trial(theirs, 1)), true);
    EcoreUtil.deleteAll(List.of(trial(theirs, 0)), true);
    Trial first = trial(mine, 0);
    String second = trial(mine, 1).getId();
    first.getValues().get(0).setNote("weighed again");
    StudyMerge merge = merge();
    Conflict only = only(merge);
    assertEquals(Conflict.Kind.DELETED_THERE, only.kind());
    merge.apply(Map.of());
    assertEquals(first, trial(mine, 0));
    assertTrue(mine.getSeries().get(0).getTrials().stream().noneMatch(t -> t.getId().equals(second)));
    StudyMerge.of(mine, theirs, base).apply(Map.of(only.id(), Side.THEIRS));
    assertTrue(mine.getSeries().get(0).getTrials().stream().noneMatch(t -> t.getId().equals(first.getId())));
  }

  @Test
  void whatIDeletedComesBackWholeWhenTheyWin() {
    EcoreUtil.deleteAll(List.of(trial(mine, 0)), true);
    trial(theirs, 0).getValues().get(0).setNote("weighed again");
    Conflict only = only(merge());
    assertEquals(Conflict.Kind.DELETED_HERE, only.kind());
    merge().apply(Map.of());
    assertFalse(ids(mine).contains(trial(base, 0).getId()));
    merge().apply(Map.of(only.id(), Side.THEIRS));
    assertEquals(dump(theirs, true).get(trial(theirs, 0).getId()), dump(mine, true).get(trial(theirs, 0).getId()));
    assertEquals(ids(theirs), ids(mine));
    assertEquals(trial(theirs, 0).getId(), trial(mine, 0).getId());
  }

  @Test
  void aReferenceToWhatTheOtherDeletedMakesItAConflict() {
    Person used = ModelFactory.eINSTANCE.createPerson();
    used.setId("person-used");
    for (Study study : List.of(base, mine, theirs)) {
      study.getPeople().add(EcoreUtil.copy(used));
    }
    trial(mine, 0).setLeader((Person) mine.getPeople().get(mine.getPeople().size() - 1));
    EcoreUtil.deleteAll(List.of(theirs.getPeople().get(theirs.getPeople().size() - 1)), true);
    assertEquals(Conflict.Kind.DELETED_THERE, only(merge()).kind());
  }

  @Test
  void listsOfReferencesAreMergedMemberByMember() {
    List<Person> people = mine.getPeople();
    assertTrue(people.size() >= 3, "the demonstration has people");
    for (Study study : List.of(base, mine, theirs)) {
      trial(study, 0).getPeople().clear();
      trial(study, 0).getPeople().addAll(study.getPeople().subList(0, 2));
    }
    trial(mine, 0).getPeople().remove(0);
    trial(theirs, 0).getPeople().add(theirs.getPeople().get(2));
    StudyMerge merge = merge();
    assertEquals(List.of(), merge.conflicts());
    merge.apply(Map.of());
    assertEquals(List.of(people.get(1), people.get(2)), trial(mine, 0).getPeople());
  }

  @Test
  void withoutWhatBothBeganFromAllThatDiffersIsAConflictAndNothingGoes() {
    trial(theirs, 0).setNote("rain");
    EcoreUtil.deleteAll(List.of(trial(theirs, 3)), true);
    trialNamed(theirs, "theirs", 2);
    StudyMerge merge = StudyMerge.of(mine, theirs, null);
    assertFalse(merge.isThreeWay());
    assertTrue(merge.conflicts().stream().anyMatch(c -> c.field().equals("note") && c.theirs().equals("rain")), merge.conflicts().toString());
    Set<String> before = ids(mine);
    merge.apply(Map.of());
    assertTrue(ids(mine).containsAll(before));
    assertTrue(ids(mine).contains("trial-theirs"));
  }

  @Test
  void remainsThatBothBeganOfOneTrialAreOneSheet() {
    Trial here = trialNamed(mine, "same", 0);
    Trial there = trialNamed(theirs, "same", 0);
    trialNamed(base, "same", 0);
    here.setRemains(ModelFactory.eINSTANCE.createRemainsSheet());
    here.getRemains().setId("remains-mine");
    here.getRemains().setNote("mine");
    there.setRemains(ModelFactory.eINSTANCE.createRemainsSheet());
    there.getRemains().setId("remains-theirs");
    Claim claim = ModelFactory.eINSTANCE.createClaim();
    claim.setId("claim-theirs");
    there.getRemains().getClaims().add(claim);
    StudyMerge merge = merge();
    assertEquals("note", only(merge).field());
    merge.apply(Map.of());
    assertEquals("mine", here.getRemains().getNote());
    assertEquals("claim-theirs", here.getRemains().getClaims().get(0).getId());
  }

  @Test
  void anEntryOfAnotherKindKeepsWhatBothKindsHave() {
    LogEntry plain = ModelFactory.eINSTANCE.createLogEntry();
    plain.setId("entry-1");
    plain.setText("wind fell");
    for (Study study : List.of(base, mine)) {
      trial(study, 0).getLog().add(EcoreUtil.copy(plain));
    }
    Incident incident = ModelFactory.eINSTANCE.createIncident();
    incident.setId("entry-1");
    incident.setText("wind fell");
    incident.setDuration(600.0);
    trial(theirs, 0).getLog().add(incident);
    StudyMerge merge = merge();
    assertEquals(List.of(), merge.conflicts());
    merge.apply(Map.of());
    LogEntry now = trial(mine, 0).getLog().get(trial(mine, 0).getLog().size() - 1);
    assertEquals(600.0, ((Incident) now).getDuration());
    assertEquals("wind fell", now.getText());
    assertEquals("entry-1", now.getId());
  }

  // ---- with folders

  private Path folder(String name) throws Exception {
    Path folder = temporary.resolve(name);
    try (StudySession session = StudySession.read(SEED)) {
      session.saveCopy(folder);
    }
    return folder;
  }

  @Test
  void aPacketIsMergedAsOneChangeWithItsFiles() throws Exception {
    Path here = folder("here");
    Path disk = Files.createDirectory(temporary.resolve("disk"));
    Path handed;
    try (StudySession session = StudySession.read(here)) {
      handed = BackupWriter.copy(session.image(), disk, LocalDateTime.of(2024, 5, 1, 8, 0), Work.UNWATCHED).file();
    }
    Path there = temporary.resolve("there");
    try (daubline.session.backup.BackupReader reader = daubline.session.backup.BackupReader.open(handed)) {
      reader.restore(there, Work.UNWATCHED);
    }
    Files.createDirectories(there.resolve("photos"));
    Files.createDirectories(here.resolve("photos"));
    Files.writeString(there.resolve("photos/new.jpg"), "theirs only");
    Files.writeString(there.resolve("photos/same.jpg"), "theirs");
    Files.writeString(here.resolve("photos/same.jpg"), "mine");
    Path packet;
    try (StudySession session = StudySession.open(there)) {
      session.edit("work", () -> {
        trial(session.study(), 0).setNote("rain");
        DataFile photo = ModelFactory.eINSTANCE.createDataFile();
        photo.setPath("photos/same.jpg");
        photo.setSha256(daubline.session.backup.DataFiles.sha256(there.resolve("photos/same.jpg")));
        trial(session.study(), 0).getFiles().add(photo);
      });
      session.save();
      packet = BackupWriter.copy(session.image(), disk, LocalDateTime.of(2024, 5, 2, 8, 0), Work.UNWATCHED).file();
    }
    try (StudySession session = StudySession.open(here); Merging merging = Merging.open(here, packet, Optional.empty())) {
      session.edit("work", () -> trial(session.study(), 1).setNote("dry"));
      String before = session.digest();
      assertTrue(merging.base().isPresent(), "both began from what was handed over");
      StudyMerge merge = merging.compare(session);
      assertEquals(List.of(), merge.conflicts());
      assertEquals(List.of(), merging.apply(session, Map.of(), "Merge"));
      assertEquals("rain", trial(session.study(), 0).getNote());
      assertEquals("dry", trial(session.study(), 1).getNote());
      assertEquals("theirs only", Files.readString(here.resolve("photos/new.jpg")));
      assertEquals("mine", Files.readString(here.resolve("photos/same.jpg")));
      assertEquals("theirs", Files.readString(here.resolve("photos/same-2.jpg")));
      List<DataFile> photos = trial(session.study(), 0).getFiles();
      assertEquals("photos/same-2.jpg", photos.get(photos.size() - 1).getPath());
      String after = session.digest();
      session.undo();
      assertEquals(before, session.digest());
      session.redo();
      assertEquals(after, session.digest());
    }
  }

  @Test
  void undoTakesARandomMergeBackToTheByte() throws Exception {
    for (int round = 0; round < 10; round++) {
      Study there = read();
      RandomMergeChanges.change(there, new Random(100 + round), "t");
      Path here = folder("undo" + round);
      try (StudySession session = StudySession.open(here)) {
        Random random = new Random(200 + round);
        session.edit("work", () -> RandomMergeChanges.change(session.study(), random, "m"));
        String before = session.digest();
        StudyMerge merge = StudyMerge.of(session.study(), there, base);
        Map<String, Side> choices = new HashMap<>();
        merge.conflicts().forEach(c -> choices.put(c.id(), random.nextBoolean() ? Side.MINE : Side.THEIRS));
        session.edit("merge", () -> merge.apply(choices));
        session.undo();
        assertEquals(before, session.digest(), "round " + round);
      }
    }
  }

  @Test
  void strangersAreRefusedAndAFailureLeavesNothing() throws Exception {
    Path here = folder("here");
    Path stranger = temporary.resolve("stranger");
    StudySession.create(stranger, "Other").close();
    try (StudySession session = StudySession.open(here); Merging merging = Merging.open(here, stranger, Optional.empty())) {
      assertEquals("merge.strangers", assertThrows(StudyException.class, () -> merging.compare(session)).finding().code());
    }
    Path there = folder("there");
    Files.createDirectories(there.resolve("photos/inner"));
    Files.writeString(there.resolve("photos/a.jpg"), "a");
    Files.writeString(there.resolve("photos/inner/b.jpg"), "b");
    Files.createDirectories(here.resolve("photos"));
    Files.writeString(here.resolve("photos/inner"), "a file where a folder is needed");
    try (StudySession session = StudySession.open(here); Merging merging = Merging.open(here, there, Optional.empty())) {
      String before = session.digest();
      assertThrows(StudyException.class, () -> merging.apply(session, Map.of(), "Merge"));
      assertEquals(before, session.digest());
      assertFalse(Files.exists(here.resolve("photos/a.jpg")));
      assertTrue(session.undoLabel().isEmpty());
    }
  }
}
