package daubline.publication;

import daubline.base.Identifiers;
import java.util.List;

/**
 * What a deposit says of itself.
 *
 * @param creators names as "Family, Given" or of a team; empty for the people of the study who consented
 * @param publisher who publishes it, such as the archive
 * @param year year of publication
 * @param licence SPDX identifier of the licence, such as CC-BY-4.0; empty for the one that the study states
 * @param doi its identifier where the archive gave one beforehand; may be empty
 */
public record DepositOptions(List<String> creators, String publisher, int year, String licence, String doi) {

  private static final int EARLIEST = 1900;
  private static final int LATEST = 9999;

  public DepositOptions {
    creators = creators.stream().map(String::strip).filter(c -> !c.isEmpty()).toList();
    publisher = publisher.strip();
    licence = licence.strip();
    doi = doi.strip().replaceFirst("^(https?://(dx\\.)?doi\\.org/|doi:)", "");
    if (year < EARLIEST || year > LATEST) {
      throw new IllegalArgumentException("The year of publication is a year of four digits, not " + year);
    }
    if (!doi.isEmpty() && !Identifiers.isDoi(doi)) {
      throw new IllegalArgumentException("A DOI begins with 10. and a number, then a slash, such as 10.1234/abc; not " + doi);
    }
  }
}
