package org.pumpwright.host.stand.serial;

/** Hears of what a serial line has handed to the system: for those who measure how long that takes. */
@FunctionalInterface
public interface FrameWritten {
    /**
     * The system has taken all these bytes.
     *
     * @param bytes as they were sent; not to be changed
     * @param nanoTime when the write returned, as {@link System#nanoTime} tells it
     */
    void written(byte[] bytes, long nanoTime);
}
