# Writes joint-probability.csv: probability that four jointly Gaussian depths are all above a limit, by Genz's algorithm
# (R package mvtnorm), for correlations as the corner-rate model's posterior has them after random seasons of rotation.
# Run: Rscript joint-probability.R > joint-probability.csv
library(mvtnorm)
set.seed(20261125)
cat(sprintf("# R %s, mvtnorm %s, pmvnorm GenzBretz abseps 1e-7\n", getRversion(), packageVersion("mvtnorm")))
cat("z1,z2,z3,z4,r12,r13,r14,r23,r24,r34,probability\n")
posteriorCovariance <- function(seasons) {
  rate <- sample(c(0.14, 0.20), 2, replace = TRUE)[c(1, 1, 2, 2)]
  vehicle <- runif(1, 0.15, 0.5); corner <- runif(1, 0.05, 0.25)
  prior <- diag(c(rep(0.3^2, 4), rep(0, 4)))
  prior[5:8, 5:8] <- diag(rate) %*% (diag(corner^2, 4) + vehicle^2) %*% diag(rate)
  run <- matrix(0, 4, 4); at <- 1:4; rows <- NULL
  for (s in seq_len(seasons)) {
    for (t in 1:4) { run[t, at[t]] <- run[t, at[t]] + runif(1, 4, 9); rows <- rbind(rows, c(replace(numeric(4), t, 1), -run[t, ])) }
    at <- sample(at)
  }
  covariance <- if (is.null(rows)) prior else solve(solve(prior) + crossprod(rows) / 0.15^2)
  ahead <- runif(1, 2, 12)
  depth <- cbind(diag(4), -run) - ahead * cbind(matrix(0, 4, 4), diag(4)[at, ])
  depth %*% covariance %*% t(depth)
}
for (case in 1:300) {
  covariance <- posteriorCovariance(sample(0:4, 1))
  r <- cov2cor(covariance)
  z <- runif(1, -1, 2.5) + rnorm(4, 0, runif(1, 0.2, 2))
  p <- pmvnorm(lower = rep(-Inf, 4), upper = z, corr = r, algorithm = GenzBretz(maxpts = 5e6, abseps = 1e-7, releps = 0))
  cat(paste(c(sprintf("%.8f", c(z, r[upper.tri(r)][c(1, 2, 4, 3, 5, 6)])), sprintf("%.7f", p)), collapse = ","), "\n", sep = "")
}
