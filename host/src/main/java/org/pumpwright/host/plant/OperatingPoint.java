package org.pumpwright.host.plant;

/** Speed, flow out of the head and motor current at one moment. Thread-safe. */
record OperatingPoint(double speedRadPerSecond, double flowM3PerSecond, MotorCurrent current) {

    double motorAmps() {
        return current.motorAmps();
    }
}
