package org.pumpwright.host.calibrate;

import org.pumpwright.host.quantity.Require;

/** What the bucket, vessel or master meter showed for one run. Thread-safe. */
public sealed interface Reading permits Reading.Weights, Reading.Level, Reading.MasterPulses {
    /**
     * Two readings of the scale.
     *
     * @param tareKg of the drained bucket; 0 on a scale set to 0 with it
     * @param grossKg with what was caught; more than the tare
     */
    record Weights(double tareKg, double grossKg) implements Reading {
        public Weights {
            Require.inRange("tare", tareKg, 0, 10_000, "kg");
            Require.inRange("gross", grossKg, tareKg + 1e-6, 20_000, "kg");
        }

        public double netKg() {
            return grossKg - tareKg;
        }
    }

    /** The level read in a graduated vessel, as the volume of its marks, m3. */
    record Level(double m3) implements Reading {
        public Level {
            Require.inRange("volume read", m3, 1e-6, 100, "m3");
        }
    }

    /** Pulses of the master meter over the same time. */
    record MasterPulses(double pulses) implements Reading {
        public MasterPulses {
            Require.inRange("pulses of the master meter", pulses, 1, 1e12, "");
        }
    }
}
