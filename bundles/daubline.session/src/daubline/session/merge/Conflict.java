package daubline.session.merge;

/**
 * Something that two people changed differently, so that a person has to choose.
 *
 * @param id tells it from all others; stays the same when the copies are put together again
 * @param kind what differs
 * @param place the names that lead to the object, in the words of the study
 * @param object the class of the object in the model, such as {@code Claim}
 * @param field the field, or the first of those that stand together; empty when the object as a whole is concerned
 * @param base as both had it; empty when that is not known or it was not there
 * @param mine as it stands in the study that is merged into
 * @param theirs as it stands in the other copy
 */
public record Conflict(String id, Kind kind, String place, String object, String field, String base, String mine, String theirs) {

  /** What differs. */
  public enum Kind {
    /** A field has two values. */
    FIELD,
    /** Mine was deleted, theirs was changed. */
    DELETED_HERE,
    /** Theirs was deleted, mine was changed. */
    DELETED_THERE,
    /** It was put into two different places. */
    PLACE,
    /** It was made a thing of two different kinds. */
    SORT,
    /** Its parts were put into two different orders. */
    ORDER
  }
}
