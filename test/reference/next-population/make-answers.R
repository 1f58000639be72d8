# Random effects over series of n of N on the logit scale, answered by metafor (Debian 12: r-cran-metafor 3.8-1, R 4.2.2).
#
#     Rscript test/reference/next-population/make-answers.R
#
# Heterogeneity by the estimator of Paule and Mandel; the interval of the next population by Student's t with k - 1 degrees
# of freedom (test = "t"). A series of 0 of N has half a tooth added on both sides (metafor's own default).
suppressPackageStartupMessages(library(metafor))

sets <- list(
  apart = list(n = c(511, 308, 247, 384), N = c(1000, 400, 362, 550)),
  two = list(n = c(162, 507), N = c(726, 1958)),
  alike = list(n = c(56, 201, 260), N = c(250, 910, 1174)),
  rare = list(n = c(7, 18, 17, 16, 6, 0), N = c(1024, 1361, 823, 500, 232, 100)),
  wide = list(n = c(4, 90, 33, 250, 12, 61, 7), N = c(200, 100, 66, 400, 15, 200, 300))
)
digits <- function(x) sprintf("%.10f", x)
row <- function(name) {
  set <- sets[[name]]
  logits <- escalc(measure = "PLO", xi = set$n, ni = set$N)
  fit <- rma(yi, vi, data = logits, method = "PM", test = "t", control = list(tol = 1e-12, maxiter = 10000))
  told <- predict(fit)
  sprintf(
    '    "%s": { "n": [%s], "N": [%s], "centre": %s, "standardError": %s, "spread": %s, "low": %s, "high": %s }',
    name, paste(set$n, collapse = ", "), paste(set$N, collapse = ", "), digits(fit$beta[1]), digits(fit$se),
    digits(sqrt(fit$tau2)), digits(told$pi.lb), digits(told$pi.ub)
  )
}
writeLines(
  c(
    "{",
    sprintf('  "madeBy": "metafor %s, %s",', packageVersion("metafor"), R.version.string),
    '  "sets": {',
    paste(vapply(names(sets), row, ""), collapse = ",\n"),
    "  }",
    "}"
  ),
  "test/reference/next-population/answers.json"
)
