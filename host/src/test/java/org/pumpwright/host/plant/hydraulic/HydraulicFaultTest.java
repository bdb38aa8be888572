package org.pumpwright.host.plant.hydraulic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.pumpwright.host.plant.Severity;

class HydraulicFaultTest {

    private static final HydraulicParameters DISPLACEMENT = HydraulicParameters.healthy();
    private static final HydraulicParameters CENTRIFUGAL = HydraulicParameters.centrifugal();

    @ParameterizedTest
    @EnumSource(
            mode = EnumSource.Mode.EXCLUDE,
            names = {"HEALTHY", "SEAL_LEAK"})
    void everyFaultChangesTheUnitOrItsStand(HydraulicFault fault) {
        HydraulicParameters before = fault.fits(DISPLACEMENT) ? DISPLACEMENT : CENTRIFUGAL;

        for (Severity severity : Severity.values()) {
            assertThat(fault.applyTo(before, severity)).isNotEqualTo(before);
        }
    }

    @ParameterizedTest
    @EnumSource(
            names = {
                "COIL_HOT",
                "LOW_SUPPLY",
                "CORRODED_PLUG",
                "SPOOL_STICKY",
                "DEAD_BAND_HIGH",
                "MOTOR_WORN",
                "RELIEF_LOW",
                "SLIP",
                "DEAD_CHAMBER",
                "SUCTION_AIR",
                "OIL_SHORT",
                "NOZZLE_PLUGGED"
            })
    void aFurtherSeverityTakesMoreFlowSomewhereAndGivesNoneBack(HydraulicFault fault) {
        double before = 0;
        for (Severity severity : Severity.values()) {
            double lost = lost(fault.applyTo(DISPLACEMENT, severity));
            assertThat(lost).as("%s %s", fault, severity).isGreaterThan(before);
            before = lost;
        }
    }

    @Test
    void aWeakSpringCreepsAtZeroCommandWhenSevere() {
        assertThat(Gallons.up(HydraulicFault.SPRING_WEAK.applyTo(DISPLACEMENT, Severity.SEVERE), 0))
                .isPositive();
        assertThat(Gallons.up(DISPLACEMENT, 0)).isZero();
    }

    @Test
    void aLeakingSealDoesNotShowInAnyReading() {
        assertThat(HydraulicFault.SEAL_LEAK.applyTo(DISPLACEMENT, Severity.SEVERE))
                .isEqualTo(DISPLACEMENT);
    }

    @Test
    void reversedPortsGiveNoFlowOrFlowThatNoCommandControls() {
        HydraulicParameters none = HydraulicFault.PORTS_REVERSED.applyTo(DISPLACEMENT, Severity.MILD);
        HydraulicParameters full = HydraulicFault.PORTS_REVERSED.applyTo(DISPLACEMENT, Severity.SEVERE);

        assertThat(Gallons.up(none, 1)).isZero();
        assertThat(Gallons.up(full, 0)).isEqualTo(Gallons.up(DISPLACEMENT, 1));
    }

    @Test
    void aFaultOfTheOtherKindOfHeadIsRefused() {
        assertThatThrownBy(() -> HydraulicFault.DEAD_CHAMBER.applyTo(CENTRIFUGAL, Severity.MILD))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a centrifugal head has no chambers and no slip");
        assertThatThrownBy(() -> HydraulicFault.IMPELLER_WORN.applyTo(DISPLACEMENT, Severity.MILD))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a positive-displacement head has no impeller");
        assertThat(HydraulicFault.IMPELLER_LOOSE.fits(DISPLACEMENT)).isFalse();
    }

    @Test
    void theWordsAreDistinctAndFitACommandLine() {
        List<String> words =
                Arrays.stream(HydraulicFault.values()).map(HydraulicFault::word).toList();
        Set<String> distinct = new HashSet<>(words);

        assertThat(distinct).hasSameSizeAs(words);
        assertThat(words).allMatch(word -> word.matches("[a-z]+(-[a-z]+)*"));
        assertThat(HydraulicFault.values()).allMatch(fault -> fault.sentence().endsWith("."));
    }

    private static double lost(HydraulicParameters faulty) {
        double lost = 0;
        for (int i = 26; i <= 100; i++) {
            lost += Gallons.up(DISPLACEMENT, i / 100.0) - Gallons.up(faulty, i / 100.0);
        }
        return lost;
    }
}
