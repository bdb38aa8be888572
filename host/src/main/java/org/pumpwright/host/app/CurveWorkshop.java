package org.pumpwright.host.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.pumpwright.host.curve.Approval;
import org.pumpwright.host.curve.Basis;
import org.pumpwright.host.curve.Conditions;
import org.pumpwright.host.curve.CurveFile;
import org.pumpwright.host.curve.CurvePopulation;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.curve.Interpolation;
import org.pumpwright.host.curve.KnownGoodFile;
import org.pumpwright.host.curve.KnownGoodList;
import org.pumpwright.host.curve.LimitSet;
import org.pumpwright.host.curve.Names;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.record.RunRecordException;

/** Makes healthy curves from the records of known-good units, and has them approved. Thread-safe. */
public final class CurveWorkshop {
    private final Clock clock;

    /** @param clock the shop's time and zone */
    public CurveWorkshop(Clock clock) {
        this.clock = clock;
    }

    /**
     * What a curve is to be made of.
     *
     * @param records record files, or folders in which they lie
     * @param knownGood file of the person's declaration
     * @param model name of the units' model
     * @param author who makes the curve
     * @param out new file
     * @param replaces file of the version before this one, which hands on its name and its limits of function
     * @param id short name; empty for that of the model
     * @param title for people; empty for one made of the model's title
     * @param points number of points of the curve
     * @param freewheelVolts drop of the driver's freewheel diode, V
     */
    public record Order(
            List<Path> records,
            Path knownGood,
            String model,
            String author,
            Path out,
            Optional<Path> replaces,
            Optional<String> id,
            Optional<String> title,
            int points,
            double freewheelVolts) {
        public Order {
            records = List.copyOf(records);
        }
    }

    /**
     * What came of it.
     *
     * @param curve written to the file, awaiting approval
     * @param notes what a person should know before approving
     */
    public record Built(HealthyCurve curve, List<String> notes) {}

    /**
     * Makes a curve and writes it to a new file.
     *
     * @throws OrderException when the order or its records won't do; nothing is written then
     * @throws DataFileException when the declaration or the version before is wrong
     * @throws RunRecordException when a record can't be read
     */
    public Built build(Order order) throws OrderException, DataFileException, RunRecordException {
        if (Files.exists(order.out())) {
            throw new OrderException(
                    "%s is already there. A new version is a new file: choose another name.".formatted(order.out()));
        }
        if (order.author().isBlank()) {
            throw new OrderException("a curve has a named author. Give --author NAME.");
        }
        KnownGoodList list = KnownGoodFile.read(order.knownGood());
        if (!list.model().equals(order.model())) {
            throw new OrderException("%s declares units of model %s, the curve is for %s."
                    .formatted(order.knownGood(), list.model(), order.model()));
        }
        KnownGoodRecords records = KnownGoodRecords.read(order.records(), list);
        Optional<HealthyCurve> before = before(order, records.first().conditions());
        HealthyCurve curve = curve(order, records, list, before);
        write(curve, order.out());
        return new Built(curve, notes(curve, records));
    }

    /**
     * Approves a curve in its file.
     *
     * @param by the person's name; not the author's
     * @throws OrderException when this person may not, or the curve is approved already
     * @throws DataFileException when the file is wrong
     */
    public HealthyCurve approve(Path file, String by) throws OrderException, DataFileException {
        HealthyCurve curve = CurveFile.read(file);
        if (by.isBlank()) {
            throw new OrderException("a curve is approved by a named person. Give --by NAME.");
        }
        if (Names.same(by, curve.author())) {
            throw new OrderException(
                    "%s made %s and can't approve it. Another person must.".formatted(by, curve.label()));
        }
        if (curve.approval().isPresent()) {
            Approval earlier = curve.approval().get();
            throw new OrderException(
                    "%s was approved by %s on %s already.".formatted(curve.label(), earlier.by(), earlier.on()));
        }
        HealthyCurve approved = curve.approved(new Approval(by, LocalDate.now(clock)));
        write(approved, file);
        return approved;
    }

    private static Optional<HealthyCurve> before(Order order, Conditions conditions)
            throws OrderException, DataFileException {
        if (order.replaces().isEmpty()) {
            return Optional.empty();
        }
        HealthyCurve before = CurveFile.read(order.replaces().get());
        List<String> differences = before.conditions().differences(conditions);
        if (!differences.isEmpty()) {
            throw new OrderException("the records can't make a new version of %s: %s."
                    .formatted(before.label(), String.join(", ", differences)));
        }
        return Optional.of(before);
    }

    private HealthyCurve curve(Order order, KnownGoodRecords records, KnownGoodList list, Optional<HealthyCurve> before)
            throws OrderException {
        RunRecord first = records.first();
        CurvePopulation population = population(order, records);
        try {
            return new HealthyCurve(
                    order.id().or(() -> before.map(HealthyCurve::id)).orElse(order.model()),
                    before.map(curve -> curve.version() + 1).orElse(1),
                    order.title()
                            .or(() -> before.map(HealthyCurve::title))
                            .orElse(first.subject().modelTitle()),
                    first.conditions(),
                    first.subject().practice(),
                    population.units(),
                    population.jointFactor(),
                    coverage(population),
                    order.freewheelVolts(),
                    population.points(),
                    order.author(),
                    LocalDate.now(clock).toString(),
                    Interpolation.MONOTONE,
                    Optional.of(new Basis(
                            first.plan(),
                            population.runs(),
                            records.firstDay(),
                            records.lastDay(),
                            list.declaredBy(),
                            population.features(),
                            records.ids())),
                    Optional.empty(),
                    before.map(HealthyCurve::limitSets).orElse(List.<LimitSet>of()));
        } catch (IllegalArgumentException e) {
            throw noCurve(e);
        }
    }

    private static CurvePopulation population(Order order, KnownGoodRecords records) throws OrderException {
        try {
            return CurvePopulation.of(records.runs(order.freewheelVolts()), order.points());
        } catch (IllegalArgumentException e) {
            throw noCurve(e);
        }
    }

    private static OrderException noCurve(IllegalArgumentException e) {
        return new OrderException("no curve was made: " + e.getMessage() + ".");
    }

    private static String coverage(CurvePopulation population) {
        return String.format(
                Locale.ROOT,
                "%.0f %% of healthy units inside the whole band, flow and motor amps at %d points together",
                100 * CurvePopulation.INSIDE,
                population.points().size());
    }

    private static List<String> notes(HealthyCurve curve, KnownGoodRecords records) {
        List<String> notes = new ArrayList<>(records.notes());
        if (curve.fewUnits()) {
            notes.add("provisional: %d units stand behind it, and with fewer than %d it only advises"
                    .formatted(curve.units(), HealthyCurve.LEAST_UNITS));
        }
        notes.add("until another person approves it, it only advises");
        return notes;
    }

    private static void write(HealthyCurve curve, Path file) throws OrderException {
        try {
            CurveFile.write(curve, file);
        } catch (IOException e) {
            throw new OrderException("%s can't be written: %s. Check the folder and its rights.".formatted(file, e));
        } catch (IllegalArgumentException e) {
            throw noCurve(e);
        }
    }
}
