package org.pumpwright.host.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.bench.Firmware;
import org.pumpwright.host.curve.CurveFile;

final class DemoCurveTest {
    @Test
    void theShippedCurveIsWhatTheSimulatedUnitsGive(@TempDir Path folder) throws Exception {
        Path data = Firmware.root().resolve("fixtures");
        Path made = folder.resolve("made.yaml");

        CurveFile.write(DemoCurve.make(data), made);

        // Made anew with: mvn -pl host test-compile, then java -cp ... org.pumpwright.host.app.DemoCurve fixtures
        assertThat(Files.readString(made)).isEqualTo(Files.readString(data.resolve("curves/demo-pump.yaml")));
    }
}
