package daubline.analysis;

import daubline.engine.inference.SheetData;

/**
 * One evidence sheet as the engines and tables see it.
 *
 * @param sheet what it says
 * @param site the name of its site
 * @param siteId the id of its site
 * @param region the region of its site, or empty
 * @param phase the phase of its context, or empty
 * @param period the period of its context, or empty
 * @param feature the feature it describes, or empty
 */
public record EvidenceData(SheetData sheet, String site, String siteId, String region, String phase, String period, String feature) {

  /** The same with its claims as they may be compared. */
  EvidenceData seen() {
    return new EvidenceData(Preservation.seen(sheet), site, siteId, region, phase, period, feature);
  }
}
