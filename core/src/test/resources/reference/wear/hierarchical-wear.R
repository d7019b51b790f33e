# Fits the corner-rate model's hierarchy with R's lme4 (maximum likelihood) to invented readings of 80 cars and writes both:
# hierarchical-wear-readings.csv and hierarchical-wear-fit.csv. No tyre changes its corner, so that the model is a plain
# mixed model: y - 8 = -x m (1 + u_car + v_corner) + delta_tyre + e, x = thousand km at the front, ratio * thousand km at
# the rear. The ratio of the rear to the front rate is profiled. Run: Rscript hierarchical-wear.R
library(lme4)
set.seed(575104)
rows <- NULL
for (car in 1:80) {
  u <- rnorm(1, 0, 0.35)
  for (corner in 1:4) {
    rate <- c(0.22, 0.22, 0.16, 0.16)[corner] * (1 + u + rnorm(1, 0, 0.18))
    start <- 8 + rnorm(1, 0, 0.25)
    distance <- cumsum(runif(sample(2:4, 1), 4, 9))
    rows <- rbind(rows, data.frame(car, corner, thousandKm = round(distance, 3),
                                   depthMm = round(start - distance * rate + rnorm(length(distance), 0, 0.18), 3)))
  }
}
rows <- rows[rows$depthMm > 0.3, ]
write.csv(rows, "hierarchical-wear-readings.csv", row.names = FALSE, quote = FALSE)
rows$y <- rows$depthMm - 8
rows$tyre <- interaction(rows$car, rows$corner)
fit <- function(ratio) {
  rows$x <- -rows$thousandKm * ifelse(rows$corner <= 2, 1, ratio)
  lmer(y ~ 0 + x + (0 + x | car) + (0 + x | tyre) + (1 | tyre), rows, REML = FALSE,
       control = lmerControl(optimizer = "bobyqa", optCtrl = list(rhobeg = 1e-2, rhoend = 1e-9, maxfun = 1e5)))
}
ratio <- optimize(function(r) -as.numeric(logLik(fit(r))), c(0.5, 1), tol = 1e-7)$minimum
best <- fit(ratio)
sd <- as.data.frame(VarCorr(best))
slope <- unname(fixef(best)["x"])
of <- function(group, term) sd$sdcor[grepl(group, sd$grp) & sd$var1 %in% term]
lines <- c(sprintf("# R %s, lme4 %s", getRversion(), packageVersion("lme4")), "parameter,value",
  sprintf("readingSdMm,%.8f", sigma(best)),
  sprintf("newDepthSdMm,%.8f", of("^tyre", "(Intercept)")),
  sprintf("frontRateMmPer1000Km,%.8f", slope),
  sprintf("rearRateMmPer1000Km,%.8f", slope * ratio),
  sprintf("vehicleSpread,%.8f", of("^car", "x") / slope),
  sprintf("cornerSpread,%.8f", of("^tyre", "x") / slope),
  sprintf("logLikelihood,%.6f", as.numeric(logLik(best))))
writeLines(lines, "hierarchical-wear-fit.csv")
