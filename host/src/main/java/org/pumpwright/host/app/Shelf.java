package org.pumpwright.host.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.pumpwright.host.catalog.ModelFile;
import org.pumpwright.host.catalog.UnitModel;
import org.pumpwright.host.curve.CurveFile;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.plan.PlanFile;
import org.pumpwright.host.rule.GradingRules;
import org.pumpwright.host.rule.RulesFile;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.stand.StandFile;

/**
 * The shop's data files: stands, models, plans, rules of grading and healthy curves, each kind in a folder of its own, found by the file's
 * name without its ending. Thread-safe.
 */
public final class Shelf {
    private static final String ENDING = ".yaml";

    private final Path data;

    /** @param data the folder that holds {@code stands}, {@code models}, {@code plans}, {@code rules} and {@code curves} */
    public Shelf(Path data) {
        this.data = data;
    }

    /** A stand by its name, or by the path of its file. */
    public StandDescription stand(String name) throws OrderException, DataFileException {
        return StandFile.read(file("stand", "stands", name));
    }

    /** The file of a stand, by its name or its path. */
    public Path standFile(String name) throws OrderException {
        return file("stand", "stands", name);
    }

    /** A unit model by its name. */
    public UnitModel model(String name) throws OrderException, DataFileException {
        return ModelFile.read(file("model", "models", name));
    }

    /** A plan by its name, or by the path of its file. */
    public Plan plan(String name) throws OrderException, DataFileException {
        return PlanFile.read(file("plan", "plans", name));
    }

    /** A healthy curve by its name, or by the path of its file. */
    public HealthyCurve curve(String name) throws OrderException, DataFileException {
        return CurveFile.read(file("curve", "curves", name));
    }

    /** Every healthy curve. */
    public List<HealthyCurve> curves() throws OrderException, DataFileException {
        return all("curves", CurveFile::read);
    }

    /** Rules of grading by their name, or by the path of their file. */
    public GradingRules rules(String name) throws OrderException, DataFileException {
        return RulesFile.read(file("rules", "rules", name));
    }

    /**
     * The rules that a model is judged by; empty where the shop has none for its kind.
     *
     * @throws OrderException when the model names rules of its own and they are not there
     */
    public Optional<GradingRules> rules(UnitModel model) throws OrderException, DataFileException {
        boolean ofItsKind = model.rules().equals(model.kind().word());
        return ofItsKind && !names("rules").contains(model.rules())
                ? Optional.empty()
                : Optional.of(rules(model.rules()));
    }

    /** Every plan. */
    public List<Plan> plans() throws OrderException, DataFileException {
        return all("plans", PlanFile::read);
    }

    /** Every stand. */
    public List<StandDescription> stands() throws OrderException, DataFileException {
        return all("stands", StandFile::read);
    }

    /** Every unit model. */
    public List<UnitModel> models() throws OrderException, DataFileException {
        return all("models", ModelFile::read);
    }

    @FunctionalInterface
    private interface Reader<T> {
        T read(Path file) throws DataFileException;
    }

    private <T> List<T> all(String folder, Reader<T> reader) throws OrderException, DataFileException {
        List<T> read = new ArrayList<>();
        for (String name : names(folder)) {
            read.add(reader.read(data.resolve(folder).resolve(name + ENDING)));
        }
        return read;
    }

    private Path file(String kind, String folder, String name) throws OrderException {
        if (name.endsWith(ENDING)) {
            return Path.of(name);
        }
        List<String> known = names(folder);
        if (!known.contains(name)) {
            String names = known.isEmpty() ? "none is there yet" : "Known are: " + String.join(", ", known);
            throw new OrderException("there is no %s '%s'. %s. A new one is a file in %s."
                    .formatted(kind, name, names, data.resolve(folder)));
        }
        return data.resolve(folder).resolve(name + ENDING);
    }

    /** What lies in a folder, by name. */
    List<String> names(String folder) throws OrderException {
        return files(data.resolve(folder)).stream().map(Shelf::name).sorted().toList();
    }

    /** The name that a data file is known by: that of the file without its ending. */
    public static String name(Path file) {
        String name = String.valueOf(file.getFileName());
        return name.endsWith(ENDING) ? name.substring(0, name.length() - ENDING.length()) : name;
    }

    /**
     * The data files of a folder, in the order of their names; none where there is no such folder.
     *
     * @throws OrderException when it can't be read
     */
    public static List<Path> files(Path folder) throws OrderException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(ENDING))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new OrderException(
                    "%s can't be read: %s. Check the folder's rights.".formatted(folder, e.getMessage()));
        }
    }
}
