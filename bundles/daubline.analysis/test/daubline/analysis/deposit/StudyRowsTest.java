package daubline.analysis.deposit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.analysis.record.LogData;
import daubline.model.DataFile;
import daubline.model.ModelFactory;
import daubline.model.Person;
import daubline.model.Site;
import daubline.model.Study;
import daubline.session.StudySession;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Studies taken apart and put together again. */
class StudyRowsTest {

  @ParameterizedTest
  @ValueSource(strings = {"aldervale", "open-smelts"})
  void aStudyComesBackWhole(String name) throws Exception {
    try (StudySession session = StudySession.read(Path.of("seeds", name))) {
      StudyFromRows.Result back = StudyFromRows.read(StudyRows.of(session.study()));
      assertEquals(List.of(), back.findings());
      List<Rows> before = StudyRows.of(session.study());
      List<Rows> after = StudyRows.of(back.study());
      for (int i = 0; i < before.size(); i++) {
        assertEquals(String.join("\n", before.get(i).rows().stream().map(Object::toString).toList()),
            String.join("\n", after.get(i).rows().stream().map(Object::toString).toList()), before.get(i).name());
      }
      assertTrue(EcoreUtil.equals(withoutEmptyTexts(session.study()), back.study()), "the study that came back differs");
    }
  }

  /** An empty text and no text are one in a table. */
  private static Study withoutEmptyTexts(Study study) {
    Study copy = EcoreUtil.copy(study);
    copy.eAllContents().forEachRemaining(object -> object.eClass().getEAllAttributes().forEach(attribute -> {
      if ("".equals(object.eGet(attribute))) {
        object.eUnset(attribute);
      }
    }));
    return copy;
  }

  @Test
  void noColumnStandsTwice() throws Exception {
    try (StudySession session = StudySession.read(Path.of("seeds", "aldervale"))) {
      StudyRows.of(session.study()).forEach(table -> assertEquals(table.fields().size(), table.fields().stream().map(Rows.Field::name).distinct().count(), table.name()));
    }
  }

  @Test
  void aRowWithoutPlaceIsReported() throws Exception {
    Study study = study();
    List<Rows> tables = new ArrayList<>(StudyRows.of(study));
    int person = tables.indexOf(tables.stream().filter(t -> t.name().equals("person")).findFirst().orElseThrow());
    Rows people = tables.get(person);
    List<List<String>> rows = people.rows().stream().map(row -> {
      List<String> changed = new ArrayList<>(row);
      changed.set(people.column(Rows.CONTAINER).orElseThrow(), "nowhere");
      return List.copyOf(changed);
    }).toList();
    tables.set(person, new Rows(people.name(), people.fields(), rows));
    List<String> said = StudyFromRows.read(tables).findings().stream().map(f -> f.where() + ": " + f.what()).toList();
    assertEquals(List.of("data/person.csv, id person-ann: it has no place: “nowhere” has no people for it",
        "data/person.csv, id person-bo: it has no place: “nowhere” has no people for it"), said);
  }

  @Test
  void thePublicCopyNamesNobodyWithoutConsentAndTheStudyStaysAsItIs() {
    Study study = study();
    PublicCopy.Result copy = PublicCopy.of(study, Disclosure.standard());
    String rows = StudyRows.of(copy.study()).toString();
    assertFalse(rows.toLowerCase(Locale.ROOT).contains("bo lind") || rows.contains("person-bo"), rows);
    assertTrue(rows.contains("Ann Holm") && rows.contains("Person 2 held the tongs"), rows);
    assertFalse(rows.contains("secret.png"));
    assertTrue(rows.contains("shown.png"));
    assertEquals("Bo Lind", study.getPeople().get(1).getName());
    assertEquals(3, copy.withheld().size(), copy.withheld().toString());
  }

  @Test
  void sensitivePlacesAreCoarsenedOrLeftOut() {
    Site site = PublicCopy.of(study(), Disclosure.standard()).study().getSites().get(0);
    assertEquals(51.1, site.getLatitude());
    assertEquals(-3.5, site.getLongitude());
    assertNull(site.getPlace());
    assertNull(PublicCopy.of(study(), new Disclosure(0, false)).study().getSites().get(0).getLatitude());
  }

  @ParameterizedTest
  @CsvSource({"incident,Anna hurt her hand; first aid given,true", "incident,Wall burnt through; nobody was hurt,false", "Injury,small burn,true",
      "note,Der Helfer hat sich verletzt,true", "note,Niemand wurde verletzt,false", "incident,Blower failed,false"})
  void whatConcernsHealthIsToldFromWhatDoesNot(String kind, String text, boolean concerns) {
    assertEquals(concerns, LogData.concernsHealth(kind, text));
  }

  private static Study study() {
    ModelFactory make = ModelFactory.eINSTANCE;
    Study study = make.createStudy();
    study.setId("s");
    study.setName("A study");
    study.setNote("Bo Lind held the tongs.");
    study.getPeople().add(person(make, "person-ann", "Ann Holm", true));
    study.getPeople().add(person(make, "person-bo", "Bo Lind", false));
    study.getFiles().add(picture(make, "shown.png", true));
    study.getFiles().add(picture(make, "secret.png", false));
    Site site = make.createSite();
    site.setId("site");
    site.setSensitive(true);
    site.setLatitude(51.12345);
    site.setLongitude(-3.54321);
    site.setPlace("Behind the barn");
    study.getSites().add(site);
    return study;
  }

  private static Person person(ModelFactory make, String id, String name, boolean consent) {
    Person person = make.createPerson();
    person.setId(id);
    person.setName(name);
    person.setMayPublishName(consent);
    return person;
  }

  private static DataFile picture(ModelFactory make, String path, boolean consent) {
    DataFile file = make.createDataFile();
    file.setId(path);
    file.setPath(path);
    file.setKind("photograph");
    file.setConsent(consent);
    return file;
  }
}
