package daubline.criteria;

import daubline.engine.inference.Group;

/** How the slag flowed, from not at all to plates. */
public final class FlowMorphology extends WordCriterion {

  /** Described by its card. */
  public FlowMorphology() {
    super(new Card("flow_morphology", "Flow morphology", Group.RESIDUES,
        "1 for the form that the evidence makes most probable; neighbours in the order of flow agree in part.",
        Literature.RECORDING), "flow_morphology");
  }
}
