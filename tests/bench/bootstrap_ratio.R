# SPDX-License-Identifier: GPL-3.0-or-later
# BCa interval of the low-quarter uniformity, 10,000 resamples: R's package boot against ours, in one
# run on the same catches. One thread each and processor time, so that a busy machine does not decide.
#
#     Rscript tests/bench/bootstrap_ratio.R build/release/tests/bench/bootstrap_bench
suppressMessages(library(boot))
program <- commandArgs(TRUE)[1]

du_lq <- function(x, i) {
  k <- length(i) %/% 4
  y <- sort(x[i], partial = k)
  sum(y[seq_len(k)]) / k / mean(y)
}

cat("cans   boot, ms   with BCa, ms   ours, ms   ours on all threads, by the wall   ratio to boot, to BCa\n")
for (n in c(24, 100, 400)) {
  x <- 10 + 4 * sin(1.7 * seq_len(n))
  set.seed(1)
  resampling <- system.time(b <- boot(x, du_lq, R = 10000))[["user.self"]] * 1000
  interval <- system.time(boot.ci(b, conf = 0.90, type = "bca"))[["user.self"]] * 1000
  ours <- as.numeric(strsplit(system2(program, c("one", n), stdout = TRUE), " ")[[1]])
  cat(sprintf("%4d %10.0f %14.0f %10.2f %8.2f %25.0f %8.0f\n", n, resampling, resampling + interval,
              ours[2], ours[3], resampling / ours[2], (resampling + interval) / ours[2]))
}
