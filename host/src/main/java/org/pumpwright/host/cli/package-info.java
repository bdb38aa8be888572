/**
 * The command line. Shows what the use cases give; decides nothing. The only place that uses the command-line library.
 * Uses app and the domain types that it shows.
 */
@NullMarked
package org.pumpwright.host.cli;

import org.jspecify.annotations.NullMarked;
