# SPDX-License-Identifier: GPL-3.0-or-later
# BCa 90 % intervals of three uniformity figures by R's package boot, for comparison.
#
#     Rscript tests/published/bootstrap_intervals.R > tests/published/bootstrap_intervals.csv
#
# Debian packages r-base-core and r-cran-boot. The output is kept beside this file, so that the
# tests need no R.
suppressMessages(library(boot))

folder <- dirname(sub("--file=", "", grep("--file=", commandArgs(FALSE), value = TRUE)))
data <- read.csv(file.path(folder, "bootstrap_data.csv"), comment.char = "#")

# Mean of the lowest share, the last value in part.
low_mean <- function(sorted, share) {
  k <- length(sorted) * share
  whole <- floor(k)
  part <- k - whole
  total <- sum(sorted[seq_len(whole)])
  if (part > 0) total <- total + part * sorted[whole + 1]
  total / k
}

figures <- function(x, i) {
  s <- sort(x[i])
  m <- mean(s)
  c(low_mean(s, 0.25) / m, low_mean(s, 0.5) / m, 1 - mean(abs(s - m)) / m)
}

cat("# Source: R", paste(R.version$major, R.version$minor, sep = "."), "with boot",
    as.character(packageVersion("boot")),
    "run on bootstrap_data.csv by bootstrap_intervals.R: 50,000 resamples, BCa, jackknife influence\n")
cat("set,figure,observed,low,high\n")
for (name in unique(data$set)) {
  set.seed(1)
  b <- boot(data$mm[data$set == name], figures, R = 50000)
  for (k in 1:3) {
    influence <- empinf(data = b$data, statistic = function(x, i) figures(x, i)[k],
                        type = "jack", stype = "i")
    ci <- boot.ci(b, conf = 0.90, type = "bca", index = k, L = influence)$bca
    cat(sprintf("%s,%s,%.6f,%.6f,%.6f\n", name, c("du_lq", "du_lh", "cu")[k], b$t0[k], ci[4], ci[5]))
  }
}
