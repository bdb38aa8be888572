package org.pumpwright.protocol;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The limits a board holds now: the answer to {@link ReadLimits} and {@link Tighten}. Thread-safe.
 *
 * @param values one for each {@link Limit}, in its order, range and unit; always {@link Limit#COUNT}
 */
public record Limits(List<Long> values) implements BoardMessage {
    /** @throws FieldOutOfRange when a value is outside its limit's range, or there are not twelve */
    public Limits {
        values = List.copyOf(values);
        FieldOutOfRange.check(1, "limits", values.size(), Limit.COUNT, Limit.COUNT, "places");
        for (Limit limit : Limit.values()) {
            limit.check(limit.index() + 1, values.get(limit.index()));
        }
    }

    /** Every limit as wide as it can be: where a board's own limits can be built from, one {@link #with} each. */
    public static Limits widest() {
        return new Limits(Arrays.stream(Limit.values()).map(Limit::widest).toList());
    }

    @Override
    public MessageType type() {
        return MessageType.LIMITS;
    }

    /** The value of one limit. */
    public long of(Limit limit) {
        return values.get(limit.index());
    }

    /**
     * These limits with one of them set, stricter or not.
     *
     * @throws FieldOutOfRange when the value is outside the limit's range
     */
    public Limits with(Limit limit, long value) {
        List<Long> changed = new ArrayList<>(values);
        changed.set(limit.index(), value);
        return new Limits(changed);
    }

    /** Supply amps that must not be exceeded for longer than {@link #supplyAmpsMs}, left-justified. */
    public long supplyAmps() {
        return of(Limit.SUPPLY_AMPS);
    }

    /** How long the supply amps may be exceeded, ms. */
    public long supplyAmpsMs() {
        return of(Limit.SUPPLY_AMPS_TIME);
    }

    /** How long a drive may be above 0 in one armed stretch, ms. */
    public long runTimeMs() {
        return of(Limit.RUN_TIME);
    }

    /** Pressure that must not be exceeded for longer than {@link #pressureMs}, left-justified. */
    public long pressure() {
        return of(Limit.PRESSURE);
    }

    /** How long the pressure may be exceeded, ms. */
    public long pressureMs() {
        return of(Limit.PRESSURE_TIME);
    }

    /** Pressure above which a driven pump is taken to work against a closed line, left-justified. */
    public long deadHeadPressure() {
        return of(Limit.DEAD_HEAD_PRESSURE);
    }

    /** How long a driven pump may work against a closed line, ms. */
    public long deadHeadMs() {
        return of(Limit.DEAD_HEAD_TIME);
    }

    /** Supply amps below which a driven pump is taken to run dry, left-justified. */
    public long dryAmps() {
        return of(Limit.DRY_AMPS);
    }

    /** How long a driven pump may run dry, ms. */
    public long dryMs() {
        return of(Limit.DRY_TIME);
    }

    /** Volts at the pins that must not be exceeded for longer than {@link #voltsMs}, left-justified. */
    public long volts() {
        return of(Limit.VOLTS);
    }

    /** How long the volts may be exceeded, ms. */
    public long voltsMs() {
        return of(Limit.VOLTS_TIME);
    }

    /** How long an armed board waits for a sound host frame, ms. */
    public long linkTimeOutMs() {
        return of(Limit.LINK_TIME_OUT);
    }

    static Limits read(PayloadReader in) {
        Long[] values = new Long[Limit.COUNT];
        for (int index = 0; index < values.length; index++) {
            values[index] = in.u32();
        }
        return new Limits(List.of(values));
    }

    void write(PayloadWriter out) {
        values.forEach(out::u32);
    }
}
