/** Writes the studies under seeds/ from tables and rules, the same bytes each time; no part of what is shipped. */
package daubline.seeds;
