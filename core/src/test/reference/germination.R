# Reference values for the tests of dev.filial.core.trial: GerminationCurveTest, TwoProportionsTest,
# SurvivalCurveTest and SampleMeanTest quote what this prints; germination.txt is what it printed.
#
# Made with R 4.2.2 and its recommended package survival 3.5-3; run as: Rscript germination.R
# Where counts were published their source stands beside them in the tests.

show <- function(what, ...) cat(sprintf("%-40s", what), sprintf("%.10f", c(...)), "\n")

cat("-- Germination over days\n")
germination <- function(what, sown, day, up) {
  newly <- diff(c(0, up))
  each <- rep(day, newly)
  show(paste(what, "mean, sd"), mean(each), sd(each))
  # The half-way point is read off the line through the counts, the sowing being one with none up.
  show(paste(what, "t50"), approx(c(0, up), c(0, day), xout = max(up) / 2, ties = "ordered")$y)
  show(paste(what, "speed"), sum(1 / each))
  show(paste(what, "score interval"),
       prop.test(max(up), sown, correct = FALSE)$conf.int)
}
germination("twenty", 20, c(7, 11, 18, 28), c(3, 8, 11, 12))
germination("soaked", 20, c(7, 11, 18), c(7, 13, 16))
germination("fifty", 50, c(4, 5, 6, 7, 8, 10, 14), c(1, 6, 17, 29, 35, 40, 41))

cat("-- Two proportions\n")
two <- function(what, a, m, b, n) {
  table <- rbind(c(a, m - a), c(b, n - b))
  show(paste(what, "fisher"), fisher.test(table)$p.value)
  chi <- suppressWarnings(chisq.test(table, correct = FALSE))
  show(paste(what, "chi-square, p, least"), chi$statistic, chi$p.value, min(chi$expected))
  one <- prop.test(a, m, correct = FALSE)$conf.int
  other <- prop.test(b, n, correct = FALSE)$conf.int
  d <- a / m - b / n
  show(paste(what, "difference"), d,
       d - sqrt((a / m - one[1])^2 + (other[2] - b / n)^2),
       d + sqrt((one[2] - a / m)^2 + (b / n - other[1])^2))
}
two("newcombe 56/70 48/80", 56, 70, 48, 80)
two("newcombe 9/10 3/10", 9, 10, 3, 10)
two("twins 10/13 2/17", 10, 13, 2, 17)
two("soaked 16/20 12/20", 16, 20, 12, 20)
two("tea 3/4 1/4", 3, 4, 1, 4)

cat("-- Survival\n")
library(survival)
curve <- function(what, fit) {
  for (i in which(fit$n.event > 0)) {
    show(paste(what, "day", fit$time[i]), fit$n.risk[i], fit$surv[i], fit$std.err[i] * fit$surv[i],
         fit$lower[i], fit$upper[i])
  }
}
weeks <- c(6, 6, 6, 6, 7, 9, 10, 10, 11, 13, 16, 17, 19, 20, 22, 23, 25, 32, 32, 34, 35)
died <- c(1, 1, 1, 0, 1, 0, 1, 0, 0, 1, 1, 0, 0, 0, 1, 1, 0, 0, 0, 0, 0)
curve("remission", survfit(Surv(weeks, died) ~ 1, conf.type = "log-log"))
# Who is counted up on a day is under watch for the deaths found that day, so comes half a day before.
enter <- c(rep(7, 7), rep(11, 6), rep(18, 3)) - 0.5
leave <- c(22, rep(28, 15))
dead <- c(1, 1, rep(0, 14))
curve("soaked", survfit(Surv(enter, leave, dead) ~ 1, conf.type = "log-log"))
enter <- c(rep(10, 15), rep(20, 5)) - 0.5
leave <- c(10, 10, 10, rep(20, 4), rep(30, 6), rep(45, 7))
dead <- c(1, 1, 1, rep(1, 2), rep(0, 2), rep(1, 1), rep(0, 5), 1, rep(0, 6))
curve("late", survfit(Surv(enter, leave, dead) ~ 1, conf.type = "log-log"))

cat("-- A mean\n")
sleep1 <- c(0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0)
t <- t.test(sleep1)
show("sleep mean, sd, interval", mean(sleep1), sd(sleep1), t$conf.int)
widths <- c(41, 44, 38, 52)
show("widths mean, sd, interval", mean(widths), sd(widths), t.test(widths)$conf.int)
