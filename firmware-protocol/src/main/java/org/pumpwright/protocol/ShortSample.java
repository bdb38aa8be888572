package org.pumpwright.protocol;

import java.util.List;

/**
 * What the board measured in one window, in few bytes. Thread-safe.
 *
 * @param time board time in ticks at the end of the window, u32, rolls over
 * @param meters always {@link Sample#METERS}
 * @param means always {@link Sample#ANALOGS}: the mean reading of each analogue channel, left-justified, u16
 * @param applied always {@link Sample#DRIVES}: what each drive's pin gets now in 1/65536, u16; see {@link #duty}
 * @param state the board's state
 * @param inputs the inputs
 */
public record ShortSample(
        long time, List<ShortCount> meters, List<Integer> means, List<Integer> applied, BoardState state, Inputs inputs)
        implements BoardMessage {
    /** What stands for fully on, which has no room in 16 bits. */
    private static final int FULLY_ON = 0xFFFF;

    private static final int MEAN_FIELD = 6;
    private static final int APPLIED_FIELD = 10;

    /** @throws FieldOutOfRange when a field is outside its range, or a list has not the length it always has */
    public ShortSample {
        meters = List.copyOf(meters);
        means = List.copyOf(means);
        applied = List.copyOf(applied);
        Unsigned.checkU32(1, "short sample board time", time, "ticks");
        FieldOutOfRange.check(2, "short sample meters", meters.size(), Sample.METERS, Sample.METERS, "places");
        FieldOutOfRange.check(
                MEAN_FIELD, "short sample analogue channels", means.size(), Sample.ANALOGS, Sample.ANALOGS, "places");
        for (int channel = 0; channel < Sample.ANALOGS; channel++) {
            Unsigned.checkU16(
                    MEAN_FIELD + channel, "short sample mean", means.get(channel), "1/65536 of the reference");
        }
        FieldOutOfRange.check(
                APPLIED_FIELD, "short sample drives", applied.size(), Sample.DRIVES, Sample.DRIVES, "places");
        for (int drive = 0; drive < Sample.DRIVES; drive++) {
            Unsigned.checkU16(
                    APPLIED_FIELD + drive, "short sample drive applied", applied.get(drive), "1/65536 of fully on");
        }
    }

    /** The short form of a whole sample. */
    public static ShortSample of(Sample whole) {
        return new ShortSample(
                whole.time(),
                whole.meters().stream().map(ShortCount::of).toList(),
                whole.analogs().stream().map(AnalogWindow::mean).toList(),
                whole.applied().stream()
                        .map(duty -> (int) Math.min(duty, FULLY_ON))
                        .toList(),
                whole.state(),
                whole.inputs());
    }

    @Override
    public MessageType type() {
        return MessageType.SHORT_SAMPLE;
    }

    /** The duty of one drive, 0 to {@link Drive#FULL_DUTY}; never one below fully on, which looks the same here. */
    public long duty(int drive) {
        int sent = applied.get(drive);
        return sent == FULLY_ON ? Drive.FULL_DUTY : sent;
    }

    static ShortSample read(PayloadReader in) {
        long time = in.u32();
        List<ShortCount> meters = List.of(ShortCount.read(in), ShortCount.read(in));
        List<Integer> means = List.of(in.u16(), in.u16(), in.u16(), in.u16());
        List<Integer> applied = List.of(in.u16(), in.u16());
        BoardState state = BoardState.read(in);
        Inputs inputs = Inputs.read(in);
        in.whole();
        return new ShortSample(time, meters, means, applied, state, inputs);
    }

    void write(PayloadWriter out) {
        out.u32(time);
        meters.forEach(meter -> meter.write(out));
        means.forEach(out::u16);
        applied.forEach(out::u16);
        out.u8(state.code());
        out.u8(inputs.bits());
    }
}
