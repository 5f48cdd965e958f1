/**
 * Statistics on arrays and small records: distributions, compositions, shares, ranks, mixing, uncertainty. Every random
 * number comes from a {@link daubline.engine.stats.RandomStream} keyed by a seed and names, so that neither the order of
 * rows nor the number of threads changes a result.
 */
package daubline.engine.stats;
