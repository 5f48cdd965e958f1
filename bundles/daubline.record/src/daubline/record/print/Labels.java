package daubline.record.print;

import daubline.model.Sample;
import daubline.model.Trial;
import daubline.record.RecordWords;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Optional;

/** Labels for sample bags: the label in letters and as Code 128, the trial, the day and what it is. */
public final class Labels {

  private static final int COLUMNS = 2;
  private static final int ROWS = 6;
  private static final float LARGE = 18;
  private static final float BARS = 34;
  /** Smallest module that hand readers take, pt: 0.19 mm (common practice, no source). */
  private static final float THINNEST = 0.54f;
  private static final float WIDEST = 1.2f;

  private Labels() {
  }

  /** Writes labels, twelve on a sheet. */
  public static void write(List<Sample> samples, RecordWords words, PaperSize size, OutputStream out) throws IOException {
    try (Paper paper = new Paper(size, false, words.of("print.labels"))) {
      float wide = (paper.width() - 2 * Paper.EDGE) / COLUMNS;
      float tall = (paper.height() - 2 * Paper.EDGE) / ROWS;
      for (int i = 0; i < Math.max(1, samples.size()); i++) {
        int place = i % (COLUMNS * ROWS);
        if (place == 0) {
          paper.sheet();
        }
        if (i < samples.size()) {
          label(paper, samples.get(i), words, Paper.EDGE + place % COLUMNS * wide, Paper.EDGE + place / COLUMNS * tall, wide, tall);
        }
      }
      paper.save(out);
    }
  }

  private static void label(Paper paper, Sample sample, RecordWords words, float x, float y, float wide, float tall) throws IOException {
    float inner = wide - 24;
    paper.frame(x + 4, y + 4, wide - 8, tall - 8);
    String name = sample.getName() == null ? "" : sample.getName();
    float size = LARGE;
    while (size > Paper.SMALLEST && paper.measure(name, size) > inner) {
      size -= 1;
    }
    paper.text(name, x + 12, y + 26, size);
    Optional<String> code = Code128.widths(name);
    if (code.isPresent()) {
      bars(paper, code.get(), x + 12, y + 34, inner);
    } else {
      paper.text(words.of("print.nocode"), x + 12, y + 54, Paper.SMALLEST);
    }
    String trial = sample.eContainer() instanceof Trial t && t.getName() != null ? t.getName() : "";
    String day = sample.getTakenOn() == null ? "" : sample.getTakenOn();
    paper.text((trial + "   " + day).strip(), x + 12, y + 34 + BARS + 14, Paper.SMALLEST);
    String what = sample.getMaterial() == null ? "" : words.orElse("material." + sample.getMaterial().name(), words.said(sample.getMaterial().word()));
    List<String> lines = paper.wrap((what + "   " + (sample.getQuestion() == null ? "" : sample.getQuestion())).strip(), Paper.SMALLEST, inner);
    paper.text(lines.get(0), x + 12, y + 34 + BARS + 28, Paper.SMALLEST);
  }

  /** A code that would need thinner bars than readers take is left out; the letters stand there anyway. */
  private static void bars(Paper paper, String widths, float x, float y, float wide) throws IOException {
    float module = Math.min(WIDEST, wide / (Code128.modules(widths) + 2 * Code128.QUIET));
    if (module < THINNEST) {
      return;
    }
    float at = x + Code128.QUIET * module;
    for (int i = 0; i < widths.length(); i++) {
      float bar = (widths.charAt(i) - '0') * module;
      if (i % 2 == 0) {
        paper.bar(at, y, bar, BARS);
      }
      at += bar;
    }
  }
}
