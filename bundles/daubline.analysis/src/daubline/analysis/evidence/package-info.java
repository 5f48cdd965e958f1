/** What is done with evidence before it is compared: reckoning, reading reports, choosing between claims. */
package daubline.analysis.evidence;
