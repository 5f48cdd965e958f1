package daubline.record;

import daubline.base.Finding;
import daubline.base.Numbers;
import daubline.base.WallStates;
import daubline.model.ModelFactory;
import daubline.model.ModelPackage.Literals;
import daubline.model.Sheet;
import daubline.model.WallZone;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EAttribute;

/** Patches of the inner wall by clock position and height, with what the fire did to them; the same for excavated and experimental remains. */
public final class ZoneTable extends ObjectTable<WallZone> {

  private static final int HOURS = 12;

  private final Supplier<Sheet> sheet;
  private final Supplier<Sheet> make;

  /**
   * The zones of a sheet.
   *
   * @param sheet the sheet; may say null when there is none yet
   * @param make the sheet, made when there is none; called inside a change
   */
  public ZoneTable(Desk desk, Supplier<Sheet> sheet, Supplier<Sheet> make) {
    super("zones", desk);
    this.sheet = sheet;
    this.make = make;
    refresh();
  }

  @Override
  protected List<WallZone> find() {
    return sheet.get() == null ? List.of() : shown(sheet.get().getZones());
  }

  @Override
  protected WallZone begin() {
    WallZone made = ModelFactory.eINSTANCE.createWallZone();
    make.get().getZones().add(made);
    return made;
  }

  @Override
  protected List<EntryColumn<WallZone>> make() {
    return List.of(EntryColumn.<WallZone>typed("clock", 0.6, z -> z.getClock() == null ? "" : z.getClock().toString(), this::readClock).doubting(this::odd),
        height("low", Literals.WALL_ZONE__LOW), height("high", Literals.WALL_ZONE__HIGH),
        EntryColumn.<WallZone>typed("state", 1, z -> shown(Columns.text(z.getState())), this::readState).offering(z -> states().map(this::shown).toList()),
        Columns.<WallZone>text("note", 1.6, Literals.WALL_ZONE__NOTE).askedWhen(z -> false));
  }

  private EntryColumn<WallZone> height(String id, EAttribute attribute) {
    return Columns.<WallZone>length(desk(), id, 0.8, attribute);
  }

  /** The standard states and those that the study uses already. */
  private Stream<String> states() {
    return Stream.concat(WallStates.STANDARD.stream(), find().stream().map(z -> Columns.text(z.getState())).filter(s -> !s.isBlank())).distinct();
  }

  private String shown(String state) {
    return desk().words().orElse("zones.state." + state, state);
  }

  private Entry<WallZone> readState(String typed) {
    String kept = states().filter(s -> typed.equalsIgnoreCase(s) || typed.equalsIgnoreCase(shown(s))).findFirst().orElse(typed.toLowerCase(Locale.ROOT));
    return Entry.of(z -> z.setState(typed.isBlank() ? null : kept));
  }

  private Entry<WallZone> readClock(String typed) {
    Optional<Integer> hour = Numbers.parse(typed, desk().decimal().get()).filter(n -> n == Math.rint(n) && n >= 1 && n <= HOURS).map(Double::intValue);
    return typed.isBlank() || hour.isPresent() ? Entry.of(z -> z.setClock(hour.orElse(null)))
        : Entry.wrong("zone.clock", "“" + typed + "” is no clock position", "write a whole number from 1 to 12, the front at 6");
  }

  /** The upper edge lies above the lower one. */
  @Override
  protected Optional<Finding> refusal(WallZone zone, EntryColumn<WallZone> column, String text) {
    if (zone == null || text.isBlank()) {
      return Optional.empty();
    }
    WallZone probe = ModelFactory.eINSTANCE.createWallZone();
    probe.setLow(zone.getLow());
    probe.setHigh(zone.getHigh());
    if (column.id().equals("low") || column.id().equals("high")) {
      column.read().apply(text).change().accept(probe);
    }
    return probe.getLow() != null && probe.getHigh() != null && probe.getHigh() <= probe.getLow()
        ? Optional.of(Finding.error("zone.upside", "", "the upper edge does not lie above the lower one", "write the lower edge first, both in height above the floor"))
        : Optional.empty();
  }

  private Optional<Finding> odd(WallZone zone) {
    boolean whole = zone.getClock() != null && zone.getLow() != null && zone.getHigh() != null && zone.getState() != null;
    if (!whole) {
      return Optional.of(Finding.note("zone.part", "", "the zone is not whole and is not drawn", "write clock position, both edges and what the fire did"));
    }
    return find().stream().filter(o -> o != zone && zone.getClock().equals(o.getClock()) && o.getLow() != null && o.getHigh() != null)
        .filter(o -> Math.min(o.getHigh(), zone.getHigh()) - Math.max(o.getLow(), zone.getLow()) > 1e-9).findFirst()
        .map(o -> Finding.warning("zone.twice", "", "another zone at " + zone.getClock() + " covers part of the same height", "end one where the other begins"));
  }
}
