package daubline.analysis.forecast;

import daubline.base.Amount;
import daubline.base.Material;
import daubline.base.Printed;
import daubline.base.Trail;
import daubline.engine.process.air.PackedBed;
import daubline.model.Lot;
import daubline.model.SizeBand;
import daubline.session.Readings;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The size of a charcoal lot by its sieve bands: the volume-to-surface mean, on which the resistance of a bed hangs.
 *
 * @param size m
 * @param from the lot and its bands
 */
record SieveBands(double size, Trail from) {

  /** Of the widest band nothing is known but its lower mesh: taken as passing twice that (common practice, no source). */
  private static final double OPEN = 2;

  /** The first charcoal lot of a trial that has bands. */
  static Optional<SieveBands> of(Stream<Lot> lots) {
    return lots.filter(l -> l.getMaterial() == Material.CHARCOAL).flatMap(l -> of(l, bands(l)).stream()).findFirst();
  }

  /** What of the last sieving of a lot stayed in it; otherwise what it got when the lot it comes from was sieved. */
  private static List<SizeBand> bands(Lot lot) {
    List<SizeBand> own = lot.getTreatments().reversed().stream().map(t -> t.getBands().stream().filter(b -> b.getLot() == null || b.getLot() == lot).toList())
        .filter(b -> !b.isEmpty()).findFirst().orElse(List.of());
    return !own.isEmpty() ? own : lot.getFrom().stream().flatMap(l -> l.getTreatments().stream()).flatMap(t -> t.getBands().stream())
        .filter(b -> b.getLot() == lot).toList();
  }

  private static Optional<SieveBands> of(Lot lot, List<SizeBand> bands) {
    List<SizeBand> weighed = bands.stream().filter(b -> middle(b) > 0 && Readings.amount(b).isNumber() && Readings.amount(b).value() > 0).toList();
    if (weighed.isEmpty()) {
      return Optional.empty();
    }
    double size = PackedBed.meanSize(weighed.stream().mapToDouble(SieveBands::middle).toArray(),
        weighed.stream().map(Readings::amount).mapToDouble(Amount::value).toArray());
    return Optional.of(new SieveBands(size, Trail.entry("Charcoal size, volume-to-surface mean of " + weighed.size() + " sieve bands of lot " + lot.getName(),
        Printed.number(1000 * size, 3) + "\u00A0mm", String.valueOf(lot.getId()))));
  }

  /** The size that has the surface of a band whose mass lies evenly between its meshes; half the mesh for what passes the finest. */
  private static double middle(SizeBand band) {
    double from = band.getMeshFrom() == null ? 0 : band.getMeshFrom();
    double to = band.getMeshTo() == null ? OPEN * from : band.getMeshTo();
    return from > 0 && to > from ? (to - from) / Math.log(to / from) : to / 2;
  }
}
