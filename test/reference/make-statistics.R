# What R expects of the data sets that make-statistics.py drew. Started by it: Rscript make-statistics.R in.json out.json
suppressMessages({ library(jsonlite); library(psych); library(vcd); library(survival) })
paths <- commandArgs(trailingOnly = TRUE)
sets <- fromJSON(paths[1], simplifyVector = FALSE)
numbers <- function(values) unlist(values)
table_of <- function(rows) do.call(rbind, lapply(rows, numbers))
null_if_na <- function(value) if (length(value) == 0 || is.na(value)) NULL else value
one <- function(value) if (is.null(value)) NULL else unbox(value)

expect_quantile <- function(set) list(
  quantile = one(unname(quantile(numbers(set$values), set$share, type = 7))),
  median = one(median(numbers(set$values)))
)

# cor.test takes an exact upper tail as 1 less a sum; on the falling side of the same series no digit is lost.
expect_mann_kendall <- function(set) {
  at <- numbers(set$at); values <- numbers(set$values)
  tied <- anyDuplicated(at) > 0 || anyDuplicated(values) > 0
  exact <- length(at) < 50 && !tied
  falls <- cor(at, values, method = "kendall") <= 0
  side <- if (falls) values else -values
  normal <- suppressWarnings(cor.test(at, values, method = "kendall", exact = FALSE, continuity = TRUE))
  test <- suppressWarnings(cor.test(at, side, method = "kendall", exact = exact, continuity = TRUE))
  list(z = one(unname(normal$statistic)), tau = one(unname(normal$estimate)), chance = one(test$p.value))
}

# psych takes p as -expm1(log(lower tail)); here it is the upper tail itself, which keeps the digits of a small one.
expect_two_way <- function(set) {
  table <- table_of(set$table)
  squares <- matrix(unlist(summary(aov(values ~ subs + ind, data = data.frame(
    values = as.vector(table), subs = factor(rep(seq_len(nrow(table)), ncol(table))),
    ind = factor(rep(seq_len(ncol(table)), each = nrow(table)))
  )))), ncol = 3, byrow = TRUE)[3, ]
  error <- sqrt(squares[3])
  found <- ICC(table, lmer = FALSE)$results
  tails <- pf(found$F, found$df1, found$df2, lower.tail = FALSE)
  list(
    squares = squares, standardError = one(error), detectableChange = one(error * 1.96 * sqrt(2)),
    icc = found$ICC, f = found$F, chance = tails, lower = found$`lower bound`, upper = found$`upper bound`
  )
}

expect_within <- function(set) {
  lengths <- sapply(set$repeats, length)
  fit <- lm(numbers(set$repeats) ~ factor(rep(seq_along(lengths), lengths)))
  list(standardError = one(sqrt(sum(residuals(fit)^2) / fit$df.residual)), freedom = one(fit$df.residual))
}

expect_kappa <- function(set) {
  found <- Kappa(table_of(set$counts), weights = table_of(set$weights))
  reach <- qnorm(0.975)
  value <- found$Weighted[["value"]]; error <- found$Weighted[["ASE"]]
  list(
    plain = one(found$Unweighted[["value"]]), plainError = one(found$Unweighted[["ASE"]]),
    weighted = one(value), error = one(error),
    lower = one(value - reach * error), upper = one(min(1, value + reach * error))
  )
}

expect_rank_sum <- function(set) {
  first <- numbers(set$first); second <- numbers(set$second)
  exact <- length(c(first, second)) <= 30
  if (exact && anyDuplicated(c(first, second)) > 0) return(list(chance = NULL))
  found <- suppressWarnings(wilcox.test(second, first, exact = exact, correct = TRUE))
  list(chance = one(found$p.value), u = one(unname(found$statistic)))
}

# The median is the first time at or below a half, as is each end of its interval; survfit takes a middle where the
# curve stays at a half exactly.
expect_kaplan_meier <- function(set) {
  fit <- survfit(Surv(numbers(set$durations), numbers(set$ended)) ~ 1, conf.type = "log")
  at <- fit$n.event > 0
  first_below <- function(curve) one(null_if_na(fit$time[which(curve <= 0.5 + 1e-9)[1]]))
  lower <- ifelse(is.na(fit$lower), 0, fit$lower)
  lasts <- fit$surv[at] > 0
  keep <- function(values) ifelse(lasts, values[at], NA)
  list(
    at = fit$time[at], atRisk = fit$n.risk[at], lasting = fit$surv[at],
    standardError = keep(fit$surv * fit$std.err), lower = keep(fit$lower), upper = keep(fit$upper),
    median = first_below(fit$surv), medianLower = first_below(lower), medianUpper = first_below(fit$upper)
  )
}

expect_adjust <- function(set) list(adjusted = p.adjust(numbers(set$chances), method = "BH"))

rules <- list(
  quantile = expect_quantile, mannKendall = expect_mann_kendall, twoWay = expect_two_way, within = expect_within,
  kappa = expect_kappa, rankSum = expect_rank_sum, kaplanMeier = expect_kaplan_meier, adjust = expect_adjust
)
expected <- lapply(names(rules), function(name) lapply(sets[[name]], rules[[name]]))
names(expected) <- names(rules)
versions <- list(
  R = unbox(R.version.string), psych = unbox(as.character(packageVersion("psych"))),
  vcd = unbox(as.character(packageVersion("vcd"))), survival = unbox(as.character(packageVersion("survival")))
)
write_json(list(versions = versions, expected = expected), paths[2], digits = I(16), null = "null", na = "null")
