# Scores of many trials against many sheets in vectorised R: the arithmetic of ScoreTimes and scoring.py, the same sizes.
# usage: Rscript releng/benchmarks/peers/scoring.R TRIALS SHEETS CRITERIA DRAWS
size <- as.integer(commandArgs(trailingOnly = TRUE))
trials <- size[1]; sheets <- size[2]; criteria <- size[3]; draws <- size[4]
limits <- 2; classes <- 4; parts <- 8
numbers <- if (criteria == 24) 17 else 10
features <- criteria - 2 - numbers
floor <- log(1e-3)
set.seed(1)
found <- matrix(0.3 + 0.05 * rnorm(trials * numbers), trials)
asked <- matrix(0.3 + 0.05 * rnorm(sheets * numbers), sheets)
words <- matrix(log(ifelse(runif(sheets * features) < 0.5, 1, 0.02)), sheets)
masses <- matrix(1 + runif(trials * classes), trials)
shares <- matrix(rexp(sheets * classes), sheets)
shares <- shares / rowSums(shares)
slag <- matrix(log(0.02 + 0.1 * runif(trials * parts)), trials)
evidence <- matrix(log(0.02 + 0.1 * runif(sheets * parts)), sheets)
weights <- rep(1 / (0.15^2 + 0.03^2), parts)
table <- array(0, c(trials, sheets, 3))
one <- 1:limits
invisible(gc(reset = TRUE))
time <- system.time(for (t in 1:trials) {
  x <- matrix(found[t, ] + 0.01 * rnorm(numbers * draws), numbers)
  roots <- exp(0.025 * matrix(rnorm(classes * draws), classes))
  slags <- matrix(slag[t, ] + 0.03 * rnorm(parts * draws), parts)
  below <- sqrt(drop(masses[t, ] %*% roots^2))
  for (s in 1:sheets) {
    z <- (x - asked[s, ]) / 0.05
    logs <- -0.5 * z * z
    logs[one, ] <- pnorm(z[one, ], log.p = TRUE)
    pooled <- colSums(pmax(logs, floor)) + sum(words[s, ])
    overlap <- drop(sqrt(shares[s, ] * masses[t, ]) %*% roots) / below
    pooled <- pooled + pmax(-8 * 20 * (1 - overlap) / (2 * (classes - 1)), floor)
    d <- slags - evidence[s, ]
    m2 <- drop(weights %*% (d * d)) - drop(weights %*% d)^2 / sum(weights)
    pooled <- pooled + pmax(-m2 / (2 * (parts - 1)), floor)
    table[t, s, ] <- 100 * exp(quantile(pooled / criteria, c(0.05, 0.5, 0.95), names = FALSE))
  }
})
cat(sprintf("R %s %d x %d x %d x %d: %.3f s, %.3f s of processor, %.2f ns per draw, peak memory %.0f MB\n", getRversion(), trials, sheets,
  criteria, draws, time[["elapsed"]], time[["user.self"]] + time[["sys.self"]], time[["elapsed"]] * 1e9 / (trials * sheets * criteria * draws),
  sum(gc()[, 6])))
