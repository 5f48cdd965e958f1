package daubline.record.print;

import daubline.model.Hazard;
import daubline.model.Permission;
import daubline.model.RoleAssignment;
import daubline.model.Series;
import daubline.model.Study;
import daubline.model.Trial;
import daubline.record.RecordWords;
import java.io.IOException;
import java.util.List;

/** What everybody is told before the fire: when to stop, who does what, hazards, permissions, usual cautions – and lines to sign. */
final class Briefing {

  private static final List<String> CAUTIONS = List.of("gas", "burns", "water", "dust", "crowd");
  private static final float LINE = 15;
  private static final float HEADING = 13;
  private static final float SIGN = 26;
  private static final int FEWEST_LINES = 8;

  private final Paper paper;
  private final RecordWords words;
  private float y;

  Briefing(Paper paper, RecordWords words) {
    this.paper = paper;
    this.words = words;
  }

  /**
   * Prints it.
   *
   * @param trial the trial; one without series and name gives a briefing whose lines are filled by hand
   */
  void print(Study study, Trial trial) throws IOException {
    Series series = trial.eContainer() instanceof Series s ? s : null;
    begin();
    paper.text((words.of("briefing.title") + "   " + text(trial.getName()) + "   " + text(trial.getOn())).strip(), Paper.EDGE, y, 16);
    y += 6;
    say(words.of("print.safety"), 0);
    String stop = series == null ? "" : text(series.getStopCriteria());
    heading("briefing.stop");
    say(stop.isEmpty() ? "____________________________________________________________" : stop, 0);
    heading("briefing.who");
    List<RoleAssignment> roles = series == null ? List.of() : series.getRoles();
    for (RoleAssignment role : roles) {
      say(roleWord(role) + ": " + (role.getPerson() == null ? "____________________" : text(role.getPerson().getName())) + ", " + times(role), 0);
    }
    none(roles);
    heading("briefing.hazards");
    for (Hazard hazard : study.getHazards()) {
      say(hazard(hazard), 14);
    }
    none(study.getHazards());
    heading("briefing.permissions");
    for (Permission permission : study.getPermissions()) {
      say(String.join(", ", java.util.stream.Stream.of(text(permission.getName()), text(permission.getReference()), text(permission.getIssuer()),
          text(permission.getValidUntil()).isEmpty() ? "" : words.of("briefing.until", permission.getValidUntil())).filter(t -> !t.isEmpty()).toList()), 14);
    }
    none(study.getPermissions());
    heading("briefing.cautions");
    for (String caution : CAUTIONS) {
      say(words.of("briefing.caution." + caution), 14);
    }
    signatures(roles);
  }

  private void begin() throws IOException {
    paper.sheet();
    y = Paper.EDGE + 16;
  }

  private void heading(String key) throws IOException {
    room(3 * LINE);
    y += 8;
    say(words.of(key), 0, HEADING);
  }

  private void say(String text, float hang) throws IOException {
    say(text, hang, Paper.SMALLEST);
  }

  private void say(String text, float hang, float size) throws IOException {
    float in = 0;
    for (String line : paper.wrap(text, size, paper.width() - 2 * Paper.EDGE - hang)) {
      room(LINE);
      y += LINE + size - Paper.SMALLEST;
      paper.text(line, Paper.EDGE + in, y, size);
      in = hang;
    }
  }

  private void none(List<?> list) throws IOException {
    if (list.isEmpty()) {
      say(words.of("briefing.none") + " ________________________________________", 0);
    }
  }

  /** Begins a new sheet when there is no room left. */
  private void room(float wanted) throws IOException {
    if (y + wanted > paper.height() - Paper.EDGE) {
      begin();
    }
  }

  private String roleWord(RoleAssignment role) {
    return words.orElse("role." + text(role.getRole()).replace(' ', '_'), text(role.getRole()));
  }

  private String times(RoleAssignment role) {
    String from = text(role.getFrom());
    String until = text(role.getUntil());
    return from.isEmpty() && until.isEmpty() ? words.of("briefing.all") : from + "–" + until;
  }

  private String hazard(Hazard hazard) {
    String what = text(hazard.getControl()).isEmpty() ? words.of("briefing.na", text(hazard.getNotApplicableBecause())) : hazard.getControl();
    String who = text(hazard.getWho()).isEmpty() ? "" : " – " + hazard.getWho();
    return text(hazard.getName()) + who + ": " + what + (text(hazard.getOwner()).isEmpty() ? "" : " " + words.of("briefing.owner", hazard.getOwner()));
  }

  /** A line for each person planned, and some more. */
  private void signatures(List<RoleAssignment> roles) throws IOException {
    List<String> names = roles.stream().filter(r -> r.getPerson() != null).map(r -> text(r.getPerson().getName())).distinct().toList();
    int lines = Math.max(FEWEST_LINES, names.size() + 2);
    room(4 * SIGN);
    y += 12;
    say(words.of("briefing.signed"), 0);
    float wide = paper.width() - 2 * Paper.EDGE;
    float[] columns = {0, wide * 0.4f, wide * 0.75f, wide};
    room(SIGN);
    y += SIGN - 6;
    String[] heads = {"name", "signature", "time"};
    for (int i = 0; i < heads.length; i++) {
      paper.text(words.of("briefing.sign." + heads[i]), Paper.EDGE + columns[i] + 4, y, Paper.SMALLEST);
    }
    y += 6;
    for (int i = 0; i < lines; i++) {
      room(SIGN);
      paper.line(Paper.EDGE, y, Paper.EDGE + wide, y);
      if (i < names.size()) {
        paper.text(names.get(i), Paper.EDGE + 4, y + SIGN - 9, Paper.SMALLEST);
      }
      for (float column : columns) {
        paper.line(Paper.EDGE + column, y, Paper.EDGE + column, y + SIGN);
      }
      y += SIGN;
      paper.line(Paper.EDGE, y, Paper.EDGE + wide, y);
    }
  }

  private static String text(String text) {
    return text == null ? "" : text.strip();
  }
}
