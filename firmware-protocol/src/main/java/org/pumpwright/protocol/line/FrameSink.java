package org.pumpwright.protocol.line;

/** Takes what a {@link LineReceiver} found. Called on the thread that feeds the receiver. */
public interface FrameSink {
    /**
     * A sound frame: its COBS, length and CRC are right. Its meaning was not looked at.
     *
     * @param plain the receiver's own buffer, valid only until this call returns; the frame begins at index 0
     * @param length header, payload and CRC in bytes, {@link Wire#MIN_PLAIN_LENGTH} to {@link Wire#MAX_PLAIN_LENGTH}
     */
    void frame(byte[] plain, int length);

    /** A frame was thrown away. */
    void dropped(DropCause cause);
}
