package org.pumpwright.host.grade.finding;

import static org.pumpwright.host.grade.finding.Figures.format;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.PointMark;

/**
 * What a driver's plan tells of the module as a whole, put together from several steps. They are known by their names: the
 * sweep {@code duty} into a resistor, the hold {@code supply-lead} with the current sensor moved there, {@code output-off}.
 * Thread-safe.
 */
final class DriverFindings {
    static final String STEP = "driver";

    /** A board's clock may be a ceramic resonator, good to 0.5 % (common practice, no source); rectangular. */
    static final double CLOCK_SHARE = 0.005 / Math.sqrt(3);

    private static final double FULL = 0.999;
    private static final double LEAST_FULL_AMPS = 1;

    private final FindingInput input;

    private DriverFindings(FindingInput input) {
        this.input = input;
    }

    static List<Finding> of(FindingInput input) {
        if (input.plan().kind() != UnitKind.DRIVER) {
            return List.of();
        }
        DriverFindings driver = new DriverFindings(input);
        List<Finding> findings = new ArrayList<>();
        driver.dutyError().ifPresent(findings::add);
        driver.frequency().ifPresent(findings::add);
        driver.quiescent().ifPresent(findings::add);
        driver.leakage().ifPresent(findings::add);
        findings.addAll(SwitchFindings.of(input));
        findings.addAll(CoilShare.of(input));
        findings.addAll(HotLoadFindings.of(input));
        return findings;
    }

    private List<PointMark> points() {
        return input.sweep("duty").map(input::points).orElse(List.of());
    }

    private Optional<Window> at(double duty) {
        return points().stream()
                .filter(point -> Math.abs(point.commanded().fraction() - duty) < 1 - FULL)
                .findFirst()
                .map(input::measured);
    }

    /**
     * A resistor's mean current is the duty's share of its full current as long as the supply's sag follows the switch, which
     * it does behind a lead: a capacitor that would hold it over a period of some milliseconds is not in such a module.
     */
    private Optional<Finding> dutyError() {
        String name = "largest duty error";
        Optional<Window> full = at(1);
        if (full.isEmpty()) {
            return Optional.empty();
        }
        double amps = full.get().required(ChannelRole.SUPPLY_AMPS).value();
        if (amps < LEAST_FULL_AMPS) {
            return Optional.of(
                    Finding.word(STEP, name, "not measured", format("%.2f A at full duty are too little", amps)));
        }
        return points().stream()
                .filter(point -> point.commanded().fraction() < FULL)
                .max(Comparator.comparingDouble(
                        point -> Math.abs(error(point, full.get()).value())))
                .map(worst -> Finding.figure(
                        STEP,
                        name,
                        error(worst, full.get()),
                        FindingUnit.SHARE,
                        format(
                                "at the command %s, of %.2f A at full",
                                worst.commanded().print(), amps)));
    }

    private Uncertain error(PointMark point, Window full) {
        return Common.less(
                Common.ratio(input.measured(point), full, ChannelRole.SUPPLY_AMPS),
                point.commanded().fraction());
    }

    /** The output's edges arrive at the meter's input. */
    private Optional<Finding> frequency() {
        if (input.nominal().outputHertz().isEmpty()) {
            return Optional.empty();
        }
        double nominal = input.nominal().outputHertz().getAsDouble();
        int meter = input.trace().channels().flowMeter().index();
        return points().stream()
                .map(input::measured)
                .filter(window -> window.pulses(meter) > 0)
                .map(window -> window.hertz(meter))
                .min(Comparator.comparingDouble(Uncertain::relative))
                .map(hertz -> Finding.figure(
                        STEP,
                        "output frequency over nominal",
                        Common.less(
                                hertz.with(CLOCK_SHARE * hertz.value(), Double.POSITIVE_INFINITY)
                                        .times(1 / nominal),
                                1),
                        FindingUnit.SHARE,
                        format("%.1f Hz, the model has %.0f Hz", hertz.value(), nominal)));
    }

    /** Supply lead less load lead under one load: into a resistor both carry the same but for the module's own current. */
    private Optional<Finding> quiescent() {
        Optional<Window> supply = input.settled("supply-lead");
        Optional<Window> load = at(0.5);
        return supply.isEmpty() || load.isEmpty()
                ? Optional.empty()
                : Optional.of(Finding.figure(
                        STEP,
                        "quiescent amps",
                        Common.difference(supply.get(), load.get(), ChannelRole.SUPPLY_AMPS),
                        FindingUnit.AMPS,
                        "amps in the supply lead less amps in the load's lead, both at 50 %"));
    }

    private Optional<Finding> leakage() {
        return input.settled("output-off")
                .map(off -> Finding.figure(
                        STEP,
                        "output leakage",
                        off.required(ChannelRole.SUPPLY_AMPS),
                        FindingUnit.AMPS,
                        "in the load's lead at 0 %"));
    }
}
