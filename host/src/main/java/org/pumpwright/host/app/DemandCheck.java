package org.pumpwright.host.app;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.pumpwright.host.catalog.Fluid;
import org.pumpwright.host.catalog.FluidFile;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.demand.Margin;
import org.pumpwright.host.demand.Planter;
import org.pumpwright.host.demand.ProductFactor;
import org.pumpwright.host.grade.Feature;
import org.pumpwright.host.grade.FeatureJudgement;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.Temperature;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.record.RunRecordException;
import org.pumpwright.host.record.RunRecordFile;

/** Holds what a planter needs against what a unit gives. Thread-safe. */
public final class DemandCheck {
    private static final String RECORD = "record.json";
    private static final String FOLDER = "fluids";

    private final Path fluids;
    private final Shelf shelf;

    /** @param data the folder that holds {@code fluids} */
    public DemandCheck(Path data) {
        fluids = data.resolve(FOLDER);
        shelf = new Shelf(data);
    }

    /**
     * What the planter is to put out.
     *
     * @param factor of its density
     * @param words what it is and where its density comes from
     * @param published how far published densities of it are apart, as a share; 0 where the own product was weighed
     */
    public record Product(ProductFactor factor, String words, double published) {}

    /**
     * What there is.
     *
     * @param flow m3/s of water
     * @param words where it was found
     */
    public record Available(Uncertain flow, String words) {}

    /**
     * What came of it.
     *
     * @param planter what is to be done
     * @param product of which product
     * @param nozzles whether nozzles or orifices meter, so that the density counts
     * @param asWater what the whole demand asks of pump and meter run, as water
     * @param margin against what there is; empty where nothing was named
     * @param available what there is
     */
    public record Result(
            Planter planter,
            Product product,
            boolean nozzles,
            FlowRate asWater,
            Optional<Margin> margin,
            Optional<Available> available) {
        /** The fastest speed at which what there is still gives the rate, without any spare; empty as {@link #margin}. */
        public Optional<Double> fastestMetresPerSecond() {
            return available
                    .filter(there -> there.flow().value() > 0)
                    .map(there ->
                            planter.speed().metresPerSecond() * there.flow().value() / asWater.m3PerSecond());
        }
    }

    /** Compares. */
    public static Result check(
            Planter planter, Product product, boolean nozzles, Optional<Available> available, double spare) {
        FlowRate asWater = nozzles ? product.factor().asWater(planter.whole()) : planter.whole();
        return new Result(
                planter,
                product,
                nozzles,
                asWater,
                available.map(there -> new Margin(asWater, there.flow(), spare)),
                available);
    }

    /**
     * A product of the shelf, or one that was weighed.
     *
     * @param name of a file in {@code fluids}
     * @param weighed its own density, pounds per US gallon; empty for the published one
     * @param at its temperature
     */
    public Product product(String name, Optional<Double> weighed, Optional<Temperature> at)
            throws OrderException, DataFileException {
        if (weighed.isPresent()) {
            ProductFactor factor = ProductFactor.ofPoundsPerUsGallon(weighed.get());
            return new Product(factor, "%s, as you weighed it".formatted(name), 0);
        }
        Path file = fluids.resolve(name + ".yaml");
        if (!Files.isRegularFile(file)) {
            throw new OrderException(
                    "there is no product '%s'. Known are: %s. For another, weigh a gallon of it and give --density-lb-gal."
                            .formatted(name, String.join(", ", shelf.names(FOLDER))));
        }
        Fluid fluid = FluidFile.read(file);
        Fluid.Published figure = fluid.density(at);
        String temperature =
                figure.at().map(t -> " at " + t.print(UnitSystem.US)).orElse("");
        return new Product(
                new ProductFactor(figure.kilogramsPerM3()),
                "%s%s (%s)".formatted(fluid.title(), temperature, figure.source()),
                fluid.spread());
    }

    /**
     * The flow of a stored run at its highest judged duty.
     *
     * @param path a record, or the folder it lies in
     * @throws OrderException when the run says nothing of the unit's flow
     * @throws RunRecordException when the record can't be read
     */
    public static Available ofRecord(Path path) throws OrderException, RunRecordException {
        Path file = Files.isDirectory(path) ? path.resolve(RECORD) : path;
        RunRecord record = RunRecordFile.read(file);
        List<FeatureJudgement> flows = record.grade().features().stream()
                .filter(feature -> feature.judged() && feature.feature().quantity() == Feature.Kind.FLOW)
                .toList();
        Verdict verdict = record.grade().verdict();
        if (verdict == Verdict.INVALID || verdict == Verdict.NOT_TESTED || flows.isEmpty()) {
            throw new OrderException(
                    "%s: this run (%s) has no judged flow. Give the record of a run with a judged sweep, or --available-gpm."
                            .formatted(file, verdict.name().replace('_', ' ')));
        }
        FeatureJudgement highest = flows.stream()
                .max(Comparator.comparingDouble(flow -> flow.feature().duty().fraction()))
                .orElseThrow();
        return new Available(
                highest.measured(),
                String.format(
                        Locale.ROOT,
                        "run %s, %s, serial %s: %s, %.2f V at the motor",
                        record.id(),
                        verdict.name().replace('_', ' '),
                        record.subject().serial(),
                        highest.feature().words(),
                        highest.volts()));
    }
}
