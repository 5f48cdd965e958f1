# R packages beside DesignTimes: space-filling hypercubes (lhs), restricted maximum likelihood (lme4), permutations (base R).
# What is not installed is left out. usage: Rscript releng/benchmarks/peers/designs.R
cpu <- function(expr) { t <- system.time(expr); t[["user.self"]] + t[["sys.self"]] }
has <- function(p) suppressWarnings(suppressMessages(requireNamespace(p, quietly = TRUE)))

if (has("lhs")) {
  closest <- function(x) min(dist(x))
  set.seed(7)
  best <- 0
  t <- cpu(for (i in 1:100) best <- max(best, closest(lhs::optimumLHS(20, 6, maxSweeps = 4))))
  cat(sprintf("R lhs %s optimumLHS, 20 points in 6 dimensions, best of 100: closest %.4f in %.3f s of processor\n", packageVersion("lhs"), best, t))
  best <- 0
  t <- cpu(for (i in 1:1000) best <- max(best, closest(lhs::maximinLHS(20, 6))))
  cat(sprintf("R lhs maximinLHS, best of 1000: closest %.4f in %.3f s of processor\n", best, t))
}

oats <- c(111, 130, 157, 174, 117, 114, 161, 141, 105, 140, 118, 156, 61, 91, 97, 100, 70, 108, 126, 149, 96, 124, 121, 144, 68, 64, 112, 86,
  60, 102, 89, 96, 89, 129, 132, 124, 74, 89, 81, 122, 64, 103, 132, 133, 70, 89, 104, 117, 62, 90, 100, 116, 80, 82, 94, 126, 63, 70, 109, 99,
  53, 74, 118, 113, 89, 82, 86, 104, 97, 99, 119, 121)
if (has("lme4")) {
  d <- data.frame(y = oats, n = factor(rep(0:3, 18)), v = factor(rep(rep(1:3, each = 4), 6)), b = factor(rep(1:6, each = 12)))
  fit <- function() lme4::lmer(y ~ n * v + (1 | b / v), d)
  m <- fit()
  t <- cpu(for (i in 1:20) fit())
  cat(sprintf("R lme4 %s, oats, 72 trials in two strata: criterion %.5f, %.3f ms of processor a fit\n", packageVersion("lme4"), lme4::REMLcrit(m), 50 * t))
  if (has("pbkrtest")) {
    small <- lme4::lmer(y ~ n + v + (1 | b / v), d)
    pbkrtest::KRmodcomp(m, small)
    t <- cpu(for (i in 1:5) pbkrtest::KRmodcomp(m, small))
    cat(sprintf("R pbkrtest %s, Kenward-Roger test of one term: %.1f ms of processor\n", packageVersion("pbkrtest"), 200 * t))
  }
}

set.seed(1)
x <- matrix(sample(rep(c(-1, 1), 72)), 24)
y <- rnorm(24)
once <- function() { o <- abs(crossprod(x, y)); n <- integer(6); for (i in 1:10000) n <- n + (abs(crossprod(x, sample(y))) >= o); (n + 1) / 10001 }
invisible(once())
t <- cpu(for (i in 1:5) once())
cat(sprintf("base R, 10 000 permutations of 24 trials, 6 effects: %.1f ms of processor\n", 200 * t))
