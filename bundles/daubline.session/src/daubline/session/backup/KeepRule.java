package daubline.session.backup;

import java.time.LocalDateTime;
import java.time.temporal.WeekFields;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/**
 * Which backups stay: the newest of each of the last days, weeks and months in which one was made. Time in which nobody
 * worked makes nothing go away, and the newest of all always stays.
 *
 * @param days of how many days; 0 for none
 * @param weeks of how many weeks, beginning on Monday; 0 for none
 * @param months of how many months; 0 for none
 */
public record KeepRule(int days, int weeks, int months) {

  /** What is kept unless the person says otherwise; common practice, no source. */
  public static final KeepRule STANDARD = new KeepRule(7, 5, 12);

  public KeepRule {
    if (days < 0 || weeks < 0 || months < 0) {
      throw new IllegalArgumentException("the number of backups to keep is not negative: " + days + ", " + weeks + ", " + months);
    }
  }

  /** The backups that may go. */
  public List<Backup> superfluous(List<Backup> all) {
    List<Backup> newestFirst = all.stream().sorted((a, b) -> b.at().compareTo(a.at())).toList();
    Set<Backup> kept = new HashSet<>();
    newestFirst.stream().limit(1).forEach(kept::add);
    keep(newestFirst, days, LocalDateTime::toLocalDate, kept);
    keep(newestFirst, weeks, t -> t.get(WeekFields.ISO.weekBasedYear()) * 100 + t.get(WeekFields.ISO.weekOfWeekBasedYear()), kept);
    keep(newestFirst, months, t -> t.getYear() * 100 + t.getMonthValue(), kept);
    return all.stream().filter(b -> !kept.contains(b)).toList();
  }

  private static void keep(List<Backup> newestFirst, int most, Function<LocalDateTime, Object> span, Set<Backup> kept) {
    Set<Object> seen = new HashSet<>();
    for (Backup backup : newestFirst) {
      Object of = span.apply(backup.at());
      if (seen.size() < most && seen.add(of)) {
        kept.add(backup);
      }
    }
  }
}
