package org.pumpwright.host.grade.finding;

import static org.pumpwright.host.grade.finding.Figures.format;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.plan.Hold;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.signal.StandstillPulse;
import org.pumpwright.host.signal.Statistics;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.Sample;
import org.pumpwright.host.trace.Stretch;

/**
 * Resistance between the unit's pins at rest. A switching drive gives the duty's share of the volts less the diode's drop for
 * the rest of the time, and the motor's current is the supply's over the duty. Brushes and leads are in it. Thread-safe.
 */
final class StandstillFindings {
    static final String NAME = "resistance at rest";

    /** Where nothing is known of the diode it drops 0.25 to 0.75 V (common practice, no source). */
    private static final double USUAL_FREEWHEEL_VOLTS = 0.5;

    private static final double USUAL_UNCERTAINTY_VOLTS = 0.25 / Math.sqrt(3);

    /** A drop that is given holds for the usual currents, not for this one (assumed). */
    private static final double GIVEN_UNCERTAINTY_VOLTS = 0.05;

    private static final double ON_TARGET = 0.005;

    /** A zero is only known where the converter could have shown less. */
    private static final double MOST_SHARE_AT_END = 0.05;

    private static final int LEAST_SAMPLES = 12;

    private final FindingInput input;
    private final Hold hold;

    private StandstillFindings(FindingInput input, Hold hold) {
        this.input = input;
        this.hold = hold;
    }

    static List<Finding> of(FindingInput input, Hold hold) {
        return new StandstillFindings(input, hold).findings();
    }

    /** The resistance; empty where no pulse of the hold was good. */
    static Optional<Uncertain> ohms(FindingInput input, Hold hold) {
        return combined(new StandstillFindings(input, hold).measured());
    }

    private List<Finding> findings() {
        List<Window> times = input.times(hold);
        if (times.isEmpty()) {
            return List.of();
        }
        List<Uncertain> measured = measured();
        String refusals = String.join("; ", refusals());
        return combined(measured)
                .map(ohms -> List.of(Finding.figure(
                        hold.name(), NAME, ohms, FindingUnit.OHMS, note(measured, times.size(), refusals))))
                .orElseGet(() -> List.of(Finding.word(hold.name(), NAME, "not measured", refusals)));
    }

    private String note(List<Uncertain> measured, int of, String refusals) {
        double least = measured.stream().mapToDouble(Uncertain::value).min().orElseThrow();
        double most = measured.stream().mapToDouble(Uncertain::value).max().orElseThrow();
        String pulses =
                of == 1 ? "one pulse" : format("%d of %d pulses, %.3f to %.3f ohm", measured.size(), of, least, most);
        String diode = needsFreewheel()
                ? format(", diode of the drive taken as %.2f V", freewheel().value())
                : "";
        return pulses + diode + (refusals.isEmpty() ? "" : "; " + refusals);
    }

    private static Optional<Uncertain> combined(List<Uncertain> measured) {
        if (measured.isEmpty()) {
            return Optional.empty();
        }
        double[] ohms = measured.stream().mapToDouble(Uncertain::value).toArray();
        // What the channels are off by is the same in every pulse: it does not average out.
        double common = measured.stream()
                .mapToDouble(Uncertain::standardUncertainty)
                .max()
                .orElseThrow();
        return Optional.of(Statistics.uncertainMean(ohms).with(common, Double.POSITIVE_INFINITY));
    }

    private List<Uncertain> measured() {
        List<Uncertain> measured = new ArrayList<>();
        for (Window time : input.times(hold)) {
            if (pulse(time) instanceof StandstillPulse.Measured good) {
                measured.add(good.ohms());
            }
        }
        return measured;
    }

    private List<String> refusals() {
        List<String> refusals = new ArrayList<>();
        for (Window time : input.times(hold)) {
            if (pulse(time) instanceof StandstillPulse.Refused refused) {
                refusals.add(refused.reason());
            }
        }
        return refusals.size() < 2
                ? refusals
                : List.of(
                        refusals.get(0),
                        format(
                                "so %d of %d pulses",
                                refusals.size(), input.times(hold).size()));
    }

