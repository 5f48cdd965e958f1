/** A whole study as plain rows, for archives: taken apart, made fit for the public, and put together again. */
package daubline.analysis.deposit;
