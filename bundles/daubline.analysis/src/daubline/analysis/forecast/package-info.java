/** Before the fire: what is planned for a trial, handed to the process engine. */
package daubline.analysis.forecast;
