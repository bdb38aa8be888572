/**
 * The judgement: from a trace, a healthy curve, a plan and a shop's rules to features with uncertainty, a verdict, likely
 * causes and the next test. Pure; knows no stand, so a stored run can be graded again. Uses trace, catalog, curve, plan,
 * rule, signal, calibration and quantity; the patterns of causes are data in {@code causes.json}.
 */
@NullMarked
package org.pumpwright.host.grade;

import org.jspecify.annotations.NullMarked;
