# Fits km per day of invented cars' seasons as a random intercept by maximum likelihood with R's lme4 and writes
# distance-per-day.csv (one line a car) and distance-per-day-fit.csv. Run: Rscript distance-per-day.R
library(lme4)
set.seed(4015)
cars <- lapply(1:60, function(car) round(rnorm(1, 46, 13) + rnorm(sample(1:6, 1), 0, 7), 2))
writeLines(sapply(cars, paste, collapse = ","), "distance-per-day.csv")
rows <- data.frame(car = rep(seq_along(cars), lengths(cars)), y = unlist(cars))
fit <- lmer(y ~ 1 + (1 | car), rows, REML = FALSE, control = lmerControl(optimizer = "bobyqa", optCtrl = list(rhoend = 1e-9)))
writeLines(c(sprintf("# R %s, lme4 %s", getRversion(), packageVersion("lme4")),
  sprintf("%.7f,%.7f,%.7f", fixef(fit), as.data.frame(VarCorr(fit))$sdcor[1], sigma(fit))), "distance-per-day-fit.csv")
