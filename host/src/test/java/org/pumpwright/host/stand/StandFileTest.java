package org.pumpwright.host.stand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.pumpwright.host.calibration.Certificate;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.datafile.EditedFile;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.Pressure;
import org.pumpwright.host.stand.StandDescription.Connection;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.MeterChannel;

class StandFileTest {
    private static final Path SIMULATED = EditedFile.fixture("stands/simulated.yaml");
    private static final Path BENCH = EditedFile.fixture("stands/serial.yaml");
    private static final int FULL_SCALE = 65_536;

    @TempDir
    private Path folder;

    @Test
    void theSimulatedStandIsRead() throws DataFileException {
        StandDescription stand = StandFile.read(SIMULATED);
        assertThat(stand.id()).isEqualTo("simulated");
        assertThat(stand.title()).isEqualTo("Simulated stand (no hardware)");
        assertThat(stand.connection()).isEqualTo(new Connection.Simulated());
        assertThat(stand.driver()).isEqualTo("shop-7k8");
        assertThat(stand.nozzle().id()).isEqualTo("n-0.60");
        assertThat(stand.nozzleBehind(0)).isEqualTo(stand.nozzle());
        assertThat(stand.fluid()).isEqualTo("water");
        assertThat(stand.supplyVolts()).isEqualTo(13.8);
        assertThat(stand.channels().meters())
                .extracting(MeterChannel::certificate)
                .containsOnly(Certificate.undated("none: simulated"));
        assertThat(stand.channels().analogs())
                .extracting(AnalogChannel::certificate)
                .containsOnly(Certificate.undated("none: simulated"));
    }

    @Test
    void theBenchStandIsOnASerialPortThatIsToBeFound() throws DataFileException {
        StandDescription stand = StandFile.read(BENCH);
        assertThat(stand.connection()).isEqualTo(new Connection.Serial(Optional.empty(), 250_000, Optional.empty()));
    }

    @Test
    void aPortAndABoardMayBeNamed() throws DataFileException {
        String named = "baud: 115200\n    port: /dev/ttyUSB0\n    unique_id: \"0123456789012345\"";
        StandDescription stand = StandFile.read(new EditedFile(BENCH, folder).with("baud: 250000", named));
        assertThat(stand.connection())
                .isEqualTo(
                        new Connection.Serial(Optional.of("/dev/ttyUSB0"), 115_200, Optional.of("0123456789012345")));
    }

    @Test
    void theReliefCheckHasItsDays() throws DataFileException {
        assertThat(StandFile.read(SIMULATED).reliefCheck())
                .contains(new Certificate(
                        "none: simulated, the relief valve of a stand that is not there",
                        Optional.of(LocalDate.of(2026, 1, 1)),
                        Optional.of(LocalDate.of(2099, 12, 31))));
        assertThat(StandFile.read(BENCH).reliefCheck()).isEmpty();
    }

    @Test
    void aReliefCheckThatIsDueBeforeItWasMadeIsRefused() {
        assertRefused(
                new EditedFile(SIMULATED, folder).with("due: 2099-12-31", "due: 2025-12-31"),
                ":70: relief_check.due is \"2025-12-31\", which is before checked, 2026-01-01");
    }

    @Test
    void aReliefCheckWithoutALastDayIsRefused() {
        assertRefused(
                new EditedFile(SIMULATED, folder).with("  due: 2099-12-31", ""),
                ":67: relief_check.due is missing, add it: allowed is a day such as 2026-01-31");
    }

    @Test
    void theSimulatedStandHasALargeMeterTooWhoseKFallsAtLowFlow() throws DataFileException {
        MeterChannel large =
                StandFile.read(SIMULATED).channels().withFlowMeter(1).flowMeter();
        assertThat(large.k().at(FlowRate.ofGallonsPerMinute(15)).pulsesPerUsGallon())
                .isCloseTo(600, within(1e-9));
        assertThat(large.k().at(FlowRate.ofGallonsPerMinute(1)).pulsesPerUsGallon())
                .isCloseTo(572, within(1e-9));
        assertThat(large.least()).isEqualTo(FlowRate.ofGallonsPerMinute(1));
    }

    @ParameterizedTest
    @ValueSource(strings = {"simulated", "serial"})
    void theChannelsAreConvertedToSi(String name) throws DataFileException {
        StandDescription stand = StandFile.read(EditedFile.fixture("stands/" + name + ".yaml"));
        MeterChannel meter = stand.channels().flowMeter();
        assertThat(meter.index()).isZero();
        assertThat(meter.k().at(FlowRate.ofGallonsPerMinute(2)).pulsesPerUsGallon())
                .isCloseTo(3000, within(1e-9));
        assertThat(meter.relativeUncertainty()).isEqualTo(0.005);
        assertThat(meter.least()).isEqualTo(FlowRate.ofGallonsPerMinute(0.2));

        AnalogChannel volts = stand.channels().required(ChannelRole.VOLTS_AT_PINS);
        assertChannel(volts, 0, 0, 20, 0.001, 0.010);
        AnalogChannel amps = stand.channels().required(ChannelRole.SUPPLY_AMPS);
        assertChannel(amps, 1, 0, 40, 0.005, 0.03);
        AnalogChannel pressure = stand.channels().required(ChannelRole.OUTLET_PRESSURE);
        double psi = Pressure.PASCALS_PER_PSI;
        assertChannel(pressure, 2, -18.75 * psi, 168.75 * psi, 0, 0.75 * psi);
        AnalogChannel water = stand.channels().required(ChannelRole.WATER_TEMPERATURE);
        assertChannel(water, 3, 273.15, 373.15, 0, 0.5);
    }

