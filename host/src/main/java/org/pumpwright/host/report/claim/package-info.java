/**
 * The papers of the warranty desk, each for one reader: {@code CustomerPage}, {@code ClerkPage}, {@code FactoryPage}. What is
 * missing is named on the paper. May use {@code report}, {@code report.sheet}, {@code report.draw}, {@code claim}, {@code record},
 * {@code grade}, {@code demand}, {@code text} and {@code quantity}.
 */
@NullMarked
package org.pumpwright.host.report.claim;

import org.jspecify.annotations.NullMarked;
