package org.pumpwright.host.plant;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class ParameterRangeTest {

    private static final PumpParameters HEALTHY = PumpParameters.healthy();

    @Test
    void aMotorOutOfRangeIsRefusedWithValueLimitAndUnit() {
        assertThatThrownBy(() -> HEALTHY.motor().withWinding(-0.19, 0.039))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("armature resistance -0.190000 ohm is outside 0.00100000 to 1000.00 ohm");
    }

    @Test
    void notANumberIsNoParameter() {
        assertThatThrownBy(() -> HEALTHY.motor().withFriction(Double.NaN, 0.17))
                .hasMessage("running friction NaN N·m is outside 0.00000 to 100.000 N·m");
    }

    @Test
    void aHeadWithoutALiveChamberIsRefused() {
        assertThatThrownBy(() -> HEALTHY.head().withFilling(3, 0, 1))
                .hasMessage("dead chambers 3.00000 is outside 0.00000 to 2.99000");
    }

    @Test
    void aStandWithoutVoltageIsRefused() {
        assertThatThrownBy(() -> HEALTHY.stand().withFeed(0, 0.02))
                .hasMessage("open-circuit voltage 0.00000 V is outside 0.100000 to 1000.00 V");
    }

    @Test
    void aMeterThatWouldStartBelowItsLagIsRefused() {
        assertThatThrownBy(() -> new MeterParameters(1e6, 1e-6, 1e-7, 6, 0.01, 0.01, 1e-5))
                .hasMessage("meter start 1.00000e-07 m3/s is outside 1.00000e-06 to 1.00000 m3/s");
    }

    @Test
    void aWindingWithoutHeatCapacityIsRefused() {
        assertThatThrownBy(() -> new ThermalParameters(0, 0.55, 1900, 0.75))
                .hasMessage("winding heat capacity 0.00000 J/K is outside 1.00000 to 1.00000e+06 J/K");
    }
}
