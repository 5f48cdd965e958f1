/** Statistics on arrays and small records: pure functions, no clock, no locale, randomness only from a seed. */
package daubline.engine.stats;
