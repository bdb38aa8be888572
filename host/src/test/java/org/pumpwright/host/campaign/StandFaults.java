package org.pumpwright.host.campaign;

import static org.pumpwright.host.campaign.FaultList.ALL_INSIDE;
import static org.pumpwright.host.campaign.FaultList.ARMED;
import static org.pumpwright.host.campaign.FaultList.BOARD_WAS_ASKED;
import static org.pumpwright.host.campaign.FaultList.DRIVEN;
import static org.pumpwright.host.campaign.FaultList.INPUT;
import static org.pumpwright.host.campaign.Stage.PROVING;
import static org.pumpwright.host.campaign.Stage.SAFE;

import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.pumpwright.host.campaign.Fault.Bound;
import org.pumpwright.host.campaign.Fault.Host;
import org.pumpwright.host.campaign.Scene.Strike;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.protocol.Inputs;

/** What happens at the stand: its inputs, its sensors, its meter. */
final class StandFaults {
    private final FaultList list;

    private StandFaults(FaultList list) {
        this.list = list;
    }

    static void addTo(FaultList list) {
        StandFaults all = new StandFaults(list);
        all.inputs();
        all.sensors();
        all.meter();
    }

    private void inputs() {
        Inputs stop = new Inputs(false, true, true, true, false);
        list.add(
                "emergency stop before the run",
                open(stop),
                INPUT,
                "started .*",
                "refused 'arm': the emergency stop",
                List.of(SAFE));
        list.add(
                "emergency stop while the contactor proves itself",
                open(stop),
                INPUT,
                "started .*, (armed, )?made safe EMERGENCY_STOP",
                "the emergency stop was pressed",
                List.of(PROVING));
        opened("emergency stop", stop, "EMERGENCY_STOP", "the emergency stop was pressed");
        list.add(
                "emergency stop, let go again after 0.1 s",
                scene -> {
                    scene.board().setInputs(stop);
                    scene.after(100, () -> scene.board().setInputs(new Inputs(true, true, true, true, false)));
                },
                INPUT,
                "started .*, armed, made safe EMERGENCY_STOP",
                "the emergency stop was pressed",
                DRIVEN);
        opened("guard", new Inputs(true, false, true, true, false), "GUARD_OPEN", "the guard was opened");
        opened("level", new Inputs(true, true, false, true, false), "LEVEL_LOW", "the tank's level fell low");
        opened(
                "override",
                new Inputs(true, true, true, false, false),
                "OVERRIDE_IN",
                "the unit's mechanical override was pushed in");
    }

    private void opened(String input, Inputs closed, String reason, String words) {
        list.add(input + " opened", open(closed), INPUT, "started .*, armed, made safe " + reason, words, ARMED);
    }

    private void sensors() {
        Bound fifty = new Bound("70: limit's time 50, and 20", 70);
        sensor(
                "amps",
                ChannelRole.SUPPLY_AMPS,
                fifty,
                "OVER_CURRENT",
                "the current stayed above the board's limit.*with the contactor let go");
        list.add(new Fault(
                "the unit is shorted: 40 A for as long as it is fed",
                Host.HERE,
                StandFaults::shorted,
                fifty,
                "started .*, armed, made safe OVER_CURRENT",
                Set.of(Verdict.FAIL),
                "the current stayed above the board's limit of 30.0 A for 50 ms, at 40.0 A$",
                false,
                DRIVEN));
        sensor("volts", ChannelRole.VOLTS_AT_PINS, fifty, "OVER_VOLTAGE", "the voltage stayed above the board's limit");
        sensor(
                "pressure",
                ChannelRole.OUTLET_PRESSURE,
                new Bound("120: limit's time 100, and 20", 120),
                "OVER_PRESSURE",
                "the pressure stayed above the board's limit");
        list.add(
                "volts sensor shorted to 0 V",
                scene -> scene.board().holdSensor(ChannelRole.VOLTS_AT_PINS, 0),
                new Bound("500: the plan's rule of 0.2 s, kept by the host", 500),
                BOARD_WAS_ASKED,
                "the volts at the pins fell to",
                DRIVEN);
        list.goesOn(
                "amps sensor shorted to 0 V",
                scene -> scene.board().holdSensor(ChannelRole.SUPPLY_AMPS, 0),
                BOARD_WAS_ASKED,
                Set.of(Verdict.PASS, Verdict.INVALID),
                "current sensor: .* A while water flows|" + ALL_INSIDE);
        list.goesOn(
                "pressure sensor shorted to 0 V",
                scene -> scene.board().holdSensor(ChannelRole.OUTLET_PRESSURE, 0),
                BOARD_WAS_ASKED,
                Set.of(Verdict.PASS, Verdict.INVALID),
                "outlet pressure: the sensor's signal|pressure sensor: |" + ALL_INSIDE);
    }

    private static void shorted(Scene scene) {
        scene.board().holdSensor(ChannelRole.SUPPLY_AMPS, 5000);
        scene.board().watch(pins -> {
            if (!pins.contactorClosed()) {
                scene.board().releaseSensor(ChannelRole.SUPPLY_AMPS);
            }
        });
    }

    private void sensor(String name, ChannelRole role, Bound bound, String reason, String words) {
        list.add(
                name + " sensor open (5 V)",
                scene -> scene.board().holdSensor(role, 5000),
                bound,
                "started .*, armed, made safe " + reason,
                words,
                ARMED);
    }

    private void meter() {
        list.goesOn(
                "the meter gives no edges",
                scene -> scene.board().disturbMeter(edges -> new double[0]),
                BOARD_WAS_ASKED,
                Set.of(Verdict.PASS, Verdict.INVALID),
                "meter counts: no pulse|" + ALL_INSIDE);
        list.goesOn(
                "the meter gives wild edges",
                StandFaults::wildEdges,
                BOARD_WAS_ASKED,
                Set.of(Verdict.PASS, Verdict.INVALID),
                "nozzle|AIR SUSPECTED|" + ALL_INSIDE);
    }

    private static double[] wild(Random random) {
        double density = 0.4 * random.nextDouble();
        return IntStream.range(0, 49)
                .filter(tenth -> random.nextDouble() < density)
                .mapToDouble(tenth -> tenth * 1e-4)
                .toArray();
    }

    private static void wildEdges(Scene scene) {
        Random random = new Random(7);
        scene.board().disturbMeter(edges -> wild(random));
    }

    private static Strike open(Inputs closed) {
        return scene -> scene.board().setInputs(closed);
    }
}
