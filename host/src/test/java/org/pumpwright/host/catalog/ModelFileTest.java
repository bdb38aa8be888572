package org.pumpwright.host.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.datafile.EditedFile;

class ModelFileTest {
    private static final Path DEMO = EditedFile.fixture("models/demo-pump.yaml");

    @Test
    void theDemoPumpIsReadInFull() throws DataFileException {
        assertThat(ModelFile.read(DEMO))
                .isEqualTo(new UnitModel(
                        "demo-pump",
                        "Demo 5 gal/min diaphragm pump (invented, for practice)",
                        UnitKind.PUMP_12V,
                        "quick-12v-pump",
                        true,
                        28));
    }

    @Test
    void aCurrentBeyondEveryFuseIsRefused(@TempDir Path folder) {
        Path file = new EditedFile(DEMO, folder).with("amps_limit: 28", "amps_limit: 280");
        assertThatThrownBy(() -> ModelFile.read(file))
                .isInstanceOf(DataFileException.class)
                .hasMessage(file + ":7: amps_limit is 280, allowed is 0.1 to 100 (A)");
    }

    @Test
    void aKindOfUnitThatIsNotKnownIsRefused(@TempDir Path folder) {
        Path file = new EditedFile(DEMO, folder).with("kind: pump-12v", "kind: pump");
        assertThatThrownBy(() -> ModelFile.read(file))
                .isInstanceOf(DataFileException.class)
                .hasMessage(
                        file + ":4: kind is \"pump\", allowed is pump-12v, hydraulic-pump, driver, meter or harness");
        assertThatThrownBy(() -> UnitKind.ofWord("pump"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("no kind of unit is called pump");
    }
}
