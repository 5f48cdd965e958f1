package daubline.analysis.record;

import daubline.engine.inference.Statement;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A piece of metal: depth in the tree from 0, and its statements by variable id. */
public record PieceData(String id, String name, String stage, int depth, String note, Map<String, List<Statement>> values) {

  public PieceData {
    values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
  }
}
