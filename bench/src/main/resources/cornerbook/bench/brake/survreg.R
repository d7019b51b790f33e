# Weibull regression on censored times by R's survival package: coefficients, scale and the seconds of the fit alone.
library(survival)
pads <- read.csv(commandArgs(TRUE)[[1]])
response <- Surv(pads$after, pads$by, type = "interval2")
seconds <- system.time(fit <- survreg(response ~ salt + garage + distance + friction, data = pads, dist = "weibull"))[["elapsed"]]
coefficients <- coef(fit)
for (j in seq_along(coefficients)) cat(j - 1, format(coefficients[[j]], digits = 12), "\n")
cat("scale", format(fit$scale, digits = 12), "\n")
cat("seconds", seconds, "\n")
