package org.pumpwright.host.plant.harness;

import org.pumpwright.host.plant.Plant;
import org.pumpwright.host.plant.PlantReading;
import org.pumpwright.host.plant.Range;
import org.pumpwright.host.plant.SensorErrors;
import org.pumpwright.host.plant.SensorReadout;
import org.pumpwright.host.plant.Streams;
import org.pumpwright.host.plant.Telegraph;
import org.pumpwright.host.plant.UsUnits;

/**
 * A harness with the load bank at its far end, moving in time: joints warm, the chafed wire touches the frame now and
 * then, a loose pin opens, the fuse blows. Drive 0 sets the load: duty times 15 A (a third, two thirds and 1 are the
 * steps of the drop test). The voltmeter reads between two places, which are a setting; both meters are silent. Same
 * parameters, settings, seed and steps: same output to the bit. Confined to one thread.
 */
public final class HarnessPlant implements Plant {

    /** Load at full duty. */
    public static final double FULL_LOAD_AMPS = 15;

    private static final double LONGEST_PART_SECONDS = 0.005;
    private static final double LONGEST_STEP_SECONDS = 3600;
    private static final double WARMING_SECONDS = 10;
    private static final double WIGGLED = 60;

    /** A fuse carries a tenth more than its rating for ever and blows by the square of the rest (assumed). */
    private static final double CARRIES_SQUARED = 1.21;

    private static final double BLOWS_AFTER_SECONDS = 4;
    private static final long SHORT_STREAM = -30;

    private final HarnessParameters parameters;
    private final SensorReadout sensors;
    private final Telegraph pin;
    private final Telegraph chafe;
    private int high;
    private int low;
    private boolean wiggled;
    private boolean blown;
    private double fuseSeconds;
    private double heatedBy;

    /**
     * A harness at rest, the voltmeter from battery plus to battery minus.
     *
     * @param parameters the harness
     * @param errors the stand's sensors
     * @param seed decides noise, touches and openings
     */
    public HarnessPlant(HarnessParameters parameters, SensorErrors errors, long seed) {
        this.parameters = parameters;
        sensors = new SensorReadout(errors, Streams.stream(seed, Streams.NOISE));
        pin = new Telegraph(parameters.openingsPerMinute(), Streams.stream(seed, Streams.CONTACT));
        chafe = new Telegraph(parameters.shortsPerMinute(), Streams.stream(seed, SHORT_STREAM));
        low = parameters.points().size() - 1;
    }

    /** Moves the voltmeter between two of {@link HarnessParameters#points()}, counted from 0 at battery plus. */
    public void probe(int highPoint, int lowPoint) {
        int last = parameters.points().size() - 1;
        Range.check("probe", highPoint, 0, last, "");
        Range.check("probe", lowPoint, 0, last, "");
        high = highPoint;
        low = lowPoint;
    }

    /** Begins or stops wiggling the harness, which makes loose pins open and chafed wires touch more often. */
    public void wiggle(boolean on) {
        wiggled = on;
    }

    /** Puts a new fuse of the same rating in. */
    public void replaceFuse() {
        blown = false;
        fuseSeconds = 0;
    }

    /** Whether the fuse has blown. */
    public boolean fuseBlown() {
        return blown;
    }

    @Override
    public void adjust(String setting, double value) {
        switch (setting) {
            case "probe-high" -> high = point(value);
            case "probe-low" -> low = point(value);
            case "wiggle" -> wiggle(value > 0);
            default -> Plant.super.adjust(setting, value);
        }
    }

    @Override
    public PlantReading step(double seconds, double[] duties, boolean contactorClosed) {
        Range.check("step", seconds, Double.MIN_VALUE, LONGEST_STEP_SECONDS, "s");
        if (duties.length == 0) {
            throw new IllegalArgumentException("no duty given: drive 0 sets the load");
        }
        for (double duty : duties) {
            Range.check("duty", duty, 0, 1, "");
        }
        int parts = Math.max(1, (int) Math.ceil(seconds / LONGEST_PART_SECONDS - 1e-9));
        double part = seconds / parts;
        for (int i = 0; i < parts; i++) {
            advance(part, 1.0 / parts, duties[0], contactorClosed);
        }
        return sensors.take(new double[2][0], UsUnits.ZERO_CELSIUS_KELVIN + 20);
    }

    /** A place of the voltmeter; negative ones count from the far end, -1 being battery minus. */
    private int point(double value) {
        int count = parameters.points().size();
        int point = (int) value;
        Range.check("probe", point, -count, count - 1, "");
        return point < 0 ? count + point : point;
    }

    private void advance(double seconds, double share, double duty, boolean fed) {
        pin.advance(seconds, wiggled ? WIGGLED : 1);
        chafe.advance(seconds, wiggled ? WIGGLED : 1);
        double amps = 0;
        double volts = 0;
        if (fed) {
            HarnessState state = state(duty);
            amps = state.amps();
            volts = state.voltsAtPoints().get(high) - state.voltsAtPoints().get(low);
            burn(seconds, amps);
        }
        heatedBy = amps * amps + (heatedBy - amps * amps) * StrictMath.exp(-seconds / WARMING_SECONDS);
        sensors.add(share, volts, amps, 0);
    }

    private HarnessState state(double duty) {
        if (blown || pin.open()) {
            return HarnessState.open(parameters);
        }
        return chafe.open()
                ? HarnessState.shorted(parameters, heatedBy)
                : HarnessState.warmedBy(parameters, FULL_LOAD_AMPS * duty, heatedBy);
    }

    private void burn(double seconds, double amps) {
        double times = amps / parameters.fuseAmps();
        fuseSeconds = Math.max(0, fuseSeconds + seconds * (times * times - CARRIES_SQUARED));
        blown = blown || fuseSeconds > BLOWS_AFTER_SECONDS;
    }
}
