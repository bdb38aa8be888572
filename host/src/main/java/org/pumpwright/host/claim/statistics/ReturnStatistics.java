package org.pumpwright.host.claim.statistics;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Everything the desk can say of its returns. Thread-safe.
 *
 * @param practice whether all of it is of practice units
 * @param counts returns and what they turned out to be, in the window
 * @param modes confirmed failures by mode, in the window
 * @param shop the shop's own figures, in the window
 * @param fleet shipped against returned, since the first shipment; empty when what was shipped is not known
 */
public record ReturnStatistics(
        boolean practice, ReturnCounts counts, List<ModeCount> modes, ShopFigures shop, Optional<FleetFindings> fleet) {
    public ReturnStatistics {
        modes = List.copyOf(modes);
    }

    /**
     * The days counted.
     *
     * @param from first day of coming in
     * @param until last day watched
     */
    public record Window(LocalDate from, LocalDate until) {
        public Window {
            if (until.isBefore(from)) {
                throw new IllegalArgumentException(
                        "from %s until %s: the first day must come first".formatted(from, until));
            }
        }

        private boolean holds(ReturnFact fact) {
            return !fact.returned().isBefore(from) && !fact.returned().isAfter(until);
        }
    }

    /**
     * Works them out. The window cuts what is counted of returns; lives and batches are followed from the first shipment on, since a
     * failure left out would make a unit look sound.
     *
     * @param facts all real units or all practice units
     * @param shipments what was shipped; empty when it is not known
     * @param alertBelow chance below which a batch is an alert
     * @throws ShipmentException when shipments and returns contradict each other
     * @throws IllegalArgumentException when practice units and real ones are mixed
     */
    public static ReturnStatistics of(
            List<ReturnFact> facts, List<Shipment> shipments, Window window, double alertBelow)
            throws ShipmentException {
        boolean practice = facts.stream().anyMatch(ReturnFact::practice);
        if (practice && !facts.stream().allMatch(ReturnFact::practice)) {
            throw new IllegalArgumentException("practice units and real ones must not be counted together");
        }
        List<ReturnFact> counted = facts.stream().filter(window::holds).toList();
        return new ReturnStatistics(
                practice,
                ReturnCounts.of(counted),
                ModeCount.of(counted),
                ShopFigures.of(counted, window.until()),
                shipments.isEmpty()
                        ? Optional.empty()
                        : Optional.of(FleetFindings.of(Fleet.of(shipments, facts, window.until()), alertBelow)));
    }
}
