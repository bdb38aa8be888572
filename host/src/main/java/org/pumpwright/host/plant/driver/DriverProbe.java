package org.pumpwright.host.plant.driver;

/** Where the stand's voltmeter touches the module. Thread-safe. */
public enum DriverProbe {
    /** Supply pins, mean over the period. */
    SUPPLY_PINS {
        @Override
        double volts(DriverState s) {
            return s.supplyVolts();
        }
    },
    /** Output pins, while the switch conducts. */
    OUTPUT_PINS {
        @Override
        double volts(DriverState s) {
            return s.outputVolts();
        }
    },
    /** From the module's ground to the battery's minus, while the switch conducts. */
    GROUND_PIN {
        @Override
        double volts(DriverState s) {
            return s.groundLiftVolts();
        }
    },
    /** A peak detector across the switch. */
    PEAK {
        @Override
        double volts(DriverState s) {
            return s.peakVolts();
        }
    };

    abstract double volts(DriverState s);
}
