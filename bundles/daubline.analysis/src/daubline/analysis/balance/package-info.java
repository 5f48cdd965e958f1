/** The mass balance of a trial, forward from its charge and backward from its slag; remainders are shown, never closed. */
package daubline.analysis.balance;
