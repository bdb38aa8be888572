package org.pumpwright.host.ui.control;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.pumpwright.host.trace.Leg;
import org.pumpwright.host.ui.work.SweepView;

/**
 * What a {@link LivePlot} shows, in the units that are shown. Thread-safe.
 *
 * @param band the healthy range from the lowest effective volts on; empty where nothing is held against
 * @param dots what was measured, in the order of the run
 * @param now where the unit is at the moment; empty when it rests
 * @param earlier what was measured in a run before, drawn hollow and dashed; empty where only one run is shown
 */
public record CurvePicture(List<Band> band, List<Dot> dots, Optional<Spot> now, List<Dot> earlier) {
    /** Nothing. */
    public static final CurvePicture EMPTY = new CurvePicture(List.of(), List.of(), Optional.empty());

    public CurvePicture {
        band = List.copyOf(band);
        dots = List.copyOf(dots);
        earlier = List.copyOf(earlier);
    }

    /** One run. */
    public CurvePicture(List<Band> band, List<Dot> dots, Optional<Spot> now) {
        this(band, dots, now, List.of());
    }

    /**
     * A sweep.
     *
     * @param shown from the sweep's SI unit to the one that is shown
     */
    public static CurvePicture of(SweepView sweep, DoubleUnaryOperator shown) {
        return new CurvePicture(
                sweep.band().stream()
                        .map(each -> new Band(
                                each.volts(),
                                shown.applyAsDouble(each.low()),
                                shown.applyAsDouble(each.mean()),
                                shown.applyAsDouble(each.high())))
                        .toList(),
                sweep.dots().stream()
                        .map(each -> new Dot(
                                spot(each.spot(), shown),
                                shown.applyAsDouble(each.half()),
                                way(each.leg()),
                                Standing.valueOf(each.lies().name())))
                        .toList(),
                sweep.now().map(each -> spot(each, shown)));
    }

    private static Spot spot(SweepView.Spot spot, DoubleUnaryOperator shown) {
        return new Spot(spot.volts(), shown.applyAsDouble(spot.flow()));
    }

    private static Way way(Leg leg) {
        return switch (leg) {
            case UP -> Way.UP;
            case DOWN -> Way.DOWN;
            case REPEAT -> Way.AGAIN;
        };
    }

    /** The same over what was measured in a run before. */
    public CurvePicture over(CurvePicture before) {
        return new CurvePicture(band, dots, now, before.dots());
    }

    /**
     * The healthy range at some effective volts.
     *
     * @param volts effective volts
     * @param low lower limit
     * @param mean healthy mean
     * @param high upper limit
     */
    public record Band(double volts, double low, double mean, double high) {}

    /** Where the unit is: effective volts, and the value there. */
    public record Spot(double volts, double value) {}

    /** On which way of the sweep a point was measured. */
    public enum Way {
        UP,
        DOWN,
        AGAIN
    }

    /** How a point lies. */
    public enum Standing {
        /** It is for information only, or lies inside. */
        INSIDE,
        /** So near a limit that its uncertainty reaches across. */
        NEAR,
        BELOW,
        ABOVE
    }

    /**
     * A measured point.
     *
     * @param spot where it is
     * @param half half the length of its error bar
     * @param way when it was measured
     * @param standing how it lies
     */
    public record Dot(Spot spot, double half, Way way, Standing standing) {}
}
