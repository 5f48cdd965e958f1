"""Scores of many trials against many sheets in vectorised NumPy: the arithmetic of ScoreTimes, the same sizes.

Numbers (17 of 24 criteria, 10 of 15; two of them against a lower limit), features present or absent, one set of class
shares, one composition of eight oxides, with the trial drawn within its uncertainty; pooled geometrically with a floor;
5, 50 and 95 % points.

usage: python3 releng/benchmarks/peers/scoring.py TRIALS SHEETS CRITERIA DRAWS
"""
import os
import resource
import sys
import time

import numpy as np
from scipy.special import log_ndtr

LIMITS, CLASSES, PARTS = 2, 4, 8
FLOOR = np.log(1e-3)


def main():
    trials, sheets, criteria, draws = (int(a) for a in sys.argv[1:5])
    numbers = 17 if criteria == 24 else 10
    words_count = criteria - 2 - numbers
    rng = np.random.default_rng(1)
    found = 0.3 + 0.05 * rng.standard_normal((trials, numbers))
    asked = 0.3 + 0.05 * rng.standard_normal((sheets, numbers))
    scale = np.full(numbers, 0.05)
    words = np.log(np.where(rng.random((sheets, words_count)) < 0.5, 1.0, 0.02))
    masses = 1 + rng.random((trials, CLASSES))
    shares = rng.dirichlet(np.ones(CLASSES), sheets)
    slag = np.log(0.02 + 0.1 * rng.random((trials, PARTS)))
    evidence = np.log(0.02 + 0.1 * rng.random((sheets, PARTS)))
    weights = 1 / np.full(PARTS, 0.15**2 + 0.03**2)
    begin, used = time.perf_counter(), time.process_time()
    table = np.empty((trials, sheets, 3))
    for t in range(trials):
        x = found[t][:, None] + 0.01 * rng.standard_normal((numbers, draws))
        roots = np.exp(0.025 * rng.standard_normal((CLASSES, draws)))
        slags = slag[t][:, None] + 0.03 * rng.standard_normal((PARTS, draws))
        for s in range(sheets):
            z = (x - asked[s][:, None]) / scale[:, None]
            logs = np.empty((numbers, draws))
            logs[LIMITS:] = -0.5 * z[LIMITS:] ** 2
            logs[:LIMITS] = log_ndtr(z[:LIMITS])
            pooled = np.maximum(logs, FLOOR).sum(axis=0) + words[s].sum()
            products = np.sqrt(shares[s] * masses[t]) @ roots
            overlap = products / np.sqrt(masses[t] @ (roots * roots))
            pooled += np.maximum(-8 * 20 * (1 - overlap) / (2 * (CLASSES - 1)), FLOOR)
            d = slags - evidence[s][:, None]
            m2 = weights @ (d * d) - (weights @ d) ** 2 / weights.sum()
            pooled += np.maximum(-m2 / (2 * (PARTS - 1)), FLOOR)
            table[t, s] = 100 * np.exp(np.percentile(pooled / criteria, (5, 50, 95)))
    seconds, used = time.perf_counter() - begin, time.process_time() - used
    print(f"NumPy {np.__version__} {trials} x {sheets} x {criteria} x {draws}: {seconds:.3f} s, {used:.3f} s of processor, "
          f"{seconds * 1e9 / (trials * sheets * criteria * draws):.2f} ns per draw, "
          f"peak memory {resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1e3:.0f} MB, load {os.getloadavg()[0]:.1f}")


if __name__ == "__main__":
    main()
