# Posterior and horizon of each set in the file by R's lm, one car after the other, and the time that takes.
# Each groove is one lm with the prior as pseudo-observations, scaled so that every row has unit variance.
# Arguments: readings.csv, mean and s.d. of km per day, limit mm. Prints the seconds, then the mean depth of the first tyre.
arguments <- commandArgs(TRUE)
rows <- read.csv(arguments[1])
perDay <- as.numeric(arguments[2]); perDaySd <- as.numeric(arguments[3]); limit <- as.numeric(arguments[4])
sigma <- 0.15; newSd <- 0.30; m <- rep(0.20, 4); vehicle <- 0.30; corner <- 0.15
covariance <- diag(m) %*% (diag(corner^2, 4) + vehicle^2) %*% diag(m)
root <- chol(solve(covariance))
priorX <- rbind(cbind(diag(4) / newSd, matrix(0, 4, 4)), cbind(matrix(0, 4, 4), root))
priorY <- c(rep(8, 4) / newSd, root %*% m)
nodes <- c(-2.020182870456086, -0.958572464613819, 0, 0.958572464613819, 2.020182870456086) * sqrt(2)
weights <- c(0.019953242059046, 0.393619323152241, 0.945308720482942, 0.393619323152241, 0.019953242059046) / sqrt(pi)
cars <- split(rows, rows$set)
first <- NA
started <- proc.time()[["elapsed"]]
horizons <- sapply(cars, function(set) {
  fits <- lapply(split(set, set$groove), function(groove) {
    x <- cbind(diag(4)[groove$tyre + 1, ], -as.matrix(groove[, c("a1", "a2", "a3", "a4")]))
    fit <- lm(c(groove$y / sigma, priorY) ~ 0 + rbind(x / sigma, priorX))
    summary <- summary(fit)
    list(mean = coef(fit), covariance = summary$cov.unscaled)
  })
  last <- set[set$groove == 0, ]
  last <- last[(nrow(last) - 3):nrow(last), ]
  now <- cbind(diag(4), -as.matrix(last[order(last$tyre), c("a1", "a2", "a3", "a4")]))
  ahead <- cbind(matrix(0, 4, 4), diag(4)[last$next_corner[order(last$tyre)] + 1, ])
  if (is.na(first)) first <<- sum(now[1, ] * fits[[1]]$mean)
  holds <- function(days) {
    sum(weights * sapply(pmax(0, perDay + nodes * perDaySd) * days / 1000, function(k) {
      design <- now - k * ahead
      prod(sapply(fits, function(fit) prod(pnorm((design %*% fit$mean - limit) / sqrt(rowSums((design %*% fit$covariance) * design))))))
    })) - 0.9
  }
  if (holds(0) < 0) 0 else if (holds(1461) > 0) 1461 else uniroot(holds, c(0, 1461), tol = 0.25)$root
})
cat(proc.time()[["elapsed"]] - started, length(cars), first, mean(horizons), "\n")
