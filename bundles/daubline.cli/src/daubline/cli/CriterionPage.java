package daubline.cli;

import daubline.base.CatalogueWords;
import daubline.base.Source;
import daubline.base.Variable;
import daubline.base.Variables;
import daubline.base.Wording;
import daubline.engine.inference.Criterion;
import daubline.engine.inference.Setting;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The page of the guide about one criterion in one language, made of what the criterion says of itself. */
final class CriterionPage {

  private final StringBuilder html = new StringBuilder();

  private final Wording wording;
  private final CatalogueWords words;

  private CriterionPage(Wording wording) {
    this.wording = wording;
    this.words = CatalogueWords.of(wording.language());
  }

  /** The name of its file. */
  static String file(Criterion criterion) {
    return criterion.id().replace('_', '-') + ".html";
  }

  /** The page as HTML, in a language. */
  static String of(Criterion criterion, Wording wording) {
    CriterionPage page = new CriterionPage(wording);
    page.write(criterion);
    return page.html.toString();
  }

  private void write(Criterion criterion) {
    line("<!DOCTYPE html>");
    line("<html lang=\"" + wording.language() + "\">");
    line("<head><meta charset=\"utf-8\"><title>" + text(criterion.name()) + "</title><link rel=\"stylesheet\" href=\"../guide.css\"></head>");
    line("<body>");
    line("<h1>" + text(criterion.name()) + "</h1>");
    line("<p>" + text("A criterion of the group") + " <b>" + text(criterion.group().word()) + "</b>. "
        + text("It compares what was found after the fire with what was excavated; what was drawn or built is never read.") + "</p>");
    line("<h2>" + text("What its agreement means") + "</h2>");
    line("<p>" + text(criterion.meaning()) + "</p>");
    inputs(criterion);
    settings(criterion);
    line("<h2>" + text("Sources") + "</h2>");
    line("<ul>");
    criterion.sources().stream().map(Source::toString).forEach(source -> line("<li>" + text(source) + "</li>"));
    line("</ul>");
    line("<p>" + text("See also") + " <a href=\"../comparison.html\">" + text("The comparison: agreement and coverage") + "</a>.</p>");
    line("</body>");
    line("</html>");
  }

  private void inputs(Criterion criterion) {
    line("<h2>" + text("What it reads") + "</h2>");
    if (criterion.inputs().isEmpty()) {
      line("<p>" + text("Residue masses and counts, or chemical analyses, of both sheets; no single field.") + "</p>");
      return;
    }
    line("<dl>");
    for (String id : criterion.inputs()) {
      Variable variable = words.told(Variables.standard().get(id));
      line("<dt>" + text(variable.name()) + Optional.of(variable.unit().symbol()).filter(s -> !s.isEmpty()).map(s -> " (" + text(s) + ")").orElse("") + "</dt>");
      line("<dd>" + text(variable.meaning()) + (variable.evidencedBy().isEmpty() ? "" : " " + text("Shown by:") + " " + text(variable.evidencedBy()) + ".") + "</dd>");
    }
    line("</dl>");
  }

  private void settings(Criterion criterion) {
    line("<h2>" + text("Settings") + "</h2>");
    if (criterion.settings().isEmpty()) {
      line("<p>" + text("None.") + "</p>");
      return;
    }
    line("<table>");
    line("<tr>" + Stream.of("Setting", "Standard", "Meaning", "Source of the standard", "Key").map(h -> "<th>" + text(h) + "</th>").collect(Collectors.joining()) + "</tr>");
    for (Setting setting : criterion.settings()) {
      String standard = setting.printed(setting.standard());
      line("<tr><td>" + text(setting.name()) + "</td><td>" + text(standard.isEmpty() ? "empty" : standard) + "</td><td>" + text(setting.meaning()) + "</td><td>"
          + text(setting.source().toString()) + "</td><td>criterion." + criterion.id() + "." + setting.key() + "</td></tr>");
    }
    line("</table>");
    line("<p>" + text("A study keeps its own value with its reason:") + " <code>settings STUDY KEY VALUE --because SOURCE</code> " + text("on the command line.") + "</p>");
  }

  private void line(String line) {
    html.append(line).append('\n');
  }

  private String text(String text) {
    return wording.apply(text).replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;").replace("\u00A0", "&#160;");
  }
}
