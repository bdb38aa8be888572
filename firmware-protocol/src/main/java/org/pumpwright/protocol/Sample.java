package org.pumpwright.protocol;

import java.util.List;

/**
 * What the board measured in one window. Thread-safe.
 *
 * @param time board time in ticks at the end of the window, u32, rolls over
 * @param meters always {@link #METERS}; {@link MeterCount#START} where the board has fewer
 * @param analogs always {@link #ANALOGS}; {@link AnalogWindow#NONE} where the board has fewer
 * @param conversions readings of each analogue channel in the window, u16; 0 when the window was too short for one, and
 *     then the channels repeat the window before
 * @param applied always {@link #DRIVES}: what each drive's pin gets now, 0 to {@link Drive#FULL_DUTY}
 * @param state the board's state
 * @param inputs the inputs
 * @param events number of the newest event, u16: a jump tells that one was lost
 */
public record Sample(
        long time,
        List<MeterCount> meters,
        List<AnalogWindow> analogs,
        int conversions,
        List<Long> applied,
        BoardState state,
        Inputs inputs,
        int events)
        implements BoardMessage {
    /** The places for meters in a sample. */
    public static final int METERS = 2;

    /** The places for analogue channels in a sample. */
    public static final int ANALOGS = 4;

    /** The places for drives in a sample. */
    public static final int DRIVES = 2;

    private static final int CONVERSIONS_FIELD = 18;
    private static final int APPLIED_FIELD = 19;
    private static final int EVENTS_FIELD = 23;

    /** @throws FieldOutOfRange when a field is outside its range, or a list has not the length it always has */
    public Sample {
        meters = List.copyOf(meters);
        analogs = List.copyOf(analogs);
        applied = List.copyOf(applied);
        Unsigned.checkU32(1, "sample board time", time, "ticks");
        FieldOutOfRange.check(2, "sample meters", meters.size(), METERS, METERS, "places");
        FieldOutOfRange.check(2 + 2 * METERS, "sample analogue channels", analogs.size(), ANALOGS, ANALOGS, "places");
        Unsigned.checkU16(CONVERSIONS_FIELD, "sample conversions", conversions, "readings");
        FieldOutOfRange.check(APPLIED_FIELD, "sample drives", applied.size(), DRIVES, DRIVES, "places");
        for (int drive = 0; drive < DRIVES; drive++) {
            String field = drive == 0 ? "sample drive 0 applied" : "sample drive 1 applied";
            FieldOutOfRange.check(
                    APPLIED_FIELD + drive, field, applied.get(drive), 0, Drive.FULL_DUTY, "1/65536 of fully on");
        }
        Unsigned.checkU16(EVENTS_FIELD, "sample events", events, "number");
    }

    @Override
    public MessageType type() {
        return MessageType.SAMPLE;
    }

    static Sample read(PayloadReader in) {
        long time = in.u32();
        List<MeterCount> meters = List.of(MeterCount.read(in), MeterCount.read(in));
        List<AnalogWindow> analogs =
                List.of(AnalogWindow.read(in), AnalogWindow.read(in), AnalogWindow.read(in), AnalogWindow.read(in));
        int conversions = in.u16();
        List<Long> applied = List.of(in.u32(), in.u32());
        BoardState state = BoardState.read(in);
        Inputs inputs = Inputs.read(in);
        int events = in.u16();
        in.whole();
        return new Sample(time, meters, analogs, conversions, applied, state, inputs, events);
    }

    void write(PayloadWriter out) {
        out.u32(time);
        meters.forEach(meter -> meter.write(out));
        analogs.forEach(window -> window.write(out));
        out.u16(conversions);
        applied.forEach(out::u32);
        out.u8(state.code());
        out.u8(inputs.bits());
        out.u16(events);
    }
}
