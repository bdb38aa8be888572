package org.pumpwright.host.grade.finding;

import static org.pumpwright.host.grade.finding.Figures.format;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.ChannelRole;

/**
 * What a driver's switch and ground pin take at 15 A, from the holds {@code supply-pins-15a}, {@code output-pins-15a} and
 * {@code ground-pin-15a}: one voltmeter at three places. Drops are scaled to 15 A exactly. Thread-safe.
 */
final class SwitchFindings {
    static final double AMPS = 15;
    static final double LEAST_AMPS = 1;

    /** The dummy load of the plan, and what it may be off by. */
    private static final double LOAD_OHMS = 0.9;

    private static final double LOAD_TOLERANCE = 1.06;

    private SwitchFindings() {}

    static List<Finding> of(FindingInput input) {
        Optional<Window> supply = input.settled("supply-pins-15a");
        Optional<Window> output = input.settled("output-pins-15a");
        Optional<Window> ground = input.settled("ground-pin-15a");
        if (supply.isEmpty() || output.isEmpty() || ground.isEmpty()) {
            return List.of();
        }
        for (Window window : List.of(supply.get(), output.get(), ground.get())) {
            double amps = window.required(ChannelRole.SUPPLY_AMPS).value();
            if (amps < LEAST_AMPS) {
                return List.of(Finding.word(
                        DriverFindings.STEP,
                        "switch drop at 15 A",
                        "not measured",
                        format("%.2f A are too little", amps)));
            }
        }
        Uncertain lift = lift(ground.get());
        List<Finding> findings = new ArrayList<>(drop(supply.get(), output.get(), lift));
        findings.add(Finding.figure(
                DriverFindings.STEP,
                "ground lift at 15 A",
                lift.times(AMPS),
                FindingUnit.VOLTS,
                "the module's ground pin above the battery's minus"));
        return findings;
    }

    private static List<Finding> drop(Window supply, Window output, Uncertain lift) {
        if (shortensItsDuty(output)) {
            return List.of(Finding.word(
                    DriverFindings.STEP,
                    "switch drop at 15 A",
                    "limits the current",
                    "it switches at full command, and the load gets less than its volts would give"));
        }
        Uncertain ohms = ohms(supply, output, lift);
        return List.of(
                Finding.figure(
                        DriverFindings.STEP,
                        "switch drop at 15 A",
                        ohms.times(AMPS),
                        FindingUnit.VOLTS,
                        "supply pins less output pins less what the ground pin takes"),
                Finding.figure(
                        DriverFindings.STEP, "switch resistance", ohms, FindingUnit.OHMS, "with its connectors"));
    }

    /** The voltmeter at the output reads while the switch conducts; a mean current below volts over ohms is then a shorter duty. */
    private static boolean shortensItsDuty(Window output) {
        int meter = output.channels().flowMeter().index();
        double ohms = output.required(ChannelRole.VOLTS_AT_PINS).value()
                / output.required(ChannelRole.SUPPLY_AMPS).value();
        return output.pulses(meter) > 0 && ohms > LOAD_OHMS * LOAD_TOLERANCE;
    }

    /** Ohms of the ground pin; the voltmeter's whole error is in it. */
    private static Uncertain lift(Window ground) {
        return Common.over(ground.required(ChannelRole.VOLTS_AT_PINS), ground.required(ChannelRole.SUPPLY_AMPS));
    }

    /**
     * The voltmeter's zero falls out of supply less output and comes back by the ground pin; its gain acts on the drop. The
     * ammeter's error acts on the sum of both alike.
     */
    private static Uncertain ohms(Window supply, Window output, Uncertain lift) {
        Uncertain drop = Common.difference(supply, output, ChannelRole.VOLTS_AT_PINS);
        Uncertain amps = output.bare(ChannelRole.SUPPLY_AMPS);
        AnalogChannel channel = output.channels().required(ChannelRole.SUPPLY_AMPS);
        double both = drop.value() / amps.value();
        double ohms = both - lift.value();
        return new Uncertain(ohms, drop.standardUncertainty() / amps.value(), drop.degreesOfFreedom())
                .with(Math.abs(both) * amps.relative(), amps.degreesOfFreedom())
                .with(
                        Math.abs(ohms) * channel.calibrationUncertainty(amps.value()) / amps.value(),
                        Double.POSITIVE_INFINITY)
                .with(lift.standardUncertainty(), lift.degreesOfFreedom());
    }
}
