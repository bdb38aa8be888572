package org.pumpwright.host.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FaultMixTest {

    private static final PumpParameters HEALTHY = PumpParameters.healthy();

    @ParameterizedTest
    @ValueSource(
            strings = {
                "slip:severe+low-supply:moderate",
                "dead-chamber:moderate+nozzle-worn:mild",
                "drag:mild+warm:severe+hoses-unpurged:moderate",
                "brush:moderate+intermittent-open:severe"
            })
    void aMixIsReadAndWrittenInTheSameWordsAndRuns(String words) {
        FaultMix mix = FaultMix.parse(words);
        PlantReading r = Bench.of(mix.applyTo(HEALTHY)).hold(0.8, 5);

        assertThat(mix).hasToString(words);
        assertThat(r.amps()).isBetween(0.0, 35.0);
    }

    @Test
    void wornValvesAndALowSupplyTogetherLoseMoreThanEither() {
        double both = flow(FaultMix.parse("slip:severe+low-supply:moderate"));
        double worn = flow(FaultMix.of(PumpFault.SLIP, Severity.SEVERE));
        double low = flow(FaultMix.of(PumpFault.LOW_SUPPLY, Severity.MODERATE));

        double healthy = Bench.gpm(PumpSteadyState.of(HEALTHY, 0.5));
        assertThat(both).isLessThan(Math.min(worn, low));
        assertThat(both / healthy)
                .as("losses of about the product")
                .isCloseTo(worn * low / healthy / healthy, within(0.03));
    }

    @Test
    void aFaultWithoutSeverityIsModerate() {
        assertThat(FaultMix.parse("drag").parts())
                .isEqualTo(List.of(new FaultMix.Part(PumpFault.DRAG, Severity.MODERATE)));
    }

    @Test
    void aMixTellsAllThatIsWrong() {
        assertThat(FaultMix.parse("drag+warm").sentence())
                .isEqualTo("Bearing or eccentric turns hard. The unit is in good order and comes warm.");
    }

    @Test
    void unknownWordsAndRepeatedFaultsAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FaultMix.parse("slip+rust"))
                .withMessage("there is no fault 'rust'");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FaultMix.parse("slip:awful"))
                .withMessage("there is no severity 'awful': mild, moderate and severe are known");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FaultMix.parse("slip:mild+slip:severe"))
                .withMessage("a fault may be given only once");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new FaultMix(List.of()))
                .withMessage("a mix needs at least one fault");
    }

    private static double flow(FaultMix mix) {
        return Bench.gpm(PumpSteadyState.of(mix.applyTo(HEALTHY), 0.5));
    }
}
