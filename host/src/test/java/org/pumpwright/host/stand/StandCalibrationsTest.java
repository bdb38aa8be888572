package org.pumpwright.host.stand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.calibration.Certificate;
import org.pumpwright.host.calibration.MonitorAmps;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.datafile.EditedFile;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.Pressure;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.MeterChannel;

/** The kinds of calibration in a stand's file, and what is said of wrong ones. */
final class StandCalibrationsTest {
    private static final Path SIMULATED = EditedFile.fixture("stands/simulated.yaml");

    private static final String VOLTS = """
                volts_at_zero: 0
                volts_at_full_scale: 20
                gain_uncertainty_percent: 0.1
                offset_uncertainty_volts: 0.010
            """;
    private static final String AMPS = """
                amps_at_zero: 0
                amps_at_full_scale: 40
                gain_uncertainty_percent: 0.5
                offset_uncertainty_amps: 0.03
            """;
    private static final String PRESSURE = """
                psi_at_zero: -18.75
                psi_at_full_scale: 168.75
                gain_uncertainty_percent: 0
                offset_uncertainty_psi: 0.75
            """;
    private static final String WATER = """
                celsius_at_zero: 0
                celsius_at_full_scale: 100
                gain_uncertainty_percent: 0
                offset_uncertainty_celsius: 0.5
            """;
    private static final String THERMISTOR = """
                thermistor:
                  pull_up_ohms: 10000
                  ohms_at_25_celsius: 10000
                  steinhart_hart_a: 0.001129148
                  steinhart_hart_b: 0.000234125
                  steinhart_hart_c: 8.76741e-8
                  least_celsius: -10
                  most_celsius: 60
                  resistance_uncertainty_percent: 0.5
                  offset_uncertainty_celsius: 0.1
                  fit_uncertainty_celsius: 0.02
                  converter_bits: 10
            """;
    private static final String RATIOMETRIC = """
                ratiometric:
                  reference_volts: 5
                  low_volts: 0.5
                  high_volts: 4.5
                  psi_at_low: 0
                  psi_at_high: 150
                  gain_uncertainty_percent: 0.25
                  offset_uncertainty_psi: 0.3
            """;
    private static final String METER = "    pulses_per_us_gallon: 3000\n";
    private static final String CERTIFICATE = """
            least_gpm: 0.2
                certificate: "none: simulated"
            """;

    @TempDir
    private Path folder;

    private Path with(String part, String changed) {
        return new EditedFile(SIMULATED, folder).with(part, changed);
    }

    private AnalogChannel channel(String part, String changed, ChannelRole role) throws DataFileException {
        return StandFile.read(with(part, changed)).channels().required(role);
    }

    @Test
    void aThermistorIsRead() throws DataFileException {
        AnalogChannel water = channel(WATER, THERMISTOR, ChannelRole.WATER_TEMPERATURE);
        assertThat(water.si(32_768)).isCloseTo(298.15, within(0.001));
        double step = 64 * water.calibration().siPerCode(32_768) / Math.sqrt(12);
        double resistance = 0.005 * 298.15 * 298.15 * (0.000234125 + 3 * 8.76741e-8 * Math.pow(Math.log(10_000), 2));
        double whole = Math.sqrt(step * step + resistance * resistance + 0.1 * 0.1 + 0.02 * 0.02);
        assertThat(water.calibrationUncertainty(298.15)).isCloseTo(whole, within(1e-5));
    }

    @Test
    void aRatiometricSensorIsRead() throws DataFileException {
        AnalogChannel pressure = channel(PRESSURE, RATIOMETRIC, ChannelRole.OUTLET_PRESSURE);
        assertThat(new Pressure(pressure.si(32_768)).psi()).isCloseTo(75, within(1e-9));
        assertThat(pressure.calibration().trouble(0.04 * 65_536)).isPresent();
        assertThat(pressure.calibration().trouble(0.06 * 65_536)).isEmpty();
        double u = pressure.calibrationUncertainty(Pressure.ofPsi(120).pascals());
        assertThat(new Pressure(u).psi()).isCloseTo(Math.hypot(0.3, 0.3), within(1e-9));
    }

