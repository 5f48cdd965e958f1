package daubline.criteria;

import daubline.base.Source;
import daubline.engine.inference.Criterion;
import daubline.engine.inference.Group;
import daubline.engine.inference.Setting;
import java.util.List;

/** A criterion described by a card. */
abstract class CardCriterion implements Criterion {

  private final Card card;
  private final List<String> inputs;
  private final List<Setting> settings;

  CardCriterion(Card card, List<String> inputs, List<Setting> settings) {
    this.card = card;
    this.inputs = List.copyOf(inputs);
    this.settings = List.copyOf(settings);
  }

  @Override
  public final String id() {
    return card.id();
  }

  @Override
  public final String name() {
    return card.name();
  }

  @Override
  public final Group group() {
    return card.group();
  }

  @Override
  public final List<String> inputs() {
    return inputs;
  }

  @Override
  public final List<Setting> settings() {
    return settings;
  }

  @Override
  public final String meaning() {
    return card.meaning();
  }

  @Override
  public final List<Source> sources() {
    return card.sources();
  }
}
