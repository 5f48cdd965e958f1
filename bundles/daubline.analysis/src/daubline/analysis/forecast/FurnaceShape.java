package daubline.analysis.forecast;

/**
 * The furnace of a plan, for its drawing; metres above the floor, NaN for what is not known.
 *
 * @param diameter inside, at the base
 * @param wall thickness at the base
 * @param height of the whole furnace
 * @param top inside diameter at the top
 * @param inlet height of the middle of the air inlet
 * @param bore of the air inlet
 * @param pit depth below the floor
 * @param preserved height to which there is evidence: excavated where the furnace follows a sheet, otherwise as left by the trial
 * @param evidence what that height rests on, or empty
 */
public record FurnaceShape(double diameter, double wall, double height, double top, double inlet, double bore, double pit, double preserved, String evidence) {
}