    @Test
    void theBandOfASoundSensorMayBeGiven() throws DataFileException {
        String given = RATIOMETRIC + "      fault_below_volts: 0.4\n      fault_above_volts: 4.6\n";
        AnalogChannel pressure = channel(PRESSURE, given, ChannelRole.OUTLET_PRESSURE);
        assertThat(pressure.calibration().sound().least()).isCloseTo(0.08 * 65_536, within(1e-6));
        assertThat(pressure.calibration().sound().most()).isCloseTo(0.92 * 65_536, within(1e-6));
        AnalogChannel volts = channel(
                VOLTS, VOLTS + "    fault_below_percent: 2\n    converter_bits: 10\n", ChannelRole.VOLTS_AT_PINS);
        assertThat(volts.calibration().trouble(0.01 * 65_536)).isPresent();
        assertThat(volts.calibrationUncertainty(0))
                .isCloseTo(Math.hypot(0.01, 20 / 1024.0 / Math.sqrt(12)), within(1e-9));
    }

    @Test
    void aPolynomialIsRead() throws DataFileException {
        String polynomial = """
                    polynomial:
                      unit: psi
                      coefficients: [-10, 150, 20]
                      least_percent: 5
                      gain_uncertainty_percent: 0
                      offset_uncertainty: 0.3
                      fit_uncertainty: 0.4
                """;
        AnalogChannel pressure = channel(PRESSURE, polynomial, ChannelRole.OUTLET_PRESSURE);
        assertThat(new Pressure(pressure.si(32_768)).psi()).isCloseTo(70, within(1e-9));
        assertThat(new Pressure(pressure.calibrationUncertainty(0)).psi()).isCloseTo(0.5, within(1e-9));
        AnalogChannel water = channel(
                WATER,
                polynomial.replace("psi", "celsius").replace("-10, 150, 20", "0, 100"),
                ChannelRole.WATER_TEMPERATURE);
        assertThat(water.si(32_768)).isCloseTo(323.15, within(1e-9));
    }

    @Test
    void aMonitorChipIsRead() throws DataFileException {
        String bus = "    bus_monitor: { gain_uncertainty_percent: 0.1, offset_uncertainty_volts: 0.005 }\n";
        assertThat(channel(VOLTS, bus, ChannelRole.VOLTS_AT_PINS).si(9584)).isCloseTo(11.98, within(1e-9));
        String shunt =
                "    shunt_monitor: { shunt_ohms: 0.002, current_step_amps: 0.001, gain_uncertainty_percent: 0.2,"
                        + " offset_uncertainty_amps: 0.01 }\n";
        AnalogChannel amps = channel(AMPS, shunt, ChannelRole.SUPPLY_AMPS);
        assertThat(amps.si(10_000)).isCloseTo(10, within(1e-9));
        assertThat(((MonitorAmps) amps.calibration()).calibrationRegister()).isEqualTo(2560);
    }

    @Test
    void aMeterMayHaveATableOfK() throws DataFileException {
        String table = "    k_table:\n"
                + "      - { gpm: 0.5, pulses_per_us_gallon: 2900 }\n"
                + "      - { gpm: 2, pulses_per_us_gallon: 3000 }\n";
        MeterChannel meter = StandFile.read(with(METER, table)).channels().flowMeter();
        assertThat(meter.flow(50).gallonsPerMinute()).isCloseTo(1.02221, within(1e-5));
        assertThat(meter.k().at(FlowRate.ofGallonsPerMinute(1.25)).pulsesPerUsGallon())
                .isCloseTo(2950, within(1e-9));
        assertThat(meter.flow(200).gallonsPerMinute()).isCloseTo(4, within(1e-9));
    }

    @Test
    void theDaysOfACalibrationAreRead() throws DataFileException {
        String days = CERTIFICATE + "    calibrated: 2026-01-31\n    due: \"2026-12-31\"\n";
        Certificate read =
                StandFile.read(with(CERTIFICATE, days)).channels().flowMeter().certificate();
        assertThat(read)
                .isEqualTo(new Certificate(
                        "none: simulated",
                        Optional.of(LocalDate.of(2026, 1, 31)),
                        Optional.of(LocalDate.of(2026, 12, 31))));
    }

    @Test
    void daysThatCannotBeAreRefused() {
        assertRefused(
                with(CERTIFICATE, CERTIFICATE + "    calibrated: 2026-02-30\n"),
                ":13: meters[0].calibrated is \"2026-02-30\", which is no day of the calendar");
        assertRefused(
                with(CERTIFICATE, CERTIFICATE + "    calibrated: 31.1.2026\n"),
                ":13: meters[0].calibrated is \"31.1.2026\", allowed is a day such as 2026-01-31");
        assertRefused(
                with(CERTIFICATE, CERTIFICATE + "    due: 2026-12-31\n"),
                ":13: meters[0].due needs the key calibrated: what was not calibrated cannot be due");
        assertRefused(
                with(CERTIFICATE, CERTIFICATE + "    calibrated: 2026-12-31\n    due: 2026-01-31\n"),
                ":14: meters[0].due is \"2026-01-31\", which is before calibrated, 2026-12-31");
    }

