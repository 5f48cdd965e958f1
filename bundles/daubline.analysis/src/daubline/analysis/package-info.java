/**
 * The only reader of model objects: makes immutable snapshots of a study, runs criteria and engines on them, checks a
 * study's integrity, and returns results.
 */
package daubline.analysis;
