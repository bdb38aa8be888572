package org.pumpwright.protocol;

/** Takes what a {@link FrameDecoder} found, in the order of the line. Called on the thread that feeds the decoder. */
@FunctionalInterface
public interface FrameListener {
    /** One frame, or the loss of one. */
    void received(Received received);
}
