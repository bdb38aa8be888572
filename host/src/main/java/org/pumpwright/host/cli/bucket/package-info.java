/**
 * The command {@code pumpwright bucket} with its verbs: options, what the terminal shows, the desk at a stand. Begin at
 * {@code BucketCommand}. Uses app.bucket and what the command line shares.
 */
@NullMarked
package org.pumpwright.host.cli.bucket;

import org.jspecify.annotations.NullMarked;
