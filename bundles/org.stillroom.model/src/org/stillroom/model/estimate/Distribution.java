package org.stillroom.model.estimate;

import java.util.Optional;

/**
 * What repeated draws of an estimate's unknowns gave.
 *
 * @param mean mean of the draws
 * @param uncertainty their standard deviation
 * @param low 2.5th percentile: lower end of the probabilistically symmetric 95 % interval
 * @param median 50th percentile
 * @param high 97.5th percentile
 * @param dominant the unknown that causes most of the spread, if there is any spread
 * @param share its share of the variance, 0 to 1
 */
public record Distribution(
        double mean,
        double uncertainty,
        double low,
        double median,
        double high,
        Optional<Origin> dominant,
        double share) {}
