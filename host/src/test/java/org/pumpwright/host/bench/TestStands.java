package org.pumpwright.host.bench;

import java.time.Duration;
import org.pumpwright.host.plant.Plant;
import org.pumpwright.host.plant.PumpFault;
import org.pumpwright.host.plant.PumpParameters;
import org.pumpwright.host.plant.PumpPlant;
import org.pumpwright.host.plant.SensorErrors;
import org.pumpwright.host.plant.Severity;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.stand.StandFile;
import org.pumpwright.host.stand.serial.SerialPorts;
import org.pumpwright.host.stand.wire.WireStand;
import org.pumpwright.host.stand.wire.WireTiming;

/** Stands and units that many tests use. */
public final class TestStands {
    /** A host that never gives a sign of life of its own accord. */
    public static final WireTiming SILENT = new WireTiming(
            Duration.ofHours(1),
            WireTiming.STANDARD.answer(),
            WireTiming.STANDARD.tries(),
            WireTiming.STANDARD.hello(),
            WireTiming.STANDARD.silence(),
            WireTiming.STANDARD.samplePeriodMillis());

    private TestStands() {}

    public static StandDescription described(String name) {
        try {
            return StandFile.read(Firmware.root().resolve("fixtures/stands/" + name + ".yaml"));
        } catch (org.pumpwright.host.datafile.DataFileException e) {
            throw new AssertionError(e);
        }
    }

    public static Plant pump(PumpFault fault, Severity severity) {
        return new PumpPlant(fault.applyTo(PumpParameters.healthy(), severity), SensorErrors.noiseOnly(), 11);
    }

    public static Plant healthyPump() {
        return pump(PumpFault.HEALTHY, Severity.MODERATE);
    }

    public static WireStand serial(String port, WireTiming timing) {
        return new WireStand(described("serial"), () -> SerialPorts.open(port, 250_000), timing);
    }
}
