/** The command line of the warranty desk. Begin at {@code ClaimCommand}. Stands on {@code cli}, {@code app.claim} and what they show. */
@NullMarked
package org.pumpwright.host.cli.claim;

import org.jspecify.annotations.NullMarked;
