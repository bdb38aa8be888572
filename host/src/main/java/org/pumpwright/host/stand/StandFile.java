package org.pumpwright.host.stand;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.pumpwright.host.datafile.DataFile;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.datafile.DataSchema;
import org.pumpwright.host.datafile.Node;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.Pressure;
import org.pumpwright.host.stand.StandDescription.Connection;
import org.pumpwright.host.stand.StandDescription.Nozzle;
import org.pumpwright.host.trace.Channels;

/** Reads descriptions of stands from files. Thread-safe. */
public final class StandFile {
    private static final DataSchema SCHEMA = DataSchema.beside(StandFile.class, "stand.schema.json");

    /** Roles without which no unit can be judged. */
    private static final List<String> NEEDED_ROLES = List.of("volts-at-pins", "supply-amps");

    private StandFile() {}

    /**
     * Reads one description.
     *
     * @throws DataFileException when the file is absent or does not describe a usable stand
     */
    public static StandDescription read(Path file) throws DataFileException {
        return DataFile.read(file, SCHEMA, StandFile::stand);
    }

    private static StandDescription stand(Node file) {
        Node meters = file.at("meters");
        Node analogs = file.at("analogs");
        refuseTwice(meters, "index");
        refuseTwice(analogs, "index");
        refuseTwice(analogs, "role");
        refuseWithoutNeeded(analogs);
        return new StandDescription(
                file.text("stand"),
                file.text("title"),
                connection(file.at("connection")),
                new Channels(
                        meters.items().stream().map(MeterNode::meter).toList(),
                        analogs.items().stream().map(AnalogNode::channel).toList()),
                file.text("driver"),
                nozzle(file),
                file.find("large_loop").map(StandFile::nozzle),
                file.text("fluid"),
                file.number("supply_volts"),
                file.find("relief_check").map(CertificateNode::reliefCheck));
    }

    private static Connection connection(Node node) {
        return node.find("serial").<Connection>map(StandFile::serial).orElseGet(Connection.Simulated::new);
    }

    private static Connection.Serial serial(Node node) {
        return new Connection.Serial(
                node.find("port").map(Node::text),
                node.whole("baud"),
                node.find("unique_id").map(Node::text));
    }

    private static Nozzle nozzle(Node node) {
        return new Nozzle(node.text("nozzle"), perRootPascal(node.number("nozzle_gpm_per_root_psi")));
    }

    private static double perRootPascal(double gallonsPerMinutePerRootPsi) {
        return FlowRate.ofGallonsPerMinute(gallonsPerMinutePerRootPsi).m3PerSecond()
                / Math.sqrt(Pressure.PASCALS_PER_PSI);
    }

    private static void refuseTwice(Node list, String key) {
        Map<String, Node> first = new HashMap<>();
        for (Node item : list.items()) {
            Node value = item.at(key);
            Node before = first.putIfAbsent(value.found(), value);
            if (before != null) {
                value.refuse("is " + value.found() + ", which is taken in line " + before.line() + " already");
            }
        }
    }

    private static void refuseWithoutNeeded(Node analogs) {
        List<String> roles =
                analogs.items().stream().map(item -> item.text("role")).toList();
        for (String needed : NEEDED_ROLES) {
            if (!roles.contains(needed)) {
                analogs.refuse("has no channel with role " + needed + ", without which no unit can be judged: add it");
            }
        }
    }
}
