# Reference values for the seizing hazard, from R's survival package (Therneau). Run in this folder: Rscript survival.R
# It writes survival-data.csv (times and covariates, data sets with their sources below) and survival.csv (results).
library(survival)
options(digits = 15)
inf <- Inf

# survfit's self-consistency stops when its curve moves by less than 5e-5 a round, which leaves up to 2e-3 of error here.
# The same code with a smaller constant:
turnbull <- getFromNamespace("survfitTurnbull", "survival")
turnbull <- eval(parse(text = gsub("5e-05", "1e-10", deparse(turnbull), fixed = TRUE)), asNamespace("survival"))
assignInNamespace("survfitTurnbull", turnbull, "survival")

shock <- data.frame( # Meeker and Escobar 1998, p. 630: distance to failure of shock absorbers, km
  time = c(6700, 6950, 7820, 8790, 9120, 9660, 9820, 11310, 11690, 11850, 11880, 12140, 12200, 12870, 13150, 13330, 13470,
           14040, 14300, 17520, 17540, 17890, 18450, 18960, 18980, 19410, 20100, 20100, 20150, 20320, 20900, 22700, 23490,
           26510, 27410, 27490, 27890, 28100),
  fail = c(1, 0, 0, 0, 1, 0, 0, 0, 0, 0, 0, 0, 1, 0, 1, 0, 0, 0, 1, 1, 0, 0, 0, 0, 0, 0, 1, 0, 0, 0, 1, 1, 0, 1, 0, 1, 0, 0))
nist <- data.frame( # NIST/SEMATECH e-Handbook of Statistical Methods, 8.4.1.3: hours to failure, ten units running at 500
  time = c(54, 187, 216, 240, 244, 335, 361, 373, 375, 386, rep(500, 10)), fail = rep(1:0, each = 10))
cracks <- data.frame( # Nelson 1982, p. 415: inspections of 167 turbine parts for cracks, months
  after = c(0, 6.12, 19.92, 29.64, 35.4, 39.72, 45.24, 52.32, 63.48),
  by = c(6.12, 19.92, 29.64, 35.4, 39.72, 45.24, 52.32, 63.48, inf), count = c(5, 16, 12, 18, 18, 2, 6, 17, 73))
cracks <- cracks[rep(seq_len(nrow(cracks)), cracks$count), c("after", "by")]
wheels <- with(turbine, data.frame( # Nelson 1982: one inspection of each turbine wheel, 100 h; data set of the package
  after = c(rep(0, sum(failed)), rep(hours, inspected - failed)), by = c(rep(hours, failed), rep(inf, sum(inspected - failed)))))

set.seed(20260214) # invented: pads looked at twice a year, with every kind of censoring
n <- 300
pads <- data.frame(salt = round(runif(n), 3), garage = rbinom(n, 1, 0.4), distance = round(rnorm(n, 0, 0.6), 3), friction = round(runif(n) - 0.5, 3))
month <- exp(4.0 - 0.7 * pads$salt + 0.2 * pads$garage + 0.1 * pads$distance + 0.5 * pads$friction + 0.55 * log(rexp(n)))
look <- runif(n, 4, 8)
pads$after <- round(floor(month / look) * look, 2)
pads$by <- round(pads$after + look, 2)
late <- month > 48
pads$after[late] <- 48
pads$by[late] <- inf
exact <- !late & runif(n) < 0.1
pads$after[exact] <- round(month[exact], 2)
pads$by[exact] <- pads$after[exact]

sets <- list(
  shock = data.frame(after = shock$time, by = ifelse(shock$fail == 1, shock$time, inf)),
  nist = data.frame(after = nist$time, by = ifelse(nist$fail == 1, nist$time, inf)),
  cracks = cracks, wheels = wheels, pads = pads)
out <- list()
put <- function(set, what, value) out[[length(out) + 1]] <<- data.frame(set = set, what = what, value = value)
left <- function(d) ifelse(d$after == 0, NA, d$after)
right <- function(d) ifelse(is.infinite(d$by), NA, d$by)
data <- NULL
for (name in names(sets)) {
  d <- sets[[name]]
  x <- setdiff(names(d), c("after", "by"))
  for (column in c("salt", "garage", "distance", "friction")) if (!column %in% x) d[[column]] <- NA
  data <- rbind(data, cbind(set = name, d[, c("after", "by", "salt", "garage", "distance", "friction")]))
  response <- Surv(left(d), right(d), type = "interval2")
  formula <- if (length(x)) response ~ salt + garage + distance + friction else response ~ 1
  fit <- survreg(formula, data = d, dist = "weibull", control = survreg.control(maxiter = 100, rel.tolerance = 1e-12))
  se <- sqrt(diag(fit$var))
  for (j in seq_along(coef(fit))) {
    put(name, paste0("coefficient", j - 1), coef(fit)[[j]])
    put(name, paste0("error", j - 1), se[[j]])
  }
  put(name, "scale", fit$scale)
  put(name, "errorLogScale", se[[length(se)]])
  put(name, "logLikelihood", fit$loglik[[2]])
  # Without an interval the curve is Kaplan and Meier's, which survfit takes in the usual form.
  seen <- if (all(d$after == d$by | is.infinite(d$by))) Surv(d$after, d$after == d$by) else Surv(left(d), right(d), type = "interval2")
  curve <- survfit(seen ~ 1, timefix = FALSE)
  for (p in c(0.1, 0.25, 0.5, 0.75)) {
    at <- quantile(c(d$after, d$by[is.finite(d$by)]), p, type = 1)[[1]]
    put(name, paste0("turnbull@", at), min(1, curve$surv[curve$time <= at]))
  }
}

# With normal priors on every coefficient and on log scale, by a general-purpose optimiser on the penalised likelihood.
mean0 <- c(4, -0.8, 0, 0, 0.5, log(0.5))
sd0 <- c(0.5, 0.4, 0.3, 0.2, 0.4, 0.25)
x <- as.matrix(cbind(1, pads[, c("salt", "garage", "distance", "friction")]))
penalised <- function(rows) {
  f <- function(p) {
    shape <- 1 / exp(p[6]); life <- exp(drop(x[rows, , drop = FALSE] %*% p[1:5])); d <- pads[rows, ]
    l <- ifelse(d$after == d$by, dweibull(d$after, shape, life, log = TRUE),
                log(pweibull(d$after, shape, life, lower.tail = FALSE) - pweibull(d$by, shape, life, lower.tail = FALSE)))
    -sum(l) - sum(dnorm(p, mean0, sd0, log = TRUE))
  }
  best <- list(par = mean0)
  for (i in 1:4) best <- optim(best$par, f, method = "BFGS", control = list(reltol = 1e-15, maxit = 2000))
  h <- optimHess(best$par, f, control = list(ndeps = rep(1e-4, 6)))
  list(par = best$par, se = sqrt(diag(solve(h))))
}
for (rows in c(8, 300)) {
  p <- penalised(seq_len(rows))
  for (j in 1:6) {
    put(paste0("prior", rows), if (j < 6) paste0("coefficient", j - 1) else "logScale", p$par[j])
    put(paste0("prior", rows), if (j < 6) paste0("error", j - 1) else "errorLogScale", p$se[j])
  }
}
result <- do.call(rbind, out)
result$source <- paste0("R ", getRversion(), ", survival ", packageVersion("survival"))
write.csv(data, "survival-data.csv", row.names = FALSE, quote = FALSE, na = "")
result$value <- format(result$value, digits = 10, trim = TRUE, scientific = FALSE)
write.csv(result, "survival.csv", row.names = FALSE, quote = c(4))
