package daubline.analysis.deposit;

import daubline.analysis.record.LogData;
import daubline.model.DataFile;
import daubline.model.LogEntry;
import daubline.model.Person;
import daubline.model.Site;
import daubline.model.Study;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * A copy of a study that may be published: without names of people who did not consent, without pictures and scans
 * that were not released, without injuries, and with sensitive places coarsened. The study itself is not touched.
 */
public final class PublicCopy {

  private final Study study;
  private final List<String> withheld = new ArrayList<>();

  private PublicCopy(Study study) {
    this.study = study;
  }

  /**
   * A public copy.
   *
   * @param study the copy
   * @param withheld what was left out or changed and how often, without what is withheld
   */
  public record Result(Study study, List<String> withheld) {

    public Result {
      withheld = List.copyOf(withheld);
    }
  }

  /** Makes the copy. */
  public static Result of(Study original, Disclosure disclosure) {
    PublicCopy copy = new PublicCopy(EcoreUtil.copy(original));
    copy.withholdPictures();
    copy.withholdInjuries();
    copy.withholdNames();
    copy.coarsen(disclosure);
    return new Result(copy.study, copy.withheld);
  }

  private <T> List<T> all(Class<T> type) {
    List<T> all = new ArrayList<>();
    for (Iterator<EObject> objects = study.eAllContents(); objects.hasNext();) {
      EObject object = objects.next();
      if (type.isInstance(object)) {
        all.add(type.cast(object));
      }
    }
    return all;
  }

  /** Whether a file shows people, places or papers that somebody has to release first: pictures, films and scans, by kind, content or name. */
  private static boolean isReleasedFirst(DataFile file) {
    String kind = text(file.getKind()).toLowerCase(Locale.ROOT);
    String type = text(file.getMediaType()).toLowerCase(Locale.ROOT);
    return kind.matches("(photo|picture|paper|scan).*") || type.startsWith("image/") || type.startsWith("video/") || type.startsWith("audio/")
        || type.equals("application/pdf") || text(file.getPath()).toLowerCase(Locale.ROOT)
            .matches(".*\\.(jpe?g|png|tiff?|gif|bmp|heic|heif|webp|svg|pdf|docx?|odt|mp4|m4v|mov|avi|webm|mp3|m4a|wav|ogg)");
  }

  private void withholdPictures() {
    List<DataFile> unreleased = all(DataFile.class).stream().filter(f -> isReleasedFirst(f) && !f.isConsent()).toList();
    unreleased.forEach(file -> EcoreUtil.delete(file, true));
    say(unreleased.size(), "Pictures and scans without consent to publish, left out");
  }

  private void withholdInjuries() {
    List<LogEntry> injuries = all(LogEntry.class).stream().filter(e -> LogData.concernsHealth(text(e.getKind()), text(e.getText()))).toList();
    injuries.forEach(injury -> EcoreUtil.delete(injury, true));
    say(injuries.size(), "Log entries that concern the health of a person, left out");
  }

  private void withholdNames() {
    HiddenNames names = HiddenNames.of(study);
    int hidden = 0;
    for (int i = 0; i < study.getPeople().size(); i++) {
      Person person = study.getPeople().get(i);
      if (!person.isMayPublishName()) {
        person.setId(HiddenNames.standInId(i));
        person.setName(HiddenNames.standIn(i));
        person.setNote(null);
        hidden++;
      }
    }
    List<EObject> objects = new ArrayList<>(all(EObject.class));
    objects.add(study);
    objects.forEach(object -> object.eClass().getEAllAttributes().stream().filter(a -> !a.isID()).forEach(attribute -> replace(object, attribute, names)));
    say(hidden, "People who did not consent to be named, standing as Person with a number");
  }

  private static void replace(EObject object, EAttribute attribute, HiddenNames names) {
    if (object.eGet(attribute) instanceof String text && names.isIn(text)) {
      object.eSet(attribute, names.replaced(text));
    }
  }

  private void coarsen(Disclosure disclosure) {
    int coarsened = 0;
    for (Site site : study.getSites()) {
      if (site.isSensitive() || disclosure.allSites()) {
        site.setLatitude(coarse(site.getLatitude(), disclosure.degrees()));
        site.setLongitude(coarse(site.getLongitude(), disclosure.degrees()));
        site.setPlace(null);
        coarsened++;
      }
    }
    say(coarsened, "Sites given " + (disclosure.degrees() > 0 ? "to a grid of " + disclosure.degrees() + " degrees" : "without coordinates")
        + " and without place");
  }

  private static Double coarse(Double degrees, double grid) {
    return degrees == null || grid == 0 ? null : Double.valueOf(Math.round(Math.round(degrees / grid) * grid * 1e6) / 1e6);
  }

  private void say(int count, String what) {
    if (count > 0) {
      withheld.add(what + ": " + count);
    }
  }

  private static String text(String text) {
    return text == null ? "" : text;
  }
}
