package org.pumpwright.host.cli;

import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.text.Language;
import org.pumpwright.host.ui.BenchKeys;
import org.pumpwright.host.ui.BenchLauncher;
import org.pumpwright.host.ui.BenchServices;
import org.pumpwright.host.ui.BenchSettings;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Opens the window for the bench. */
@Command(
        name = "bench",
        description = {
            "Opens the window for the bench: large type, six big keys, STOP always in reach.",
            "STOP in the window is a convenience; the stand's emergency stop must work without it."
        },
        mixinStandardHelpOptions = true)
final class BenchCommand implements Callable<Integer> {
    private final Workshop workshop;

    @Option(
            names = "--stand",
            paramLabel = "NAME",
            defaultValue = "simulated",
            description = "The stand it begins with; 'simulated' if not given. Another can be chosen in the window.")
    private String stand = "simulated";

    @Option(
            names = "--port",
            paramLabel = "PORT",
            description = "Serial port; without it the stand's own, or the only one.")
    @Nullable
    private String port;

    @Option(
            names = "--language",
            paramLabel = "en|es",
            defaultValue = "EN",
            description = "en if not given; the window can switch it.")
    private Language language = Language.EN;

    @Option(
            names = "--units",
            paramLabel = "us|metric",
            defaultValue = "US",
            description = "us if not given; the window can switch them.")
    private UnitSystem units = UnitSystem.US;

    @Option(names = "--dark", description = "Light type on dark ground; the window can switch it.")
    private boolean dark;

    @Option(names = "--kiosk", description = "Takes the whole display.")
    private boolean kiosk;

    @Option(
            names = "--pedal",
            paramLabel = "KEY",
            description = "Key that the foot pedal sends: does the first action that can be done. F9 if not given.")
    @Nullable
    private String pedal;

    @Option(
            names = "--stop-pedal",
            paramLabel = "KEY",
            description = "Another key that is STOP, besides Esc. Pause and F12 if not given.")
    @Nullable
    private String stopPedal;

    BenchCommand(Workshop workshop) {
        this.workshop = workshop;
    }

    @Override
    public Integer call() throws Exception {
        // No type of the window stands in this class's signatures: the other commands start without loading it.
        BenchLauncher.show(
                new BenchSettings(
                        stand,
                        Optional.ofNullable(port),
                        language,
                        units,
                        dark,
                        kiosk,
                        BenchKeys.named(Optional.ofNullable(stopPedal), Optional.ofNullable(pedal))),
                new BenchServices(
                        workshop.home(),
                        workshop.shelf(),
                        workshop.stands(),
                        workshop.records(),
                        workshop.recordFolder(workshop.records()),
                        workshop.recordBook(workshop.records(), Optional.empty()),
                        workshop.clock()),
                workshop.shelf().stand(stand),
                System.getenv());
        return ExitCode.PASS;
    }
}
