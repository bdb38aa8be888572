package org.pumpwright.host.plan;

import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.trace.Leg;

/**
 * One point to visit. Thread-safe.
 *
 * @param number from 1
 * @param leg which way the sweep is going
 * @param duty the set point
 */
public record PlanPoint(int number, Leg leg, Duty duty) {}
