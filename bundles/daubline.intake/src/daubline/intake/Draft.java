package daubline.intake;

import daubline.base.Variables;
import daubline.model.DataFile;
import daubline.model.Identified;
import daubline.model.Study;
import java.util.HashMap;
import java.util.Iterator;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.eclipse.emf.ecore.EObject;

/** The study that rows are written into: a copy while they are previewed, the study itself when they are applied. */
final class Draft {

  private final Study study;
  private final Variables variables;
  private final Supplier<DataFile> rawFile;
  private final Map<String, EObject> byId = new HashMap<>();
  private Tally tally = new Tally();

  /**
   * A draft.
   *
   * @param rawFile the file entry of the raw file that is kept, made when a row first needs it; gives null when none is kept
   */
  Draft(Study study, Variables variables, Supplier<DataFile> rawFile) {
    this.study = study;
    this.variables = variables;
    this.rawFile = rawFile;
    for (Iterator<EObject> all = study.eAllContents(); all.hasNext();) {
      register(all.next());
    }
  }

  private void register(EObject object) {
    if (object instanceof Identified identified && identified.getId() != null) {
      byId.put(identified.getId(), object);
    }
  }

  Study study() {
    return study;
  }

  Variables variables() {
    return variables;
  }

  /** What the row in hand adds and changes. */
  Tally tally() {
    return tally;
  }

  /** Begins the next row. */
  void nextRow() {
    tally = new Tally();
  }

  /** The file that the rows were delivered in; null when it is not kept. */
  DataFile rawFile() {
    return rawFile.get();
  }

  /** The object with an id. */
  Optional<EObject> find(String id) {
    return Optional.ofNullable(byId.get(id));
  }

  /**
   * The object that the row's column {@code id} names, when it is of the right type.
   *
   * @return empty when the cell is empty or names a new object; an error is noted when the id belongs to something else
   */
  <T extends EObject> Optional<T> named(Row row, Class<T> type) {
    Optional<EObject> known = find(row.text("id"));
    if (known.isPresent() && !type.isInstance(known.get())) {
      row.error("id.taken", "id", "the id “" + row.text("id") + "” belongs to a " + known.get().eClass().getName()
          + " of the study",
          "choose another id, or leave the cell empty");
    }
    return known.filter(type::isInstance).map(type::cast);
  }

  /** Gives a new object the id that its row asks for. */
  <T extends Identified> T subject(Row row, T object) {
    if (row.has("id")) {
      giveId(object, row.text("id"));
    }
    return tally.subject(object);
  }

  /** Gives a new object an id when nothing else has it and a file can hold it. */
  void giveId(Identified object, String id) {
    if (id.matches("[A-Za-z][A-Za-z0-9._-]*") && !byId.containsKey(id)) {
      object.setId(id);
      register(object);
    }
  }
}