    @Test
    void aSensorOfHalfAVoltToFourAndAHalfReadsItsRangeOnAConverterOfFive() throws DataFileException {
        AnalogChannel pressure = StandFile.read(SIMULATED).channels().required(ChannelRole.OUTLET_PRESSURE);
        assertThat(pressure.si(FULL_SCALE * 0.5 / 5)).isCloseTo(0, within(1e-6));
        assertThat(pressure.si(FULL_SCALE * 4.5 / 5) / Pressure.PASCALS_PER_PSI).isCloseTo(150, within(1e-9));
    }

    @Test
    void theNozzleGivesItsFlowAtTheRootOfThePressure() throws DataFileException {
        double atRootPascal = StandFile.read(SIMULATED).nozzle().m3PerSecondPerRootPascal();
        FlowRate at25Psi =
                new FlowRate(atRootPascal * Math.sqrt(Pressure.ofPsi(25).pascals()));
        assertThat(at25Psi.gallonsPerMinute()).isCloseTo(0.60 * 5, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(strings = {"volts-at-pins", "supply-amps"})
    void aStandWithoutANeededChannelIsRefused(String role) throws IOException {
        Path file = without(role);
        assertRefused(
                file,
                ":27: analogs has no channel with role " + role + ", without which no unit can be judged: add it");
    }

    @Test
    void aStandWithoutAPressureChannelIsAllowed() throws Exception {
        Path file = without("outlet-pressure");
        assertThat(StandFile.read(file).channels().analog(ChannelRole.OUTLET_PRESSURE))
                .isEmpty();
    }

    @Test
    void aChannelInTheUnitOfAnotherRoleIsRefused() {
        Path file = new EditedFile(SIMULATED, folder).with("amps_at_zero: 0", "volts_at_zero: 0");
        assertRefused(file, """
                :35: analogs[1].amps_at_zero is missing, add it: allowed is -1000 to 1000 (A)
                :37: analogs[1].volts_at_zero is not known here; did you mean amps_at_zero?""");
    }

    @Test
    void twoChannelsOnOneInputAreRefused() {
        Path file = new EditedFile(SIMULATED, folder).with("index: 3", "index: 2");
        assertRefused(file, ":52: analogs[3].index is 2, which is taken in line 45 already");
    }

    @Test
    void aChannelWithoutASpanIsRefused() {
        Path file = new EditedFile(SIMULATED, folder).with("volts_at_full_scale: 20", "volts_at_full_scale: 0.0");
        assertRefused(file, ":31: analogs[0].volts_at_full_scale is 0.0, it must differ from volts_at_zero");
    }

    @Test
    void aConnectionOfAnotherSortIsRefused() {
        Path file = new EditedFile(SIMULATED, folder).with("connection: simulated", "connection: bluetooth");
        assertRefused(file, ":5: connection is \"bluetooth\", allowed is simulated, or serial with its baud beneath");
    }

    @Test
    void aSerialConnectionIsCheckedWithin() {
        String wrong = "baud: 300\n    unique_id: 1234567890123456\n    prot: COM3";
        Path file = new EditedFile(BENCH, folder).with("baud: 250000", wrong);
        assertRefused(file, """
                :8: connection.serial.baud is 300, allowed is whole numbers from 9600 to 2000000 (baud)
                :9: connection.serial.unique_id is 1234567890123456 (a number), allowed is 16 hexadecimal digits \
                with small letters; for text put it in quotes
                :10: connection.serial.prot is not known here; did you mean port?""");
    }

    private Path without(String role) throws IOException {
        String text = Files.readString(SIMULATED);
        int from = text.indexOf("  - role: " + role);
        int to = text.indexOf('\n', text.indexOf("certificate:", from)) + 1;
        return new EditedFile(SIMULATED, folder).with(text.substring(from, to), "");
    }

    private static void assertChannel(
            AnalogChannel channel, int index, double zero, double fullScale, double gain, double offset) {
        assertThat(channel.index()).isEqualTo(index);
        assertThat(channel.si(0)).isCloseTo(zero, within(1e-6));
        assertThat(channel.si(FULL_SCALE)).isCloseTo(fullScale, within(1e-6));
        assertThat(channel.calibrationUncertainty(zero)).isCloseTo(offset, within(1e-9));
        double atFullScale = Math.hypot(gain * (fullScale - zero), offset);
        assertThat(channel.calibrationUncertainty(fullScale)).isCloseTo(atFullScale, within(1e-6));
    }

    private static void assertRefused(Path file, String problems) {
        assertThatThrownBy(() -> StandFile.read(file))
                .isInstanceOf(DataFileException.class)
                .hasMessage(file + problems.replace("\n", "\n" + file));
    }
}
