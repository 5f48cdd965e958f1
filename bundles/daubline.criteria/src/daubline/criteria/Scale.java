package daubline.criteria;

/** Whether numbers are compared by their difference or by their ratio. */
enum Scale {
  DIFFERENCE,
  RATIO;

  Interval apply(Interval interval) {
    return this == RATIO ? interval.log() : interval;
  }
}
