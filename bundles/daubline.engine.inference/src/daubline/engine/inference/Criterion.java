package daubline.engine.inference;

import daubline.base.Source;
import java.util.List;

/**
 * One property by which the remains of a trial are compared with an evidence sheet. Implementations hold no state, read
 * nothing but their arguments, and answer "not tested" with a reason whenever either side cannot be compared.
 */
public interface Criterion {

  /** A short stable id, lower case with underscores; weights and settings refer to it. */
  String id();

  /** Its name as printed. */
  String name();

  /** The group it is weighed in. */
  Group group();

  /** The ids of the variables it reads; empty when it reads residue masses or analyses only. */
  List<String> inputs();

  /** What a user can set, with unit, default and source. */
  List<Setting> settings();

  /** What the agreement means, in words. */
  String meaning();

  /** Where the method and its figures come from. */
  List<Source> sources();

  /**
   * Compares one trial with one evidence sheet.
   *
   * @param evidence what was excavated
   * @param found what was recorded of the trial's remains; never what was drawn or built
   * @param settings a value for each of {@link #settings()}
   */
  Assessment assess(SheetData evidence, SheetData found, SettingValues settings);
}
