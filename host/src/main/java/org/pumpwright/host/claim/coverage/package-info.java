/**
 * Coverage rules of a parts desk as a dated table, and what they say of a claim. They decide nothing. May use {@code claim},
 * {@code datafile}.
 */
@NullMarked
package org.pumpwright.host.claim.coverage;

import org.jspecify.annotations.NullMarked;
