package org.pumpwright.host.run;

import java.util.Locale;
import java.util.Optional;
import org.pumpwright.host.plan.Plan.StopRules;
import org.pumpwright.host.quantity.Pressure;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.Channels;
import org.pumpwright.host.trace.Ending;
import org.pumpwright.host.trace.Sample;

/**
 * Holds every sample against the plan's stop rules. The board has limits of its own that no plan can widen. Confined to
 * the run thread.
 */
final class StopRuleWatch {
    private final StopRules rules;
    private final AnalogChannel amps;
    private final AnalogChannel volts;
    private final Optional<AnalogChannel> pressure;
    private long beganNanos = -1;
    private long ampsAboveSinceNanos = -1;

    StopRuleWatch(StopRules rules, Channels channels) {
        this.rules = rules;
        amps = channels.required(ChannelRole.SUPPLY_AMPS);
        volts = channels.required(ChannelRole.VOLTS_AT_PINS);
        pressure = channels.analog(ChannelRole.OUTLET_PRESSURE);
    }

    void check(Sample sample) throws RunEnded {
        checkAmps(sample);
        checkPressure(sample);
        checkVolts(sample);
        checkTime(sample);
    }

    private void checkAmps(Sample sample) throws RunEnded {
        double now = value(amps, sample);
        if (now <= rules.supplyAmpsAbove()) {
            ampsAboveSinceNanos = -1;
            return;
        }
        if (ampsAboveSinceNanos < 0) {
            ampsAboveSinceNanos = sample.boardNanos();
        }
        double seconds = (sample.boardNanos() - ampsAboveSinceNanos) / 1e9;
        if (seconds >= rules.ampsForSeconds()) {
            throw ended(
                    Ending.Kind.UNIT_OUT_OF_BOUNDS,
                    "the unit drew %.1f A for %.1f s, the plan allows %.1f A",
                    now,
                    seconds,
                    rules.supplyAmpsAbove());
        }
    }

    private void checkPressure(Sample sample) throws RunEnded {
        if (pressure.isPresent()) {
            Pressure now = new Pressure(value(pressure.get(), sample));
            if (now.pascals() > rules.pressureAbovePascals()) {
                throw ended(
                        Ending.Kind.STAND_UNFIT,
                        "the outlet pressure rose to %.1f psi, the plan allows %.1f psi: check nozzle and valves",
                        now.psi(),
                        new Pressure(rules.pressureAbovePascals()).psi());
            }
        }
    }

    private void checkVolts(Sample sample) throws RunEnded {
        double now = value(volts, sample);
        if (now < rules.voltsAtPinsBelow()) {
            throw ended(
                    Ending.Kind.STAND_UNFIT,
                    "the volts at the pins fell to %.2f V, the plan needs %.2f V: check supply, contactor and lead",
                    now,
                    rules.voltsAtPinsBelow());
        }
    }

    private void checkTime(Sample sample) throws RunEnded {
        if (beganNanos < 0) {
            beganNanos = sample.boardNanos();
        }
        if ((sample.boardNanos() - beganNanos) / 1e9 > rules.runSecondsAbove()) {
            throw ended(
                    Ending.Kind.STAND_UNFIT,
                    "the run took more than the %.0f s that the plan allows",
                    rules.runSecondsAbove());
        }
    }

    private static double value(AnalogChannel channel, Sample sample) {
        return channel.si(sample.analogs().get(channel.index()).mean());
    }

    private static RunEnded ended(Ending.Kind kind, String format, Object... args) {
        return new RunEnded(kind, String.format(Locale.ROOT, format, args));
    }
}
