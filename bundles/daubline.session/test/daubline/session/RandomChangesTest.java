package daubline.session;

import static org.junit.jupiter.api.Assertions.assertEquals;

import daubline.model.Context;
import daubline.model.ModelFactory;
import daubline.model.Site;
import daubline.model.Trial;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Seeded random changes of every sort: undo leads back to the same bytes, redo forward again, the journal holds the last. */
class RandomChangesTest {

  private static final ModelFactory NEW = ModelFactory.eINSTANCE;
  private static final int CHANGES = 300;

  @TempDir
  Path temporary;
  private final Random random = new Random(7);
  private StudySession session;

  @Test
  void leadBackAndForth() throws Exception {
    session = StudySession.create(temporary.resolve("valley"), "Valley");
    session.edit("Fill", () -> StudySessionTest.fill(session.study()));
    List<String> digests = new ArrayList<>(List.of(session.digest()));
    for (int i = 0; i < CHANGES; i++) {
      session.edit("Change " + i, this::change);
      digests.add(session.digest());
    }
    for (int i = CHANGES - 1; i >= 0; i--) {
      session.undo();
      assertEquals(digests.get(i), session.digest(), "undo " + i);
    }
    for (int i = 1; i <= CHANGES; i++) {
      session.redo();
      assertEquals(digests.get(i), session.digest(), "redo " + i);
    }
    session.close();
    try (StudySession recovered = StudySession.open(Recovery.of(session.folder()).orElseThrow())) {
      assertEquals(digests.get(CHANGES), recovered.digest());
    }
  }

  private void change() {
    List<Site> sites = session.study().getSites();
    List<Trial> trials = session.study().getSeries().get(0).getTrials();
    switch (random.nextInt(9)) {
      case 0 -> trials.add(random.nextInt(trials.size() + 1), StudySessionTest.trial("T" + random.nextInt(1000)));
      case 1 -> sites.add(site());
      case 2 -> pick(trials).forEach(t -> EcoreUtil.delete(t, true));
      case 3 -> pick(sites).forEach(s -> EcoreUtil.delete(s, true));
      case 4 -> session.study().getSeries().get(0).getTrials().move(trials.size() / 2, Math.max(0, trials.size() - 1));
      case 5 -> pick(trials).forEach(t -> t.setRepeatOf(trials.get(random.nextInt(trials.size()))));
      case 6 -> moveContext(sites);
      case 7 -> trials.removeAll(List.copyOf(trials).stream().filter(t -> random.nextInt(4) == 0).toList());
      default -> pick(trials).forEach(t -> t.setNote(random.nextInt(3) == 0 ? null : "note " + random.nextInt()));
    }
    if (trials.isEmpty()) {
      trials.add(StudySessionTest.trial("again"));
    }
  }

  private void moveContext(List<Site> sites) {
    if (sites.size() > 1 && !sites.get(0).getContexts().isEmpty()) {
      sites.get(1).getContexts().add(0, sites.get(0).getContexts().get(0));
    }
  }

  private Site site() {
    Site site = NEW.createSite();
    Context context = NEW.createContext();
    context.setName("phase");
    site.getContexts().add(context);
    return site;
  }

  private <T> List<T> pick(List<T> list) {
    return list.isEmpty() ? List.of() : List.of(list.get(random.nextInt(list.size())));
  }
}
