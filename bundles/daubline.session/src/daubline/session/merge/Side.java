package daubline.session.merge;

/** Whose version of a conflict is taken. */
public enum Side {
  /** The study that is merged into. */
  MINE,
  /** The other copy. */
  THEIRS
}
