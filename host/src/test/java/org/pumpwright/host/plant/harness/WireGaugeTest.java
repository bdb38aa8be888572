package org.pumpwright.host.plant.harness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.pumpwright.host.plant.UsUnits;

class WireGaugeTest {

    private static final double ROOM = UsUnits.ZERO_CELSIUS_KELVIN + 20;
    private static final double METRES_PER_1000_FEET = 304.8;

    /** Annealed copper has 0.017241 ohm mm2/m (IEC 60028, from memory); the published table follows from it. */
    @ParameterizedTest
    @EnumSource
    void thePublishedResistanceFollowsFromDiameterAndCopper(WireGauge gauge) {
        double radius = gauge.diameterMetre() / 2;

        assertThat(gauge.ohmsPerMetre(ROOM))
                .isCloseTo(0.017241e-6 / (Math.PI * radius * radius), within(0.0005 * gauge.ohmsPerMetre(ROOM)));
    }

    /** NFPA 70 chapter 9 table 8, solid uncoated copper at 75 °C, as read in a secondary copy. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "AWG18, 7.77, 0.01",
        "AWG16, 4.89, 0.01",
        "AWG14, 3.07, 0.005",
        "AWG12, 1.93, 0.005",
        "AWG10, 1.21, 0.006",
        "AWG8, 0.764, 0.0006"
    })
    void atSeventyFiveDegreesItIsTheElectricalCodesTable(WireGauge gauge, double published, double rounding) {
        double kelvin = UsUnits.ZERO_CELSIUS_KELVIN + 75;

        assertThat(gauge.ohmsPerMetre(kelvin) * METRES_PER_1000_FEET).isCloseTo(published, within(rounding));
    }

    /** A stored page works 12 AWG, 50 ft one way, 10 A from 12 V: 1.588 V, 13.23 %, 10.412 V at the load. */
    @Test
    void aPublishedVoltageDropComesOut() {
        WireRun out = new WireRun("out", WireGauge.AWG12, 50 * 0.3048, ROOM);
        WireRun back = new WireRun("back", WireGauge.AWG12, 50 * 0.3048, ROOM);
        HarnessParameters wires =
                new HarnessParameters(12, 0, List.of(out), List.of(back), 100, Double.POSITIVE_INFINITY, 0, 0);

        HarnessState state = HarnessState.ofOhms(wires, 10.412 / 10);

        assertThat(state.amps()).isCloseTo(10, within(0.0005));
        double load = state.voltsAtPoints().get(1) - state.voltsAtPoints().get(2);
        assertThat(load).isCloseTo(10.412, within(0.0005));
        assertThat(12 - load).isCloseTo(1.588, within(0.0005));
        assertThat(100 * (12 - load) / 12).isCloseTo(13.23, within(0.005));
    }

    /** Thirty feet of 14 AWG out and back are the 0.15 ohm of the pump model's lead fault. */
    @Test
    void thirtyFeetOfFourteenOutAndBackAreFifteenHundredthsOfAnOhm() {
        assertThat(2 * 30 * 0.3048 * WireGauge.AWG14.ohmsPerMetre(ROOM)).isCloseTo(0.15, within(0.002));
    }

    @Test
    void aThinnerGaugeIsFurtherUpTheListAndTheThinnestStays() {
        assertThat(WireGauge.AWG6.thinnerBy(2)).isEqualTo(WireGauge.AWG10);
        assertThat(WireGauge.AWG18.thinnerBy(5)).isEqualTo(WireGauge.AWG20);
        assertThat(WireGauge.AWG6.number()).isEqualTo(6);
    }
}
