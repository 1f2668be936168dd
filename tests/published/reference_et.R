# SPDX-License-Identifier: GPL-3.0-or-later
# Independent computation of daily reference ET and of the root-zone balance in R, written from the
# equations, for comparison with core/weather and core/budget.
# Run: Rscript reference_et.R   (r-base-core of Debian 12); writes reference_et_r.csv and root_zone_r.csv
options(digits = 17)
set.seed(20240701, kind = "Mersenne-Twister")
n <- 240
lat <- runif(n, -55, 60)
j <- sample(1:365, n, replace = TRUE)
z <- runif(n, 0, 2500)
tmin <- runif(n, -4, 24)
tmax <- tmin + runif(n, 4, 20)
tdew <- tmin - runif(n, 0, 8)
zw <- sample(c(2, 3, 10), n, replace = TRUE)
uz <- runif(n, 0.8, 7)
clear <- runif(n, 0.2, 1)

phi <- lat * pi / 180
delta <- 0.409 * sin(2 * pi * j / 365 - 1.39)
ws <- acos(pmax(-1, pmin(1, -tan(phi) * tan(delta))))
ra <- 24 / pi * 4.92 * (1 + 0.033 * cos(2 * pi * j / 365)) *
  (ws * sin(phi) * sin(delta) + cos(phi) * cos(delta) * sin(ws))
rso <- (0.75 + 2e-5 * z) * ra
rs <- clear * rso
keep <- ra > 4

es0 <- function(t) 0.6108 * exp(17.27 * t / (t + 237.3))
daily <- function(cn, cd, slope_top, sigma, floor_ratio, wind_floor) {
  t <- (tmax + tmin) / 2
  d <- slope_top(t) / (t + 237.3)^2
  p <- 101.3 * ((293 - 0.0065 * z) / 293)^5.26
  g <- 0.000665 * p
  u2 <- pmax(wind_floor, uz * 4.87 / log(67.8 * zw - 5.42))
  ea <- es0(tdew)
  es <- (es0(tmax) + es0(tmin)) / 2
  ratio <- pmax(floor_ratio, pmin(1, rs / rso))
  rnl <- sigma * ((tmax + 273.16)^4 + (tmin + 273.16)^4) / 2 * (0.34 - 0.14 * sqrt(ea)) *
    (1.35 * ratio - 0.35)
  rn <- 0.77 * rs - rnl
  (0.408 * d * rn + g * cn / (t + 273) * u2 * (es - ea)) / (d + g * (1 + cd * u2))
}
asce_slope <- function(t) 2503 * exp(17.27 * t / (t + 237.3))
fao_slope <- function(t) 4098 * es0(t)
out <- data.frame(latitude = lat, day_of_year = j, elevation_m = z, tmax, tmin, tdew,
                  wind_height_m = zw, wind_m_s = uz, rs_mj_m2 = rs,
                  etos = daily(900, 0.34, asce_slope, 4.901e-9, 0.3, 0),
                  etrs = daily(1600, 0.38, asce_slope, 4.901e-9, 0.3, 0),
                  fao = daily(900, 0.34, fao_slope, 4.903e-9, 0, 0.5))[keep, ]
con <- file("reference_et_r.csv", "w")
writeLines("# Independent computation in R (tests/published/reference_et.R) on made inputs; not published values.", con)
write.csv(format(out, digits = 17, trim = TRUE), con, row.names = FALSE, quote = FALSE)
close(con)

# Root zone: TAW 32 mm, p 0.45 adjusted to ETc, start at 9 mm, intake limit 11 mm a day.
days <- 90
etc <- runif(days, 1, 8)
rain <- ifelse(runif(days) < 0.2, runif(days, 0, 30), 0)
water <- ifelse(seq_len(days) %% 3 == 1, runif(days, 6, 16), 0)
taw <- 32
balance <- function(share, water_first) {
  d <- 9; dp <- 0; ro <- 0; eta <- 0; stress <- 0
  for (i in seq_len(days)) {
    p <- min(0.8, max(0.1, 0.45 + 0.04 * (5 - etc[i])))
    applied <- water[i] * share
    off <- max(0, applied - 11)
    wet <- rain[i] + applied - off
    if (water_first) { d <- d - wet; dp <- dp + max(0, -d); d <- max(0, d) }
    ks <- if (d > p * taw) (taw - d) / ((1 - p) * taw) else 1
    e <- min(ks * etc[i], taw - d)
    d <- d + e
    if (!water_first) { d <- d - wet; dp <- dp + max(0, -d); d <- max(0, d) }
    ro <- ro + off; eta <- eta + e; stress <- stress + (ks < 1)
  }
  c(depletion = d, drainage = dp, runoff = ro, actual_et = eta, stress_days = stress)
}
con <- file("root_zone_r.csv", "w")
writeLines("# Independent computation in R (tests/published/reference_et.R) on made inputs; not published values.", con)
writeLines("row,a,b,c,d,e,f,g", con)
for (i in seq_len(days)) {
  writeLines(paste("day", format(etc[i], digits = 17), format(rain[i], digits = 17),
                   format(water[i], digits = 17), 0, 0, 0, 0, sep = ","), con)
}
for (share in c(0, 0.35, 0.8, 1, 1.3, 1.9)) for (first in c(TRUE, FALSE)) {
  writeLines(paste("result", share, as.integer(first),
                   paste(format(balance(share, first), digits = 17, trim = TRUE), collapse = ","),
                   sep = ","), con)
}
close(con)
