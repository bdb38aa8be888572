package org.pumpwright.host.cli.bucket;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.pumpwright.host.cli.ExitCode;
import org.pumpwright.host.cli.Workshop;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.BucketRecord;
import org.pumpwright.host.record.BucketRecordFile;
import org.pumpwright.host.report.bucket.BucketTextReport;
import org.pumpwright.host.report.bucket.KLabel;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes the papers of a stored test again. */
@Command(
        name = "papers",
        description = "Prints the report of a stored test again, as text, from its record.",
        mixinStandardHelpOptions = true)
final class PapersCommand implements Callable<Integer> {
    private final Workshop workshop;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "RECORD", description = "The file bucket.json, or the folder it lies in.")
    private Path file = Path.of("");

    @Option(
            names = "--units",
            paramLabel = "us|metric",
            description = "Units of the report; us if not given.",
            defaultValue = "US")
    private UnitSystem units = UnitSystem.US;

    @Option(names = "--label", description = "The label instead of the report.")
    private boolean label;

    PapersCommand(Workshop workshop) {
        this.workshop = workshop;
    }

    @Override
    public Integer call() throws Exception {
        Path record = Files.isDirectory(file) ? file.resolve("bucket.json") : file;
        Path there = record.isAbsolute() || Files.exists(record)
                ? record
                : workshop.home().resolve(record);
        BucketRecord kept = BucketRecordFile.read(there);
        spec.commandLine().getOut().print(label ? KLabel.text(kept) : BucketTextReport.page(kept, units));
        return ExitCode.PASS;
    }
}
