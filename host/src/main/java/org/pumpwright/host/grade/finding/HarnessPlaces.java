package org.pumpwright.host.grade.finding;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.pumpwright.host.plan.Ask;
import org.pumpwright.host.plan.CopperWire;
import org.pumpwright.host.plan.Hold;
import org.pumpwright.host.plan.Reading;
import org.pumpwright.host.plan.Step;

/** The places of a harness between which a person put the voltmeter, each with its loads. Thread-safe. */
final class HarnessPlaces {
    /** A question whose simulated settings begin so moves the voltmeter; so does one that tells none. */
    private static final String PROBE = "probe";

    private HarnessPlaces() {}

    /**
     * One place.
     *
     * @param name of the question that put the voltmeter there, or of the first hold where there was none
     * @param wires the wire along which it lies, one or none
     * @param loads what was measured there, in the order of the plan
     */
    record Place(String name, List<CopperWire> wires, List<Window> loads) {
        boolean isWire() {
            return !wires.isEmpty();
        }
    }

    static List<Place> of(FindingInput input) {
        Map<String, Place> places = new LinkedHashMap<>();
        String here = "";
        List<CopperWire> along = List.of();
        for (Step step : input.plan().steps()) {
            if (step instanceof Ask ask && movesProbe(ask)) {
                here = ask.name();
                along = ask.along().stream().toList();
            } else if (step instanceof Hold hold && hold.reads() == Reading.LOAD) {
                here = here.isEmpty() ? hold.name() : here;
                Place place = new Place(here, along, new ArrayList<>());
                for (Window time : input.times(hold)) {
                    places.computeIfAbsent(place.name(), name -> place).loads().add(time.secondHalf());
                }
            }
        }
        return List.copyOf(places.values());
    }

    private static boolean movesProbe(Ask ask) {
        return ask.simulated().isEmpty()
                || ask.simulated().keySet().stream().anyMatch(setting -> setting.startsWith(PROBE));
    }
}
