# Reference values for the tests of dev.filial.core.trial: PublishedFamiliesTest, LikeCrossesTest,
# MidParentTest and ModelComparisonTest quote what this prints.
#
# Made with R 4.2.2, its own packages only; run as: Rscript published_families.R
# Where the counts are from stands beside them in the tests.

show <- function(what, ...) cat(sprintf("%-46s", what), sprintf("%.10f", c(...)), "\n")

chi <- function(what, counts, ratio) {
  test <- chisq.test(counts, p = ratio / sum(ratio))
  show(paste(what, paste(ratio, collapse = ":")), test$statistic, test$p.value)
}

loglik <- function(counts, shares) dmultinom(counts, prob = shares, log = TRUE)

# Log-likelihood, AIC and AICc of a model that makes these the shares, with so many parameters.
model <- function(what, counts, shares, free) {
  l <- loglik(counts, shares)
  aic <- 2 * free - 2 * l
  n <- sum(counts)
  show(paste("model", what), l, aic, aic + 2 * free * (free + 1) / (n - free - 1))
  invisible(aic + 2 * free * (free + 1) / (n - free - 1))
}

weights <- function(what, aicc) {
  w <- exp(-(aicc - min(aicc)) / 2)
  show(paste("weights", what), w / sum(w))
}

# The score equation is solved: where the slope of the log-likelihood is 0 is found to more digits
# than where its top is.
root <- function(score, lower, upper) uniroot(score, c(lower, upper), tol = 1e-14)$root

cat("-- Counts against ratios\n")
mice <- c(800, 435)
chi("yellow mice", mice, c(2, 1))
chi("yellow mice", mice, c(3, 1))
pea9 <- c(38, 35, 28, 30, 65, 68, 60, 67, 138)
chi("peas, nine classes", pea9, c(1, 1, 1, 1, 2, 2, 2, 2, 4))
chi("sweet pea flower colour", c(382, 269), c(9, 7))
chi("sweet pea flower colour", c(382, 269), c(3, 1))
maize <- c(773, 231, 238, 59)
chi("maize seedlings", maize, c(9, 3, 3, 1))
chi("white eyes, F2", c(2459, 1011, 782), c(2, 1, 1))
chi("white eyes, backcross", c(129, 132, 88, 86), c(1, 1, 1, 1))
one <- c(31, 26, 27, 26)
two <- c(24, 25, 22, 27)
chi("peas, test cross one", one, rep(1, 4))
chi("peas, test cross two", two, rep(1, 4))
chi("peas, test crosses pooled", one + two, rep(1, 4))
total <- chisq.test(one)$statistic + chisq.test(two)$statistic
left <- total - chisq.test(one + two)$statistic
show("peas, test crosses, heterogeneity", left, pchisq(left, 3, lower.tail = FALSE))

cat("-- Models compared\n")
a <- c(
  model("mice 2:1", mice, c(2, 1) / 3, 0), model("mice 3:1", mice, c(3, 1) / 4, 0),
  model("mice any", mice, mice / sum(mice), 1))
weights("mice", a)
a <- c(
  model("sweet pea 9:7", c(382, 269), c(9, 7) / 16, 0),
  model("sweet pea 3:1", c(382, 269), c(3, 1) / 4, 0),
  model("sweet pea any", c(382, 269), c(382, 269) / 651, 1))
weights("sweet pea", a)
white <- c(2459, 0, 1011, 782)
a <- c(
  model("white eyes 2:0:1:1", white, c(2, 0, 1, 1) / 4, 0),
  model("white eyes any", white, white / sum(white), 3))
weights("white eyes", a)
a <- c(
  model("maize 9:3:3:1", maize, c(9, 3, 3, 1) / 16, 0),
  model("maize any", maize, maize / sum(maize), 3))

cat("-- Linkage\n")
f2 <- function(theta) c(2 + theta, 1 - theta, 1 - theta, theta) / 4
theta <- function(counts) {
  root(function(t) counts[1] / (2 + t) - (counts[2] + counts[3]) / (1 - t) + counts[4] / t,
       1e-9, 1 - 1e-9)
}
rao <- c(125, 18, 20, 34)
t <- theta(rao)
show("197 animals, theta", t, sqrt(2 * t * (1 - t) * (2 + t) / (sum(rao) * (1 + 2 * t))))
a <- c(
  model("animals linked", rao, f2(t), 1), model("animals unlinked", rao, f2(1 / 4), 0),
  model("animals any", rao, rao / sum(rao), 3))
weights("animals", a)
small <- c(284, 21, 21, 55)
t <- theta(small)
show("sweet pea, first series, theta and r", t, 1 - sqrt(t))
chi("sweet pea, first series", small, c(9, 3, 3, 1))
a <- c(
  model("first series linked", small, f2(t), 1),
  model("first series unlinked", small, f2(1 / 4), 0),
  model("first series any", small, small / sum(small), 3))
weights("first series", a)
barley <- c(1178, 291, 273, 156)
chi("barley", barley, c(9, 3, 3, 1))
t <- theta(barley)
show("barley, theta and r, errors", t, 1 - sqrt(t),
     sqrt(2 * t * (1 - t) * (2 + t) / (sum(barley) * (1 + 2 * t))),
     sqrt((1 - t) * (2 + t) / (2 * sum(barley) * (1 + 2 * t))))
