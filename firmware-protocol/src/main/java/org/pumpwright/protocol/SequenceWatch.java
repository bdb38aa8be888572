package org.pumpwright.protocol;

/**
 * Counts what got lost on the way, from the sequence numbers of one direction. A serial line can't put frames into
 * another order, so a number ahead of the expected one means loss. A number half the range or more ahead is taken for a
 * sender that began anew (or a second reader or sender on the port), and is no loss. Confined to one thread.
 */
public final class SequenceWatch {
    private static final int RANGE = 0x10000;

    private int expected = -1;
    private long received;
    private long lost;
    private long restarts;

    /**
     * Takes the sequence of the next frame. The first one is taken as it comes.
     *
     * @param sequence 0 to 65535
     * @return how many frames were lost just before it, 0 to 32767
     * @throws IllegalArgumentException when the sequence is outside its range
     */
    public int observe(int sequence) {
        Unsigned.checkU16(1, "frame sequence", sequence, "u16");
        int gap = expected < 0 ? 0 : (sequence - expected) & (RANGE - 1);
        expected = (sequence + 1) & (RANGE - 1);
        received++;
        if (gap >= RANGE / 2) {
            restarts++;
            return 0;
        }
        lost += gap;
        return gap;
    }

    /** Takes the next frame as it comes, as after a reset of the sender; the counts stay. */
    public void restart() {
        expected = -1;
    }

    /** How many frames came. */
    public long received() {
        return received;
    }

    /** How many frames got lost between those that came. */
    public long lost() {
        return lost;
    }

    /** How often the sequence went back, which {@link #restart} does not announce. */
    public long restarts() {
        return restarts;
    }
}