    @Test
    void aMeterWithoutOrWithTwoKindsOfKIsRefused() {
        assertRefused(
                with(METER, ""),
                ":8: meters[0].pulses_per_us_gallon is missing, add it: allowed is 1 to 1000000 (pulses/gal)");
        String table =
                "    k_table: [{ gpm: 1, pulses_per_us_gallon: 2900 }, { gpm: 2, pulses_per_us_gallon: 3000 }]\n";
        assertRefused(
                with(METER, METER + table),
                ":10: meters[0].k_table stands beside pulses_per_us_gallon: keep one of the two");
        assertRefused(
                with(METER, table.replace("2900", "9000")),
                ":9: meters[0].k_table cannot be used: K falls so fast from 1.000 to 2.000 gal/min that more flow would give"
                        + " fewer pulses");
        assertRefused(
                with(METER, table.replace("gpm: 2, pulses_per_us_gallon: 3000", "gpm: 2")),
                ":9: meters[0].k_table[1].pulses_per_us_gallon is missing, add it: allowed is 1 to 1000000 (pulses/gal)");
    }

    @Test
    void coefficientsOfAnotherThermistorAreRefused() {
        String hobby = THERMISTOR
                .replace("0.001129148", "0.001009249522")
                .replace("0.000234125", "0.0002378405444")
                .replace("8.76741e-8", "2.019202697e-7");
        assertRefused(
                with(WATER, hobby),
                ":55: analogs[3].thermistor.ohms_at_25_celsius is 10000, where the curve gives 24.68 °C, not 25: the coefficients"
                        + " belong to another part");
    }

    @Test
    void aCalibrationThatCannotBeIsRefusedAtItsGroup() {
        assertRefused(
                with(WATER, THERMISTOR.replace("most_celsius: 60", "most_celsius: -20")),
                ":60: analogs[3].thermistor.most_celsius is -20, it must be above least_celsius, -10");
        assertRefused(
                with(PRESSURE, RATIOMETRIC.replace("high_volts: 4.5", "high_volts: 5.5")),
                ":49: analogs[2].ratiometric.high_volts is 5.5, above reference_volts, 5");
        assertRefused(
                with(
                        AMPS,
                        "    shunt_monitor: { shunt_ohms: 0.0001, current_step_amps: 0.0005, gain_uncertainty_percent: 0.2,"
                                + " offset_uncertainty_amps: 0.01 }\n"),
                ":37: analogs[1].shunt_monitor cannot be used: the calibration register would be 102400 for steps of 5.0E-4 A"
                        + " over 1.0E-4 ohm, allowed are 1 to 32767");
    }

    @Test
    void rangesTheWrongWayRoundAreRefused() {
        assertRefused(
                with(PRESSURE, RATIOMETRIC.replace("low_volts: 0.5", "low_volts: 4.6")),
                ":49: analogs[2].ratiometric.high_volts is 4.5, it must be above low_volts, 4.6");
        assertRefused(
                with(VOLTS, VOLTS + "    fault_below_percent: 50\n    fault_above_percent: 40\n"),
                ":35: analogs[0].fault_above_percent is 40, it must be above fault_below_percent, 50");
        assertRefused(
                with(PRESSURE, RATIOMETRIC + "      fault_below_volts: 0.6\n"),
                ":46: analogs[2].ratiometric cannot be used: the sensor works from 0.1 to 0.9 of the supply, but is taken for"
                        + " broken outside 0.12 to 0.95");
    }

    @Test
    void aKindForAnotherRoleIsRefused() {
        assertRefused(
                with(PRESSURE, THERMISTOR),
                ":44: analogs[2].offset_uncertainty_psi is missing, add it: allowed is 0 to 20000 (psi)");
    }

    @Test
    void twoKindsInOneChannelAreRefused() {
        assertRefused(
                with(WATER, WATER + THERMISTOR),
                ":53: analogs[3].celsius_at_zero belongs to a straight line, but the channel has thermistor: keep one of the two");
    }

    @Test
    void aWrongKeyInAGroupIsToldWithItsNeighbour() {
        assertRefused(
                with(PRESSURE, RATIOMETRIC.replace("low_volts", "lo_volts")),
                ":46: analogs[2].ratiometric.low_volts is missing, add it: allowed is 0 to 30 (V)");
    }

    private static void assertRefused(Path file, String problem) {
        assertThatThrownBy(() -> StandFile.read(file))
                .isInstanceOf(DataFileException.class)
                .hasMessageContaining(file + problem);
    }
}
