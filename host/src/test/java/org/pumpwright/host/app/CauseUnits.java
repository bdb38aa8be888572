package org.pumpwright.host.app;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.Set;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.plant.Fault;
import org.pumpwright.host.plant.Plant;
import org.pumpwright.host.plant.PumpFault;
import org.pumpwright.host.plant.PumpPlant;
import org.pumpwright.host.plant.PumpPopulation;
import org.pumpwright.host.plant.SensorErrors;
import org.pumpwright.host.plant.Severity;
import org.pumpwright.host.plant.driver.DriverFault;
import org.pumpwright.host.plant.driver.DriverParameters;
import org.pumpwright.host.plant.driver.DriverPlant;
import org.pumpwright.host.plant.driver.DriverPopulation;
import org.pumpwright.host.plant.driver.DriverStand;
import org.pumpwright.host.plant.driver.DummyLoad;
import org.pumpwright.host.plant.harness.HarnessFault;
import org.pumpwright.host.plant.harness.HarnessParameters;
import org.pumpwright.host.plant.harness.HarnessPlant;
import org.pumpwright.host.plant.harness.HarnessPopulation;
import org.pumpwright.host.plant.hydraulic.HydraulicFault;
import org.pumpwright.host.plant.hydraulic.HydraulicParameters;
import org.pumpwright.host.plant.hydraulic.HydraulicPlant;
import org.pumpwright.host.plant.hydraulic.HydraulicPopulation;
import org.pumpwright.host.plant.meter.MeterBench;
import org.pumpwright.host.plant.meter.MeterFault;
import org.pumpwright.host.plant.meter.MeterLoop;
import org.pumpwright.host.plant.meter.MeterPlant;
import org.pumpwright.host.plant.meter.MeterPopulation;
import org.pumpwright.host.plant.meter.ReturnedMeter;

/**
 * Simulated units of any kind with a fault of any degree. A degree runs from 0, mild, over 2, moderate, to 4, severe; the
 * odd ones have each parameter half way, in proportion, between those of their neighbours.
 */
final class CauseUnits {
    static final int DEGREES = 5;

    /** Faults that no reading of a run can show, that are another under a second name, or that leave nothing to read. */
    private static final Set<Fault> NOT_READ = Set.of(
            PumpFault.TORN_DIAPHRAGM,
            PumpFault.POLARITY,
            PumpFault.SEIZED,
            PumpFault.THERMAL_PROTECTOR,
            HydraulicFault.SEAL_LEAK,
            HydraulicFault.IMPELLER_LOOSE,
            HydraulicFault.IMPELLER_WORN,
            DriverFault.SENSE_OFFSET,
            HarnessFault.LEAKAGE,
            MeterFault.DIRTY_ELECTRODES,
            MeterFault.GROUND_LOOP);

    private static final Set<Fault> ALIKE = Set.of(
            PumpFault.OPEN_CIRCUIT,
            HydraulicFault.COIL_OPEN,
            HydraulicFault.SPOOL_SEIZED,
            HydraulicFault.COUPLING_SHEARED,
            HydraulicFault.OIL_OFF,
            DriverFault.STUCK_ON,
            DriverFault.OUTPUT_OPEN,
            DriverFault.FREEWHEEL_OPEN,
            DriverFault.COMMAND_DEAD,
            MeterFault.NO_PULSES);

    private final UnitKind kind;
    private final long seed;

    CauseUnits(UnitKind kind, long seed) {
        this.kind = kind;
        this.seed = seed;
    }

    /** The faults of a kind that a run can show, without healthy. */
    static List<Fault> faults(UnitKind kind) {
        return PracticeUnit.faults(kind).stream()
                .skip(1)
                .filter(fault -> !NOT_READ.contains(fault))
                .toList();
    }

    /** The degrees that a fault has. */
    static List<Integer> degrees(Fault fault) {
        return ALIKE.contains(fault) ? List.of(2) : List.of(0, 1, 2, 3, 4);
    }

