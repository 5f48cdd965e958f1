package daubline.engine.process;

import daubline.engine.process.air.Draught;
import daubline.engine.process.air.PackedBed;
import daubline.engine.process.shaft.ShaftInputs;
import daubline.engine.process.shaft.ShaftParameter;
import daubline.engine.process.shaft.ShaftSolution;
import daubline.engine.process.shaft.ShaftSolver;
import java.util.function.DoubleUnaryOperator;

/**
 * The air that a furnace without bellows draws for itself: its heat pulls, the charge resists, and the air makes the heat.
 * Both are solved in turn until they agree.
 *
 * @param flow air, m³/s at 20 °C
 * @param shaft the furnace with that air, held to the range that the shaft model knows
 * @param solution its shaft
 */
record DrawnAir(double flow, ShaftInputs shaft, ShaftSolution solution) {

  /** Gas of a stack in full fire, K, to begin with, and where no hot shaft is found (common practice, no source). */
  private static final double HOT = 1100;
  private static final double AGREED = .02;
  private static final int TURNS = 6;

  /**
   * The air of a furnace.
   *
   * @param planned the furnace; its air is not looked at
   * @param inlets its openings
   * @param pull factor on the draught, for wind and for what Ergun's law does not know of a charge
   */
  static DrawnAir of(ShaftInputs planned, BurnInputs.Inlets inlets, double pull) {
    double area = inlets.number() * Math.PI * inlets.diameter() * inlets.diameter() / 4;
    PackedBed bed = new PackedBed(planned.get(ShaftParameter.CHARCOAL_SIZE), planned.get(ShaftParameter.SPHERICITY), planned.get(ShaftParameter.VOIDAGE));
    Draught draught = new Draught(bed, planned.get(ShaftParameter.DIAMETER), planned.get(ShaftParameter.STACK), area, planned.get(ShaftParameter.AMBIENT));
    double through = 1 - planned.get(ShaftParameter.LEAK);
    DoubleUnaryOperator gas = z -> HOT;
    double flow = draught.flow(gas, through, pull);
    ShaftSolver solver = new ShaftSolver();
    ShaftInputs shaft = blowing(planned, flow);
    DrawnAir found = new DrawnAir(flow, shaft, solver.solve(shaft));
    for (int turn = 0; turn < TURNS && found.solution.converged(); turn++) {
      double next = draught.flow(found.solution::gas, through, pull);
      if (Math.abs(next - flow) < AGREED * flow) {
        break;
      }
      flow = next;
      shaft = blowing(planned, flow);
      found = new DrawnAir(flow, shaft, solver.solveNear(found.solution, shaft));
    }
    return found;
  }

  private static ShaftInputs blowing(ShaftInputs planned, double flow) {
    return planned.with(ShaftParameter.AIR, Math.clamp(flow, ShaftParameter.AIR.low(), ShaftParameter.AIR.high()));
  }
}
