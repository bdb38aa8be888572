package org.pumpwright.host.app;

import java.util.List;
import java.util.Locale;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.plant.Fault;
import org.pumpwright.host.plant.FaultMix;
import org.pumpwright.host.plant.Plant;
import org.pumpwright.host.plant.PumpFault;
import org.pumpwright.host.plant.PumpParameters;
import org.pumpwright.host.plant.PumpPlant;
import org.pumpwright.host.plant.PumpPopulation;
import org.pumpwright.host.plant.SensorErrors;
import org.pumpwright.host.plant.Severity;
import org.pumpwright.host.plant.driver.DriverFault;
import org.pumpwright.host.plant.driver.DriverPlant;
import org.pumpwright.host.plant.driver.DriverPopulation;
import org.pumpwright.host.plant.driver.DriverStand;
import org.pumpwright.host.plant.driver.DummyLoad;
import org.pumpwright.host.plant.harness.HarnessFault;
import org.pumpwright.host.plant.harness.HarnessPlant;
import org.pumpwright.host.plant.harness.HarnessPopulation;
import org.pumpwright.host.plant.hydraulic.HydraulicFault;
import org.pumpwright.host.plant.hydraulic.HydraulicPlant;
import org.pumpwright.host.plant.hydraulic.HydraulicPopulation;
import org.pumpwright.host.plant.meter.MeterBench;
import org.pumpwright.host.plant.meter.MeterFault;
import org.pumpwright.host.plant.meter.MeterLoop;
import org.pumpwright.host.plant.meter.MeterPlant;
import org.pumpwright.host.plant.meter.MeterPopulation;
import org.pumpwright.host.plant.meter.ReturnedMeter;

/**
 * A simulated unit on the simulated stand. The same seed is the same unit. Thread-safe.
 *
 * @param kind what it is
 * @param fault what is wrong with it, or with the stand around it; belongs to the kind
 * @param severity how much
 * @param seed which of the healthy population it was before
 */
public record PracticeUnit(UnitKind kind, Fault fault, Severity severity, long seed) {
    /** The simulated stand's sensors are always the same ones; only the units change. */
    private static final long STAND_SEED = 1;

    /** A 12 V pump. */
    public PracticeUnit(PumpFault fault, Severity severity, long seed) {
        this(UnitKind.PUMP_12V, fault, severity, seed);
    }

    /** A healthy unit. */
    public static PracticeUnit healthy(UnitKind kind, long seed) {
        return new PracticeUnit(kind, faults(kind).get(0), Severity.MODERATE, seed);
    }

    /** Everything that can be wrong with a unit of this kind or the stand around it; first, nothing. */
    public static List<Fault> faults(UnitKind kind) {
        return switch (kind) {
            case PUMP_12V -> List.of(PumpFault.values());
            case HYDRAULIC_PUMP -> List.of(HydraulicFault.values());
            case DRIVER -> List.of(DriverFault.values());
            case METER -> List.of(MeterFault.values());
            case HARNESS -> List.of(HarnessFault.values());
        };
    }

    /**
     * The fault of this kind of unit that has this word; for a 12 V pump also several at once, such as
     * {@code slip:severe+low-supply}.
     *
     * @throws OrderException naming the words that are known
     */
    public static Fault fault(UnitKind kind, String word) throws OrderException {
        for (Fault fault : faults(kind)) {
            if (fault.word().equalsIgnoreCase(word)) {
                return fault;
            }
        }
        if (kind == UnitKind.PUMP_12V && (word.contains("+") || word.contains(":"))) {
            try {
                return FaultMix.parse(word.toLowerCase(Locale.ROOT));
            } catch (IllegalArgumentException e) {
                throw new OrderException("--fault '%s': %s".formatted(word, e.getMessage()));
            }
        }
        throw new OrderException("there is no fault '%s' of a %s. Known are: %s."
                .formatted(
                        word,
                        kind.words(),
                        String.join(", ", faults(kind).stream().map(Fault::word).toList())));
    }

    /** The unit, connected to the simulated stand's hoses, wires and sensors. */
    public Plant plant() {
        SensorErrors sensors = SensorErrors.drawn(STAND_SEED);
        return switch (kind) {
            case PUMP_12V -> new PumpPlant(pump(), sensors, seed);
            case HYDRAULIC_PUMP ->
                new HydraulicPlant(
                        ((HydraulicFault) fault).applyTo(new HydraulicPopulation(seed).unit(0), severity),
                        sensors,
                        seed);
            case DRIVER ->
                new DriverPlant(
                        ((DriverFault) fault).applyTo(new DriverPopulation(seed).unit(0), severity),
                        DriverStand.with(DummyLoad.resistor()),
                        sensors,
                        seed);
            case METER -> meter(sensors);
            case HARNESS ->
                new HarnessPlant(
                        ((HarnessFault) fault).applyTo(new HarnessPopulation(seed).unit(0), severity), sensors, seed);
        };
    }

    private PumpParameters pump() {
        PumpParameters before = new PumpPopulation(seed).unit(0);
        return fault instanceof FaultMix mix ? mix.applyTo(before) : ((PumpFault) fault).applyTo(before, severity);
    }

    private Plant meter(SensorErrors sensors) {
        ReturnedMeter before = new MeterPopulation(ReturnedMeter.small(), seed).unit(0);
        MeterBench bench = ((MeterFault) fault).applyTo(new MeterBench(before, MeterLoop.small()), severity);
        return new MeterPlant(bench.unit(), bench.loop(), sensors, seed);
    }

    /** What is wrong with it, in plain words. */
    public String words() {
        return fault.equals(faults(kind).get(0)) || fault instanceof FaultMix
                ? fault.sentence()
                : severity.name().toLowerCase(Locale.ROOT) + ": " + fault.sentence();
    }
}
