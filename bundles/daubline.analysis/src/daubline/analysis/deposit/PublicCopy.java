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
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * A copy of a study that may be published: without names of people who did not consent, without photographs that were
 * not released, without injuries, and with sensitive places coarsened. The study itself is not touched.
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
    copy.withholdPhotographs();
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

  /** Whether a file shows people or places that somebody has to release first. */
  private static boolean isPicture(DataFile file) {
    String type = text(file.getMediaType()).toLowerCase(Locale.ROOT);
    return text(file.getKind()).toLowerCase(Locale.ROOT).startsWith("photo") || type.startsWith("image") || type.startsWith("video")
        || text(file.getPath()).toLowerCase(Locale.ROOT).matches(".*\\.(jpe?g|png|tiff?|heic|webp|mp4|mov)");
  }

  private void withholdPhotographs() {
    List<DataFile> unreleased = all(DataFile.class).stream().filter(f -> isPicture(f) && !f.isConsent()).toList();
    unreleased.forEach(file -> EcoreUtil.delete(file, true));
    say(unreleased.size(), "Pictures without consent to publish, left out");
  }

  private void withholdInjuries() {
    List<LogEntry> injuries = all(LogEntry.class).stream().filter(e -> LogData.concernsHealth(text(e.getKind()), text(e.getText()))).toList();
    injuries.forEach(injury -> EcoreUtil.delete(injury, true));
    say(injuries.size(), "Log entries that concern the health of a person, left out");
  }

  private void withholdNames() {
    int hidden = 0;
    for (int i = 0; i < study.getPeople().size(); i++) {
      Person person = study.getPeople().get(i);
      if (!person.isMayPublishName()) {
        String name = text(person.getName());
        person.setId("person-without-name-" + (i + 1));
        person.setName("Person " + (i + 1));
        person.setNote(null);
        replace(name, "Person " + (i + 1));
        hidden++;
      }
    }
    say(hidden, "People who did not consent to be named, standing as Person with a number");
  }

  private void replace(String name, String by) {
    if (name.isBlank()) {
      return;
    }
    Pattern whole = Pattern.compile("(?<![\\p{L}\\p{N}])" + Pattern.quote(name.strip()) + "(?![\\p{L}\\p{N}])",
        Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    List<EObject> objects = new ArrayList<>(all(EObject.class));
    objects.add(study);
    objects.forEach(object -> object.eClass().getEAllAttributes().stream().filter(a -> !a.isID())
        .forEach(attribute -> replace(object, attribute, whole, Matcher.quoteReplacement(by))));
  }

  private static void replace(EObject object, EAttribute attribute, Pattern name, String by) {
    if (object.eGet(attribute) instanceof String text && name.matcher(text).find()) {
      object.eSet(attribute, name.matcher(text).replaceAll(by));
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
