/**
 * The messages between a stand's board and its host, as {@code spec/protocol.md} states them: typed records with their
 * ranges, the encoder, the streaming decoder, and what a receiver needs to make sense of numbers that roll over. Serves
 * both ends of the line, so a program can also play the board. May use {@code protocol.line} and the JDK; knows no port,
 * no clock and no thread.
 */
@NullMarked
package org.pumpwright.protocol;

import org.jspecify.annotations.NullMarked;