    /** A unit of the population with a fault, on a stand with drawn sensor errors. */
    Plant plant(Fault fault, int degree, int number) {
        long run = seed * 1_000_003 + number * 7_919L + fault.word().hashCode() * 31L + degree;
        SensorErrors sensors = ofSamples(SensorErrors.drawn(run));
        return switch (kind) {
            case PUMP_12V -> {
                var unit = new PumpPopulation(seed).unit(number);
                yield new PumpPlant(degree(s -> ((PumpFault) fault).applyTo(unit, s), degree), sensors, run);
            }
            case HYDRAULIC_PUMP -> {
                HydraulicParameters unit = new HydraulicPopulation(seed).unit(number);
                yield new HydraulicPlant(degree(s -> ((HydraulicFault) fault).applyTo(unit, s), degree), sensors, run);
            }
            case DRIVER -> {
                DriverParameters unit = new DriverPopulation(seed).unit(number);
                yield new DriverPlant(
                        degree(s -> ((DriverFault) fault).applyTo(unit, s), degree),
                        DriverStand.with(DummyLoad.resistor()),
                        sensors,
                        run);
            }
            case METER -> {
                MeterBench unit = new MeterBench(
                        new MeterPopulation(ReturnedMeter.small(), seed).unit(number), MeterLoop.small());
                MeterBench bench = degree(s -> ((MeterFault) fault).applyTo(unit, s), degree);
                yield new MeterPlant(bench.unit(), bench.loop(), sensors, run);
            }
            case HARNESS -> {
                HarnessParameters unit = new HarnessPopulation(seed).unit(number);
                yield new HarnessPlant(degree(s -> ((HarnessFault) fault).applyTo(unit, s), degree), sensors, run);
            }
        };
    }

    /** A board takes a reading a millisecond: the mean of a sample has that much less noise. */
    private static SensorErrors ofSamples(SensorErrors e) {
        double less = 1 / Math.sqrt(CoarseStand.SAMPLE_SECONDS / 0.001);
        return new SensorErrors(
                e.meterRelative(),
                e.ampsRelative(),
                e.ampsOffset(),
                e.voltsRelative(),
                e.voltsOffset(),
                e.pressureRelative(),
                e.pressureOffsetPascal(),
                e.temperatureOffsetKelvin(),
                e.ampsNoise() * less,
                e.voltsNoise() * less,
                e.pressureNoisePascal() * less,
                e.temperatureNoiseKelvin() * less);
    }

    private interface Applied<T> {
        T at(Severity severity);
    }

    @SuppressWarnings("unchecked")
    private static <T> T degree(Applied<T> applied, int degree) {
        Severity lower = Severity.values()[degree / 2];
        if (degree % 2 == 0) {
            return applied.at(lower);
        }
        return (T) halfWay(applied.at(lower), applied.at(Severity.values()[degree / 2 + 1]));
    }

    private static Object halfWay(Object a, Object b) {
        if (a.equals(b)) {
            return a;
        }
        if (a instanceof Double x && b instanceof Double y) {
            return halfWay(x.doubleValue(), y.doubleValue());
        }
        if (a instanceof List<?> x && b instanceof List<?> y && x.size() == y.size()) {
            return java.util.stream.IntStream.range(0, x.size())
                    .mapToObj(i -> halfWay(x.get(i), y.get(i)))
                    .toList();
        }
        return a instanceof Record && a.getClass() == b.getClass() ? halfWayRecord(a, b) : a;
    }

    private static Object halfWayRecord(Object a, Object b) {
        RecordComponent[] components = a.getClass().getRecordComponents();
        Object[] values = new Object[components.length];
        Class<?>[] types = new Class<?>[components.length];
        try {
            for (int i = 0; i < components.length; i++) {
                components[i].getAccessor().setAccessible(true);
                types[i] = components[i].getType();
                values[i] = halfWay(
                        components[i].getAccessor().invoke(a),
                        components[i].getAccessor().invoke(b));
            }
            Constructor<?> constructor = a.getClass().getDeclaredConstructor(types);
            constructor.setAccessible(true);
            return constructor.newInstance(values);
        } catch (IllegalAccessException | InstantiationException | NoSuchMethodException e) {
            throw new IllegalStateException(e);
        } catch (InvocationTargetException e) {
            throw new IllegalStateException(e.getCause());
        }
    }

    private static double halfWay(double a, double b) {
        if (Double.isInfinite(a) || Double.isInfinite(b)) {
            return Double.isInfinite(a) ? 4 * b : 4 * a;
        }
        return a * b > 0 ? Math.copySign(Math.sqrt(a * b), a) : (a + b) / 2;
    }
}
