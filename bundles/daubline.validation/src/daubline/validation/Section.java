package daubline.validation;

/** One section of the validation page; listed in {@link Validation#sections()}. Says the misses as plainly as the hits. */
public interface Section {

  /** The heading. */
  String title();

  /** Writes the section; the same on every machine and every time. */
  void write(Page page);
}
