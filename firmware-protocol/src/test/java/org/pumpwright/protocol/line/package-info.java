/** Tests of stuffing, check and framing against published values and slow but obvious models. */
@NullMarked
package org.pumpwright.protocol.line;

import org.jspecify.annotations.NullMarked;
