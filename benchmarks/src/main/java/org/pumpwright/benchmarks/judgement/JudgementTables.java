package org.pumpwright.benchmarks.judgement;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Writes the tables and the plot of the page about how often a verdict is wrong. */
public final class JudgementTables {
    private static final int UNITS = 2000;
    private static final String TARGET = "benchmarks/target";

    private JudgementTables() {}

    /**
     * Runs everything; an hour or more.
     *
     * @param arguments the project's folder, then if wanted the number of healthy units, to which all other numbers are held,
     *     then if wanted {@code matched} or {@code changed} alone
     */
    public static void main(String[] arguments) throws Exception {
        Path project = Path.of(arguments[0]);
        int units = arguments.length > 1 ? Integer.parseInt(arguments[1]) : UNITS;
        TestStand quick = new TestStand(project.resolve("fixtures"), TestStand.QUICK);
        TestStand full = new TestStand(project.resolve("fixtures"), TestStand.FULL);
        Progress progress = new Progress(System.err);
        Sizes sizes = Sizes.of(units);
        List<Boolean> kinds = arguments.length > 2 ? List.of(arguments[2].equals("changed")) : List.of(false, true);
        List<String> page = new ArrayList<>();
        List<OperatingPlot.Panel> panels = new ArrayList<>();
        for (boolean changed : kinds) {
            Worlds worlds = Worlds.made(quick, sizes.worlds(), changed, progress);
            PhysicsPart part = new PhysicsPart(worlds, sizes, full);
            panels.add(part.carryOut());
            page.addAll(part.page());
            if (!changed) {
                page.add("## How long it takes");
                page.add("");
                page.addAll(SpeedPart.lines(worlds.all().get(0), quick));
                page.add("");
            }
            write(project.resolve(TARGET).resolve("judgement.md"), String.join("\n", page) + "\n");
            write(project.resolve(TARGET).resolve("judgement.svg"), OperatingPlot.svg(panels));
        }
    }

    private static void write(Path file, String text) {
        try {
            Files.createDirectories(file.getParent());
            Files.writeString(file, text);
        } catch (IOException e) {
            throw new UncheckedIOException("%s can't be written".formatted(file), e);
        }
    }
}
