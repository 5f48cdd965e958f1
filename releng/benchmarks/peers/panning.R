# How long R takes to draw one view of six hours of eight channels, a value a second, into a picture of a size: panning.R WIDTH HEIGHT
size <- as.integer(commandArgs(trailingOnly = TRUE))
set.seed(37)
seconds <- 0:(6 * 3600 - 1)
channels <- sapply(0:7, function(c) 200 + 100 * c + rnorm(length(seconds)))
picture <- tempfile(fileext = ".png")
view <- function(share) {
  from <- share * 6 * 3600
  png(picture, width = size[1], height = size[2], type = "cairo")
  inside <- seconds >= from & seconds <= from + 0.5 * 6 * 3600
  matplot(seconds[inside], channels[inside, ], type = "l", xlab = "", ylab = "")
  dev.off()
}
invisible(view(0))
taken <- sapply(0:9 / 20, function(share) system.time(view(share))[["elapsed"]])
cat(sprintf("R %s.%s matplot into a picture of %d x %d: middle view %.0f ms, longest %.0f ms\n", R.version$major, R.version$minor, size[1], size[2], 1000 * median(taken), 1000 * max(taken)))
