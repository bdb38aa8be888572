package org.pumpwright.host.app.bucket;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pumpwright.host.calibrate.Leg;
import org.pumpwright.host.calibrate.Reading;
import org.pumpwright.host.calibrate.Run;
import org.pumpwright.host.datafile.Node;
import org.pumpwright.host.quantity.FlowRate;

/** The runs of a sheet. Confined to the reading thread. */
final class RunReader {
    private static final double NO_TARE = 0;

    private final SheetUnits units;
    private final List<Run> runs = new ArrayList<>();
    private final Map<Integer, Integer> lines = new HashMap<>();

    RunReader(SheetUnits units) {
        this.units = units;
    }

    List<Run> runs() {
        return runs;
    }

    /** Lines of the sheet by the runs' numbers. */
    Map<Integer, Integer> lines() {
        return lines;
    }

    void read(Node flows) {
        for (Node flow : flows.items()) {
            FlowRate set = units.requiredFlow(flow, "");
            Leg leg = leg(flow.find("leg").map(Node::text).orElse("main"));
            for (Node run : flow.at("runs").items()) {
                read(flow, run, set, leg);
            }
        }
    }

    private void read(Node flow, Node node, FlowRate set, Leg leg) {
        int number = node.find("number").map(n -> node.whole("number")).orElse(runs.size() + 1);
        Integer before = lines.putIfAbsent(number, node.line());
        if (before != null) {
            node.refuse("is run %d, so is line %d: give each run a number of its own".formatted(number, before));
            return;
        }
        double seconds = own(flow, node, "seconds");
        double celsius = own(flow, node, "celsius");
        Reading reading = reading(node);
        Optional<String> leftOut = node.find("left_out").map(Node::text);
        runs.add(BenchReader.made(
                node, () -> new Run(number, set, leg, node.number("pulses"), seconds, celsius, reading, leftOut)));
    }

    /** The run's own figure, else that of its flow. */
    private static double own(Node flow, Node run, String key) {
        return run.find(key)
                .or(() -> flow.find(key))
                .orElseThrow(() -> SheetUnits.missing(run, "has no %s, nor has its flow: add it".formatted(key)))
                .number();
    }

    private Reading reading(Node node) {
        Optional<Double> net = units.massKg(node, "net_");
        Optional<Double> gross = units.massKg(node, "gross_");
        if (net.isPresent() && gross.isPresent()) {
            throw SheetUnits.missing(node, "has net and gross: give one of the two");
        }
        if (net.isPresent()) {
            return BenchReader.made(node, () -> new Reading.Weights(NO_TARE, net.get()));
        }
        if (gross.isPresent()) {
            double tare = units.massKg(node, "tare_")
                    .orElseThrow(() -> SheetUnits.missing(node, "has a gross weight and no tare: add it"));
            return BenchReader.made(node, () -> new Reading.Weights(tare, gross.get()));
        }
        return units.volume(node)
                .<Reading>map(volume -> BenchReader.made(node, () -> new Reading.Level(volume.m3())))
                .or(() -> node.find("master_pulses").map(pulses -> new Reading.MasterPulses(pulses.number())))
                .orElseThrow(() -> SheetUnits.missing(
                        node,
                        "has nothing that was caught: give net_grams, or tare_grams and gross_grams, litres, us_gallons or"
                                + " master_pulses"));
    }

    static Leg leg(String word) {
        return switch (word) {
            case "back" -> Leg.BACK;
            case "first-again" -> Leg.FIRST_AGAIN;
            default -> Leg.MAIN;
        };
    }
}
