package org.pumpwright.host.stand.wire;

/**
 * What a line has brought since it was opened. The board numbers its frames, so that what is missing shows, whether the line
 * lost it or the board had no room for it. Thread-safe.
 *
 * @param received sound frames that came
 * @param gaps how often frames were missing between two that came
 * @param lost how many frames were missing in all those gaps
 * @param broken pieces that were thrown away because their stuffing, length or check value was wrong; a frame of which
 *     only a part comes is one of them, and is lost as well
 */
public record LinkCounts(long received, long gaps, long lost, long broken) {}
