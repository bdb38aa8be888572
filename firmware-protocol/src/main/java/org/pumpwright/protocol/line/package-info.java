/**
 * The line under the messages: how a frame is stuffed, checked and found again in a stream of bytes. It knows headers,
 * lengths and the CRC but no message, allocates nothing once it is built, and uses the JDK only.
 */
@NullMarked
package org.pumpwright.protocol.line;

import org.jspecify.annotations.NullMarked;
