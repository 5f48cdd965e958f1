package daubline.analysis;

import daubline.base.Trail;
import daubline.model.Analysis;
import daubline.model.Citation;
import daubline.model.DataFile;
import daubline.model.Identified;
import daubline.model.LoggerFile;
import daubline.model.Named;
import daubline.model.Person;
import daubline.model.Reading;
import daubline.model.Study;
import daubline.session.BlindRecordings;
import daubline.session.StudySession;
import daubline.session.StudyVariables;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * Where a number comes from that somebody typed into a table or a field: the entry, what was typed, who and when, what stood
 * there before, and what the entry is part of. It reads the model's own features, so new kinds of entries need nothing here.
 */
public final class EntryOrigins {

  /** What is known of an entry, by the name of the feature, in the order in which it is told. */
  private static final Map<String, String> FACTS = facts("at", "when", "elapsed", "seconds after first light", "on", "on", "statedOn", "stated on", "recordedOn", "recorded on",
      "builtOn", "built on", "deliveredOn", "delivered on", "takenOn", "taken on", "visitedOn", "visited on", "frozenAt", "frozen", "by", "recorded by", "recordedBy", "recorded by",
      "checkedBy", "checked by", "checkedOn", "checked on", "leader", "led by", "original", "before it was corrected", "illegible", "could not be read",
      "revises", "revises", "engine", "by the engine", "citation", "citation", "page", "page", "scan", "on the paper", "file", "from the file", "path", "file", "sha256", "SHA-256",
      "lot", "lot", "sample", "sample", "method", "method", "instrument", "instrument", "laboratory", "laboratory", "algorithm", "algorithm", "seed", "seed", "source", "source",
      "because", "because", "startAt", "first row at", "offset", "clock offset in seconds", "note", "note");
  private static final int MOST = 40;

  private final StudySession session;
  private final Trails trails;

  /** Origins of entries of one study. */
  public EntryOrigins(StudySession session) {
    this.session = session;
    trails = new Trails(StudyVariables.of(session.study()));
  }

  /**
   * The trail of what stands in a field.
   *
   * @param object the entry that holds it
   * @param what what the field is, in words
   * @param value what stands there
   */
  public Trail of(EObject object, String what, String value) {
    List<Trail> from = new ArrayList<>(known(object));
    parts(object, from);
    owners(object, from);
    return new Trail(what, value, id(object), from);
  }

  /** The trail of a value with what it is part of and what stood there before. */
  public Trail of(Reading reading) {
    Trail own = trails.of(reading);
    List<Trail> from = new ArrayList<>(own.from());
    owners(reading, from);
    return new Trail(own.what(), own.value(), own.subject(), from);
  }

  private List<Trail> known(EObject object) {
    List<Trail> from = new ArrayList<>();
    switch (object) {
      case Reading reading -> from.addAll(trails.of(reading).from());
      case Analysis analysis -> from.addAll(trails.of(analysis).from());
      default -> from.addAll(facts(object));
    }
    from.addAll(versions(object));
    return from;
  }

  /** What an entry says of itself: when, who, by what. */
  private List<Trail> facts(EObject object) {
    List<Trail> all = new ArrayList<>();
    FACTS.forEach((name, word) -> {
      EStructuralFeature feature = object.eClass().getEStructuralFeature(name);
      Object value = feature == null || feature.isMany() ? null : object.eGet(feature);
      if (value != null && !value.toString().isBlank()) {
        all.add(value instanceof EObject other ? Trail.entry(word, name(other), id(other)) : Trail.of(word, value.toString()));
      }
    });
    BlindRecordings.of(object).ifPresent(r -> all.add(Trail.entry("recorded blind by", BlindRecordings.said(r), r.getId())));
    return all;
  }

  /** Values that the entry holds, each with its own trail. */
  private void parts(EObject object, List<Trail> from) {
    for (EReference reference : object.eClass().getEAllContainments()) {
      if (reference.isMany() && daubline.model.ModelPackage.Literals.READING.isSuperTypeOf(reference.getEReferenceType())) {
        ((List<?>) object.eGet(reference)).stream().limit(MOST).forEach(r -> from.add(trails.of((Reading) r)));
      }
    }
  }

  /** What stood in other fields before changes of this session; values keep theirs. */
  private List<Trail> versions(EObject object) {
    return object instanceof Reading ? List.of() : session.versions(object).stream().map(v -> Trail.of("before the change “" + v.change() + "”, " + v.at().truncatedTo(java.time.temporal.ChronoUnit.SECONDS),
        FACTS.getOrDefault(v.field(), v.field()) + " " + v.before() + " → " + (v.after().isEmpty() ? "taken away" : v.after()))).toList();
  }

  /** What it is part of, from the nearest to the widest, with who recorded that. */
  private void owners(EObject object, List<Trail> from) {
    for (EObject owner = object.eContainer(); owner != null && !(owner instanceof Study); owner = owner.eContainer()) {
      List<Trail> more = facts(owner).stream().filter(t -> !t.what().equals("note")).toList();
      if (!name(owner).isEmpty() || !more.isEmpty()) {
        from.add(new Trail("part of", kind(owner) + (name(owner).isEmpty() ? "" : " " + name(owner)), id(owner), more));
      }
    }
  }

  private static String kind(EObject object) {
    return object.eClass().getName().replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(java.util.Locale.ROOT);
  }

  private static String name(EObject object) {
    return switch (object) {
      case Person person -> text(person.getName());
      case Citation citation -> List.of(text(citation.getAuthors()), text(citation.getYear()), text(citation.getTitle())).stream().filter(t -> !t.isEmpty())
          .collect(Collectors.joining(", "));
      case LoggerFile file -> text(file.getPath());
      case DataFile file -> text(file.getPath());
      case Named named -> text(named.getName());
      case Reading reading -> text(reading.getTyped()).isEmpty() ? text(reading.getVariable()) : reading.getTyped() + " " + text(reading.getUnit());
      default -> "";
    };
  }

  private static String id(EObject object) {
    return object instanceof Identified i ? text(i.getId()) : "";
  }

  private static String text(String text) {
    return text == null ? "" : text;
  }

  private static Map<String, String> facts(String... namesAndWords) {
    Map<String, String> all = new LinkedHashMap<>();
    for (int i = 0; i < namesAndWords.length; i += 2) {
      all.put(namesAndWords[i], namesAndWords[i + 1]);
    }
    return all;
  }
}
