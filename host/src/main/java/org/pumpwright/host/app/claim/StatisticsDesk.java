package org.pumpwright.host.app.claim;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.claim.statistics.ReturnFact;
import org.pumpwright.host.claim.statistics.ReturnStatistics;
import org.pumpwright.host.claim.statistics.Shipment;
import org.pumpwright.host.claim.statistics.ShipmentException;

/** Works statistics out from the claims on record. Practice claims are counted alone or not at all. Confined to one thread. */
public final class StatisticsDesk {
    private final ReturnSource source;

    public StatisticsDesk(ReturnSource source) {
        this.source = source;
    }

    /**
     * What is asked for.
     *
     * @param model of this model alone; empty for all
     * @param from first day of coming in; empty for the first on record
     * @param until last day watched
     * @param shipped CSV file of what was shipped; needs a model
     * @param alertBelow chance below which a batch is an alert, 0 to 1
     * @param practice practice claims instead of real ones
     */
    public record Question(
            Optional<String> model,
            Optional<LocalDate> from,
            LocalDate until,
            Optional<Path> shipped,
            double alertBelow,
            boolean practice) {}

    /**
     * The answer.
     *
     * @throws OrderException when the question or the file of shipments is not in order
     */
    public ReturnStatistics answer(Question question) throws OrderException {
        if (question.shipped().isPresent() && question.model().isEmpty()) {
            throw new OrderException(
                    "--shipped needs --model: what was shipped is of one model, and its returns must be too");
        }
        if (question.from().filter(day -> day.isAfter(question.until())).isPresent()) {
            throw new OrderException("--from %s lies after the last day, %s"
                    .formatted(question.from().get(), question.until()));
        }
        List<ReturnFact> facts = source.all().stream()
                .map(ReturnReading::of)
                .filter(fact -> fact.practice() == question.practice())
                .filter(fact -> question.model().isEmpty()
                        || question.model().get().equals(fact.unit().model()))
                .toList();
        List<Shipment> shipments = question.shipped().isPresent()
                ? ShippedCsv.read(question.shipped().get())
                : List.of();
        try {
            return ReturnStatistics.of(facts, shipments, window(question), question.alertBelow());
        } catch (ShipmentException e) {
            throw new OrderException(question.shipped().map(file -> file + ": ").orElse("") + e.getMessage());
        }
    }

    private static ReturnStatistics.Window window(Question question) {
        return new ReturnStatistics.Window(question.from().orElse(LocalDate.MIN), question.until());
    }
}
