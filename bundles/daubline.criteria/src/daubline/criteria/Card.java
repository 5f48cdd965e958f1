package daubline.criteria;

import daubline.base.Source;
import daubline.engine.inference.Group;
import java.util.List;

/**
 * What describes a criterion.
 *
 * @param id short stable id
 * @param name name as printed
 * @param group group it is weighed in
 * @param meaning what its agreement means, in words
 * @param sources where method and figures come from
 */
record Card(String id, String name, Group group, String meaning, List<Source> sources) {

  Card(String id, String name, Group group, String meaning, Source... sources) {
    this(id, name, group, meaning, List.of(sources));
  }
}
