/** The criteria, one class each, listed in {@link daubline.criteria.Criteria#all()}. */
package daubline.criteria;
