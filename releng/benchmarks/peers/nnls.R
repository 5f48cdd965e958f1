# 10 000 non-negative least squares of 8 rows and 3 columns by the R package nnls: the peer of ProcessTimes.
# usage: Rscript releng/benchmarks/peers/nnls.R
library(nnls)
set.seed(9)
n <- 10000
a <- lapply(1:n, function(i) matrix(runif(24), 8, 3))
b <- lapply(1:n, function(i) runif(8))
for (i in 1:1000) nnls(a[[i]], b[[i]])
t <- system.time(for (i in 1:n) nnls(a[[i]], b[[i]]))
cat(sprintf("R nnls: %.4f ms of processor each\n", 1000 * (t[["user.self"]] + t[["sys.self"]]) / n))
