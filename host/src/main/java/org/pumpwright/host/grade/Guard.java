package org.pumpwright.host.grade;

import org.pumpwright.host.rule.Source;

/**
 * How far inside a limit a feature must lie to pass, and outside to fail. Thread-safe.
 *
 * @param factor over the standard uncertainty
 * @param width in the feature's unit
 * @param source where the factor stands
 */
public record Guard(double factor, double width, Source source) {}
