/** Trials beside evidence: the grid of agreement and coverage, the ranking, the reasons. */
package daubline.ui.compare;