coupling <- c(1339, 1195, 151, 154)
repulsion <- c(965, 1067, 157, 146)
for (counts in list(coupling, repulsion)) {
  r <- sum(counts[3:4]) / sum(counts)
  show("purple vestigial, r, error, lod", r, sqrt(r * (1 - r) / sum(counts)),
       (loglik(c(sum(counts[1:2]), sum(counts[3:4])), c(1 - r, r)) -
          loglik(c(sum(counts[1:2]), sum(counts[3:4])), c(.5, .5))) / log(10))
}

cat("-- Like crosses\n")
bean <- cbind(c(10, 23, 23, 26, 17), c(39, 62, 81, 51, 39))
cucumber <- cbind(c(5, 53, 55, 32, 46, 10), c(6, 74, 72, 51, 79, 13))

correlation <- function(some, all) {
  family <- factor(rep(seq_along(all), all))
  seed <- unlist(mapply(function(s, n) rep(c(1, 0), c(s, n - s)), some, all))
  squares <- anova(lm(seed ~ family))[["Mean Sq"]]
  size <- (sum(all) - sum(all^2) / sum(all)) / (length(all) - 1)
  (squares[1] - squares[2]) / (squares[1] + (size - 1) * squares[2])
}

# Beta-binomial probabilities and the central interval of a certainty.
forecast <- function(what, a, b, n, certainty) {
  k <- 0:n
  p <- exp(lchoose(n, k) + lbeta(a + k, b + n - k) - lbeta(a, b))
  lower <- k[which(cumsum(p) > (1 - certainty) / 2)[1]]
  upper <- k[which(cumsum(p) >= 1 - (1 - certainty) / 2)[1]]
  show(what, lower, upper, sum(k * p), sum(p[k >= lower & k <= upper]))
}

for (host in list(bean, cucumber)) {
  some <- host[, 1]
  all <- host[, 2]
  test <- suppressWarnings(chisq.test(cbind(some, all - some)))
  show("families", test$statistic, test$parameter, test$p.value, test$statistic / test$parameter,
       min(test$expected))
  rho <- correlation(some, all)
  show("correlation by anova", rho)
  rho <- max(0, rho)
  effective <- 1 / (1 + (all - 1) * rho)
  m <- (sum(some * effective) + 1) / (sum(all * effective) + 2)
  spread <- rho + (1 - rho) / (sum(all * effective) + 3)
  ab <- 1 / spread - 1
  for (certainty in c(0.5, 0.95)) {
    forecast(paste("next 40, at", certainty), m * ab, (1 - m) * ab, 40, certainty)
  }
  forecast("were they alike, at 0.95", sum(some) + 1, sum(all - some) + 1, 40, 0.95)
}
forecast("18 of 25, next 20, at 0.95", 19, 8, 20, 0.95)

cat("-- Mid-parent\n")
line <- function(fit) {
  s <- summary(fit)
  show("slope, error", s$coefficients[2, 1:2])
  show("intercept, error", s$coefficients[1, 1:2])
  show("residual deviation", s$sigma)
}
predicted <- function(what, fit, x, ...) {
  at <- predict(fit, data.frame(x = x), se.fit = TRUE)
  between <- predict(fit, data.frame(x = x), interval = "prediction", level = 0.95, ...)
  show(what, at$fit, at$se.fit, between[2:3])
}
x <- 15:21
y <- c(15.3, 16.0, 15.6, 16.3, 16.0, 17.3, 17.5)
peas <- lm(y ~ x)
line(peas)
predicted("peas of 22", peas, 22)

x <- c(64, 64.5, 65.5, 66.5, 67.5, 68.5, 69.5, 70.5, 71.5, 72.5, 73)
# Galton's table, a row for each height of adult children and a column for each mid-parent.
height <- c(61.7, 62.2, 63.2, 64.2, 65.2, 66.2, 67.2, 68.2, 69.2, 70.2, 71.2, 72.2, 73.2, 73.7)
children <- matrix(c(
  1, 1, 1, 0, 0, 1, 0, 1, 0, 0, 0,
  0, 1, 0, 3, 3, 0, 0, 0, 0, 0, 0,
  2, 4, 9, 3, 5, 7, 1, 1, 0, 0, 0,
  4, 4, 5, 5, 14, 11, 16, 0, 0, 0, 0,
  1, 1, 7, 2, 15, 16, 4, 1, 1, 0, 0,
  2, 5, 11, 17, 36, 25, 17, 1, 3, 0, 0,
  2, 5, 11, 17, 38, 31, 27, 3, 4, 0, 0,
  1, 0, 7, 14, 28, 34, 20, 12, 3, 1, 0,
  1, 2, 7, 13, 38, 48, 33, 18, 5, 2, 0,
  0, 0, 5, 4, 19, 21, 25, 14, 10, 1, 0,
  0, 0, 2, 0, 11, 18, 20, 7, 4, 2, 0,
  0, 0, 1, 0, 4, 4, 11, 4, 9, 7, 1,
  0, 0, 0, 0, 0, 3, 4, 3, 2, 2, 3,
  0, 0, 0, 0, 0, 0, 5, 3, 2, 4, 0), ncol = 11, byrow = TRUE)
size <- colSums(children)
sums <- colSums(children * height)
show("sizes", size)
show("sums", sums)
y <- sums / size
stature <- lm(y ~ x, weights = size)
line(stature)
predicted("a family of 10 from 70", stature, 70, weights = 10)
cat("the same, unweighted\n")
plain <- lm(y ~ x)
line(plain)
predicted("a family from 70", plain, 70)
