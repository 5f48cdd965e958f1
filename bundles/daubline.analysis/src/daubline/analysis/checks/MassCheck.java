package daubline.analysis.checks;

import daubline.base.Amount;
import daubline.base.Finding;
import daubline.base.Printed;
import daubline.base.RecoveredTotal;
import daubline.model.Lot;
import daubline.model.Piece;
import daubline.model.Reading;
import daubline.model.ResidueMass;
import daubline.model.Sheet;
import daubline.model.SizeBand;
import daubline.model.Treatment;
import daubline.session.BlindRecordings;
import daubline.session.Readings;
import daubline.session.store.LotFindings;
import daubline.session.store.LotMoisture;
import java.util.List;
import java.util.OptionalDouble;

/** Masses that cannot be: parts heavier than the whole, more out of a lot than in, classes above the total. */
final class MassCheck implements Check {

  private static final double SCALE = 0.02;

  @Override
  public String id() {
    return "mass";
  }

  @Override
  public String description() {
    return "Pieces heavier than what they were parted from, steps, splits, sieve bands and charges of lots that do not add up, water "
        + "without its basis, residue classes that add up to more than the total, or weighed twice.";
  }

  @Override
  public void run(CheckedStudy study) {
    study.each(Piece.class, piece -> checkPiece(study, piece));
    study.each(Treatment.class, step -> LotFindings.of(step).ifPresent(f -> study.report(f, step, null)));
    study.each(SizeBand.class, band -> LotFindings.of(band).ifPresent(f -> study.report(f, band, null)));
    study.each(Lot.class, lot -> lot(study, lot));
    study.each(Sheet.class, sheet -> checkResidues(study, sheet));
  }

  private void checkPiece(CheckedStudy study, Piece piece) {
    OptionalDouble whole = massOf(piece);
    double parts = piece.getPieces().stream().map(MassCheck::massOf).filter(OptionalDouble::isPresent).mapToDouble(OptionalDouble::getAsDouble).sum();
    if (whole.isPresent() && parts > whole.getAsDouble() * (1 + SCALE)) {
      study.report(Finding.warning("mass.pieces", "", "the parts weigh " + Printed.number(parts) + " kg, the whole only "
          + Printed.number(whole.getAsDouble()) + " kg", "check the weighings, or the place of a piece in the tree"), piece, null);
    }
  }

  private static OptionalDouble massOf(Piece piece) {
    return piece.getValues().stream().filter(v -> v.getVariable() != null && v.getVariable().endsWith("mass"))
        .map(Readings::amount).filter(Amount::isNumber).mapToDouble(Amount::value).max();
  }

  private static void lot(CheckedStudy study, Lot lot) {
    LotFindings.of(study.study(), lot).forEach(f -> study.report(f, lot, null));
    LotMoisture.finding(lot).ifPresent(f -> study.report(f, lot, null));
  }

  private static boolean isOfSame(ResidueMass seen, ResidueMass blind) {
    return seen != blind && blind.getResidueClass() != null && seen.getResidueClass() == blind.getResidueClass() && seen.getCitation() == blind.getCitation()
        && !BlindRecordings.of(seen).equals(BlindRecordings.of(blind)) && Readings.amount(seen).isNumber() && Readings.amount(blind).isNumber();
  }

  private void checkResidues(CheckedStudy study, Sheet sheet) {
    double classes = sheet.getResidues().stream().map(Readings::amount).filter(Amount::isNumber).mapToDouble(Amount::value).sum();
    List<ResidueMass> weighed = sheet.getResidues();
    weighed.stream().filter(r -> BlindRecordings.of(r).isPresent()).forEach(blind -> weighed.stream().filter(r -> isOfSame(r, blind)).findFirst()
        .ifPresent(seen -> study.report(Finding.warning("mass.blind", "", "“" + blind.getResidueClass().getName() + "” is weighed twice, once by somebody who recorded blind",
            "both count in the sums; take one out, or cite what each comes from"), blind, null)));
    sheet.getClaims().stream().filter(c -> RecoveredTotal.VARIABLE.equals(c.getVariable())).map(Reading.class::cast).forEach(total -> {
      Amount amount = Readings.amount(total);
      if (amount.isNumber() && !Double.isNaN(amount.value()) && !weighed.isEmpty() && classes > amount.value() * (1 + SCALE)
          && amount.kind() != daubline.base.ValueKind.AT_LEAST) {
        study.report(Finding.warning("mass.residues", "", "the residue classes add up to " + Printed.number(classes) + " kg, the total is given as "
            + Printed.number(amount.value()) + " kg", "check both against the source; both stay as they are"), total, "residue_total");
      }
    });
  }
}
