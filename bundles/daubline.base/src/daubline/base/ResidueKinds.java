package daubline.base;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;

/** The classes of slag and other residue that a new study starts with: the rows of shared/residue-classes.csv. */
public final class ResidueKinds {

  private ResidueKinds() {
  }

  /**
   * One class of residue.
   *
   * @param id stable short name, lower case with underscores
   * @param name what screens and tables print
   * @param definition the text that decides what belongs to it
   * @param source where the class comes from
   */
  public record Kind(String id, String name, String definition, String source) {
  }

  /** The classes in the order in which finds are sorted: slag first, then the other residues. */
  public static List<Kind> standard() {
    return SharedTable.rows("residue-classes.csv").stream().map(ResidueKinds::kind).toList();
  }

  private static Kind kind(NamedCsvRecord row) {
    return new Kind(row.getField("id"), row.getField("name"), row.getField("definition"), row.getField("source"));
  }
}
