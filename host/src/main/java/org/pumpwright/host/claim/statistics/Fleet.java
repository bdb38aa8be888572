package org.pumpwright.host.claim.statistics;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Everything shipped, and what became of it as far as returns tell: shipped per month against returned per month. Thread-safe.
 *
 * @param lots one a shipment, oldest first
 * @param unplaced returns that belong to no shipment of the table, each with the reason
 * @param watchedUntil last day watched
 */
public record Fleet(List<Lot> lots, List<String> unplaced, LocalDate watchedUntil) {
    public Fleet {
        lots = List.copyOf(lots);
        unplaced = List.copyOf(unplaced);
    }

    /**
     * Places each return with its shipment: by ship month, and date code where the table has one; by date code alone where the
     * month is not known and only one shipment bears the code.
     *
     * @param shipments what was shipped; later than the last day watched does not count yet
     * @param facts all returns of these units, up to the last day watched
     * @throws ShipmentException when more units came back from a shipment than were shipped
     */
    public static Fleet of(List<Shipment> shipments, List<ReturnFact> facts, LocalDate watchedUntil)
            throws ShipmentException {
        Map<Shipment, Map<Object, List<ReturnFact>>> placed = new LinkedHashMap<>();
        known(shipments, watchedUntil).forEach(shipment -> placed.put(shipment, new LinkedHashMap<>()));
        Map<Object, List<ReturnFact>> units = new LinkedHashMap<>();
        inOrder(facts, watchedUntil)
                .forEach(fact -> units.computeIfAbsent(identity(fact), unit -> new ArrayList<>())
                        .add(fact));
        List<String> unplaced = new ArrayList<>();
        units.forEach((unit, returns) -> home(List.copyOf(placed.keySet()), returns)
                .ifPresentOrElse(
                        shipment -> placed.computeIfAbsent(shipment, none -> new LinkedHashMap<>())
                                .put(unit, returns),
                        () -> returns.forEach(fact -> unplaced.add(fact.claim() + ": " + reason(fact)))));
        List<Lot> lots = new ArrayList<>();
        for (Map.Entry<Shipment, Map<Object, List<ReturnFact>>> entry : placed.entrySet()) {
            lots.add(lot(entry.getKey(), entry.getValue(), watchedUntil));
        }
        return new Fleet(lots, unplaced, watchedUntil);
    }

    /** Units shipped. */
    public int shipped() {
        return lots.stream().mapToInt(lot -> lot.shipment().count()).sum();
    }

    /** Units with a confirmed failure. */
    public int failed() {
        return lots.stream().mapToInt(Lot::failures).sum();
    }

    /** The fleet as lives of one failure mode, ages in months; everything else is a suspension. */
    public List<Life> lives(Optional<String> mode) {
        List<Life> lives = new ArrayList<>();
        lots.forEach(lot -> lot.addLives(mode, lives));
        return lives;
    }

    private static List<Shipment> known(List<Shipment> shipments, LocalDate watchedUntil) throws ShipmentException {
        List<Shipment> known = shipments.stream()
                .filter(shipment -> !shipment.month().isAfter(YearMonth.from(watchedUntil)))
                .sorted(Comparator.comparing(Shipment::month).thenComparing(Shipment::batch))
                .toList();
        for (int i = 1; i < known.size(); i++) {
            Shipment before = known.get(i - 1);
            Shipment here = known.get(i);
            if (before.month().equals(here.month()) && before.dateCode().equals(here.dateCode())) {
                throw new ShipmentException("%s%s is there twice: add the two counts up"
                        .formatted(
                                here.month(),
                                here.dateCode()
                                        .map(code -> ", date code " + code)
                                        .orElse("")));
            }
        }
        return known;
    }

    private static List<ReturnFact> inOrder(List<ReturnFact> facts, LocalDate watchedUntil) {
        return facts.stream()
                .filter(fact -> !fact.returned().isAfter(watchedUntil))
                .sorted(Comparator.comparing(ReturnFact::returned).thenComparing(ReturnFact::claim))
                .toList();
    }

    /** Units without a readable plate are each their own. */
    private static Object identity(ReturnFact fact) {
        return fact.unit().serial().isPresent() ? fact.unit() : fact.claim();
    }

    /** The home of the first of a unit's returns that tells it. */
    private static Optional<Shipment> home(List<Shipment> shipments, List<ReturnFact> returns) {
        return returns.stream().flatMap(fact -> home(shipments, fact).stream()).findFirst();
    }

    private static Optional<Shipment> home(List<Shipment> shipments, ReturnFact fact) {
        YearMonth returned = YearMonth.from(fact.returned());
        List<Shipment> fitting = shipments.stream()
                .filter(shipment -> !shipment.month().isAfter(returned))
                .filter(shipment ->
                        fact.shipped().isEmpty() || fact.shipped().get().equals(shipment.month()))
                .filter(shipment -> sameCode(fact, shipment))
                .toList();
        return fitting.size() == 1 ? Optional.of(fitting.get(0)) : Optional.empty();
    }

    private static boolean sameCode(ReturnFact fact, Shipment shipment) {
        if (fact.dateCode().isPresent() && shipment.dateCode().isPresent()) {
            return fact.dateCode().equals(shipment.dateCode());
        }
        return fact.shipped().isPresent();
    }

    private static String reason(ReturnFact fact) {
        String code = fact.dateCode().map(text -> "date code " + text).orElse("no date code");
        return fact.shipped()
                .map(month -> "shipped %s, %s: no such line in the table of what was shipped".formatted(month, code))
                .orElse("ship month not known, %s: not one line of the table of what was shipped fits it alone"
                        .formatted(code));
    }

    private static Lot lot(Shipment shipment, Map<Object, List<ReturnFact>> units, LocalDate watchedUntil)
            throws ShipmentException {
        if (units.size() > shipment.count()) {
            throw new ShipmentException(
                    "%s: %d units came back, but only %d were shipped. Look at the count in the table, and at the ship months of the claims"
                            .formatted(shipment.batch(), units.size(), shipment.count()));
        }
        List<UnitEnd> ends = new ArrayList<>();
        units.values().forEach(returns -> UnitEnd.of(returns).ifPresent(ends::add));
        List<ReturnFact> returns = units.values().stream()
                .flatMap(List::stream)
                .sorted(Comparator.comparing(ReturnFact::returned).thenComparing(ReturnFact::claim))
                .toList();
        return new Lot(shipment, returns, ends, watchedUntil);
    }
}