    private StandstillPulse pulse(Window time) {
        double duty = hold.duty().fraction();
        Window steady = steady(time);
        if (duty == 0 || steady.size() < LEAST_SAMPLES) {
            return new StandstillPulse.Refused(format(
                    "%d samples at %s, at least %d are needed",
                    steady.size(), hold.duty().print(), LEAST_SAMPLES));
        }
        AnalogChannel amps = time.channels().required(ChannelRole.SUPPLY_AMPS);
        double[] motorAmps = scaled(steady.values(amps), 1 / duty, 0);
        double[] motorVolts = scaled(
                steady.values(ChannelRole.VOLTS_AT_PINS),
                duty,
                -(1 - duty) * freewheel().value());
        double supplyAmps = Statistics.mean(steady.values(amps));
        Optional<Uncertain> zero = zero(amps);
        double ampsUncertainty =
                zero.isPresent() ? withoutZero(amps, supplyAmps) : amps.calibrationUncertainty(supplyAmps);
        double pins = Statistics.mean(steady.values(ChannelRole.VOLTS_AT_PINS));
        double pinsUncertainty =
                duty * time.channels().required(ChannelRole.VOLTS_AT_PINS).calibrationUncertainty(pins);
        double diode = needsFreewheel() ? (1 - duty) * freewheel().standardUncertainty() : 0;
        double step = ConverterStep.stuck(steady, amps) / Math.sqrt(12);
        return StandstillPulse.of(
                steady.times(),
                motorVolts,
                motorAmps,
                steady.pulses(time.channels().flowMeter().index()),
                zero.orElse(Uncertain.of(0, 0)).times(1 / duty),
                Math.hypot(pinsUncertainty, diode),
                Math.hypot(ampsUncertainty, step) / duty);
    }

    /** The samples at which the pin has had the whole duty for one sample at least. */
    private Window steady(Window time) {
        double[] duties = time.duties();
        List<Sample> some = new ArrayList<>();
        for (int i = 1; i < duties.length; i++) {
            if (Math.abs(duties[i] - hold.duty().fraction()) < ON_TARGET
                    && Math.abs(duties[i - 1] - hold.duty().fraction()) < ON_TARGET) {
                some.add(time.samples().get(i));
            }
        }
        return new Window(some, time.channels(), time.drive());
    }

    /** The reading of the current channel with nothing driven; empty where the converter may have hidden a part of it. */
    private Optional<Uncertain> zero(AnalogChannel amps) {
        List<Stretch> rests = input.trace().stretches().stream()
                .filter(stretch -> stretch.kind() == Stretch.Kind.REST)
                .toList();
        if (rests.isEmpty()) {
            return Optional.empty();
        }
        Window rest = input.window(rests.get(0).fromNanos(), rests.get(0).toNanos());
        long atEnd = rest.samples().stream()
                .filter(sample -> amps.raw(sample) <= amps.calibration().sound().least())
                .count();
        return rest.size() < LEAST_SAMPLES || atEnd > MOST_SHARE_AT_END * rest.size()
                ? Optional.empty()
                : Optional.of(Statistics.uncertainMean(rest.values(amps))
                        .with(ConverterStep.stuck(rest, amps) / Math.sqrt(12), Double.POSITIVE_INFINITY));
    }

    /** What is left of the calibration's uncertainty once the zero is read at rest. */
    private static double withoutZero(AnalogChannel amps, double supplyAmps) {
        double all = amps.calibrationUncertainty(supplyAmps);
        double zero = amps.calibrationUncertainty(0);
        return Math.sqrt(Math.max(0, all * all - zero * zero));
    }

    private boolean needsFreewheel() {
        return hold.duty().fraction() < 1;
    }

    private Uncertain freewheel() {
        return input.freewheelVolts().isPresent()
                ? Uncertain.of(input.freewheelVolts().getAsDouble(), GIVEN_UNCERTAINTY_VOLTS)
                : Uncertain.of(USUAL_FREEWHEEL_VOLTS, USUAL_UNCERTAINTY_VOLTS);
    }

    private static double[] scaled(double[] values, double factor, double offset) {
        double[] scaled = new double[values.length];
        for (int i = 0; i < scaled.length; i++) {
            scaled[i] = values[i] * factor + offset;
        }
        return scaled;
    }
}
