package daubline.export.format;

import daubline.export.Cell;
import daubline.export.Column;
import daubline.export.Style;
import daubline.export.Table;
import java.io.IOException;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A table in LaTeX: three rules, the heading repeated on every page, notes below. It needs the packages longtable,
 * booktabs and array, and an engine or input encoding for UTF-8.
 */
public final class Latex implements TableWriter {

  private static final int LONG_TEXT = 28;

  private final Style style;

  /** A writer in a style. */
  public Latex(Style style) {
    this.style = style;
  }

  @Override
  public void write(Table full, Appendable out) throws IOException {
    Table table = PrintTable.of(full);
    out.append("% needs \\usepackage{longtable,booktabs,array}\n");
    if (table.rows().isEmpty()) {
      out.append(escape(table.title() + ": " + PrintTable.nothing(style))).append('\n');
      return;
    }
    out.append("\\begin{longtable}{").append(alignment(table)).append("}\n");
    out.append("\\caption{").append(escape(table.title() + ". " + table.caption())).append("\\label{tab:").append(table.id()).append("}}\\\\\n");
    String heading = line(table.columns().stream().map(c -> escape(c.fullHeading())).toList());
    out.append("\\toprule\n").append(heading).append("\\midrule\n\\endfirsthead\n");
    out.append("\\toprule\n").append(heading).append("\\midrule\n\\endhead\n\\bottomrule\n\\endlastfoot\n");
    for (List<Cell> row : table.rows()) {
      out.append(line(row.stream().map(this::cell).toList()));
    }
    out.append("\\end{longtable}\n");
    for (String note : PrintTable.notes(table, style)) {
      out.append("\\noindent{\\footnotesize ").append(escape(note)).append("\\par}\n");
    }
  }

  private static String alignment(Table table) {
    StringBuilder columns = new StringBuilder("@{}");
    for (int c = 0; c < table.columns().size(); c++) {
      int longest = table.cells(c).stream().mapToInt(cell -> cell.text().length()).max().orElse(0);
      columns.append(table.columns().get(c).kind() == Column.Kind.NUMBER ? "r" : longest > LONG_TEXT ? ">{\\raggedright\\arraybackslash}p{4.5cm}" : "l");
    }
    return columns.append("@{}").toString();
  }

  private String cell(Cell cell) {
    String text = escape(style.print(cell));
    return cell.note() == 0 ? text : text + "\\textsuperscript{" + cell.note() + "}";
  }

  private static String line(List<String> cells) {
    return cells.stream().collect(Collectors.joining(" & ", "", " \\\\\n"));
  }

  private static String escape(String text) {
    StringBuilder escaped = new StringBuilder();
    text.codePoints().forEach(c -> escaped.append(switch (c) {
      case '\\' -> "\\textbackslash{}";
      case '~' -> "\\textasciitilde{}";
      case '^' -> "\\textasciicircum{}";
      case '<' -> "\\textless{}";
      case '>' -> "\\textgreater{}";
      case '&', '%', '$', '#', '_', '{', '}' -> "\\" + (char) c;
      case '≥' -> "$\\geq$";
      case '≤' -> "$\\leq$";
      case '−' -> "$-$";
      case '÷' -> "$\\div$";
      case '[' -> "{[}";
      case '\n', '\r', '\t' -> " ";
      default -> c >= '₀' && c <= '₉' ? "\\textsubscript{" + (char) (c - '₀' + '0') + "}" : Character.toString(c);
    }));
    return escaped.toString();
  }
}
