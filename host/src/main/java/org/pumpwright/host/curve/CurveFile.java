package org.pumpwright.host.curve;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.datafile.DataFile;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.datafile.DataSchema;
import org.pumpwright.host.datafile.Node;
import org.pumpwright.host.quantity.FlowRate;

/** Reads healthy curves from files and writes them. Thread-safe. */
public final class CurveFile {
    private static final DataSchema SCHEMA = DataSchema.beside(CurveFile.class, "curve.schema.json");

    private CurveFile() {}

    /**
     * Reads one curve.
     *
     * @throws DataFileException when the file is absent or does not hold a usable curve
     */
    public static HealthyCurve read(Path file) throws DataFileException {
        String onShelf = CurveLines.FOLDER + "/" + file.getFileName();
        return DataFile.read(
                file, SCHEMA, node -> curve(node).withLines(Optional.of(CurveExtras.lines(node, onShelf))));
    }

    /**
     * Writes a curve so that the file is either the old one or the new one, never a part.
     *
     * @throws IOException when the folder or the disk does not let it
     * @throws IllegalArgumentException when the curve could not be read again from what would be written
     */
    public static void write(HealthyCurve curve, Path file) throws IOException {
        String text = CurveText.of(curve);
        requireReadable(file, text);
        Path part = file.resolveSibling(file.getFileName() + ".part");
        Files.writeString(part, text);
        Files.move(part, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    private static void requireReadable(Path file, String text) {
        try {
            HealthyCurve unused = DataFile.parse(file.toString(), text, SCHEMA, CurveFile::curve);
        } catch (DataFileException e) {
            throw new IllegalArgumentException("the curve cannot be written: " + e.getMessage(), e);
        }
    }

    private static HealthyCurve curve(Node file) {
        Days.of(file.at("made"));
        return new HealthyCurve(
                file.text("curve"),
                file.whole("version"),
                file.text("title"),
                conditions(file.at("conditions")),
                file.text("origin").equals("simulated"),
                file.whole("units"),
                file.number("tolerance_factor"),
                file.text("coverage"),
                file.number("freewheel_volts"),
                points(file.at("points")),
                file.text("author"),
                file.text("made"),
                CurveExtras.interpolation(file),
                CurveExtras.basis(file),
                CurveExtras.approval(file),
                CurveExtras.limitSets(file));
    }

    private static Conditions conditions(Node node) {
        return new Conditions(
                node.text("model"),
                node.text("driver"),
                node.number("pwm_hz"),
                node.text("nozzle"),
                node.text("fluid"));
    }

    private static List<CurvePoint> points(Node list) {
        List<Node> volts =
                list.items().stream().map(item -> item.at("effective_volts")).toList();
        for (int i = 1; i < volts.size(); i++) {
            Node here = volts.get(i);
            Node before = volts.get(i - 1);
            if (here.number() <= before.number()) {
                here.refuse(
                        "is %s, it must lie above the point before it, %s (V)".formatted(here.found(), before.found()));
            }
        }
        return list.items().stream().map(CurveFile::point).toList();
    }

    private static CurvePoint point(Node node) {
        return new CurvePoint(
                node.number("effective_volts"),
                FlowRate.ofGallonsPerMinute(node.number("flow_gpm")).m3PerSecond(),
                node.number("flow_spread_percent") / 100,
                node.number("motor_amps"),
                node.number("motor_amps_spread_percent") / 100,
                CurveExtras.parts(node, "flow_parts"),
                CurveExtras.parts(node, "motor_amps_parts"));
    }
}
