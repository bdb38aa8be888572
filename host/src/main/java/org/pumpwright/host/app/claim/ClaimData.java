package org.pumpwright.host.app.claim;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.pumpwright.host.app.Complaint;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.Shelf;
import org.pumpwright.host.catalog.UnitModel;
import org.pumpwright.host.claim.CautionsFile;
import org.pumpwright.host.claim.DateCodesFile;
import org.pumpwright.host.claim.TagColoursFile;
import org.pumpwright.host.claim.coverage.CoverageRules;
import org.pumpwright.host.claim.coverage.CoverageRulesFile;
import org.pumpwright.host.datafile.DataFileException;

/** The data files of the desk: cautions, tags, date codes, coverage rules, and what it needs of the stand's. Thread-safe. */
public final class ClaimData {
    private final Path data;
    private final Shelf shelf;

    /** @param data the folder that holds {@code claims}, {@code coverage}, {@code models} and the other kinds */
    public ClaimData(Path data) {
        this.data = data;
        this.shelf = new Shelf(data);
    }

    /** An empty intake sheet. */
    public Path newSheet() {
        return data.resolve("claims/new-sheet.yaml");
    }

    /** What to know before a unit is opened that pumped this. */
    public List<String> cautions(String product) throws DataFileException {
        return CautionsFile.read(data.resolve("claims/cautions.yaml")).of(product);
    }

    /** The shop's tag colours. */
    public TagColoursFile tags() throws DataFileException {
        return TagColoursFile.read(data.resolve("claims/tags.yaml"));
    }

    /** How the date codes of a model are written. */
    public Optional<DateCodesFile.DateCode> dateCode(String model) throws DataFileException {
        return DateCodesFile.read(data.resolve("claims/date-codes.yaml")).of(model);
    }

    /** The unit model; empty when the shop does not know it. */
    public Optional<UnitModel> model(String name) throws OrderException, DataFileException {
        return shelf.models().stream().filter(model -> model.id().equals(name)).findFirst();
    }

    /** Every unit model that the shop knows. */
    public List<UnitModel> models() throws OrderException, DataFileException {
        return shelf.models();
    }

    /** Plans that provoke what comes and goes or fails hot, for a unit of this model. */
    public Set<String> provokingPlans(String model) throws OrderException, DataFileException {
        Set<String> plans = new HashSet<>();
        model(model).ifPresent(unit -> {
            plans.add(Complaint.INTERMITTENT.proposal(unit).plan());
            plans.add(Complaint.QUITS_HOT.proposal(unit).plan());
        });
        return plans;
    }

    /** Names and versions of the healthy curves and rules of grading that hold now. */
    public Set<String> labels() throws OrderException, DataFileException {
        Set<String> labels = new HashSet<>();
        shelf.curves().forEach(curve -> labels.add(curve.label()));
        for (UnitModel model : shelf.models()) {
            shelf.rules(model).ifPresent(rules -> labels.add(rules.label()));
        }
        return labels;
    }

    /**
     * The coverage rules for a unit that came on this day; empty where the shop has none for it.
     *
     * @throws OrderException when two sets of rules hold on one day
     */
    public Optional<CoverageRules> coverage(LocalDate received) throws OrderException, DataFileException {
        List<CoverageRules> holding = new ArrayList<>();
        for (Path file : Shelf.files(data.resolve("coverage"))) {
            CoverageRules rules = CoverageRulesFile.read(file, "coverage/" + file.getFileName());
            if (rules.holdOn(received)) {
                holding.add(rules);
            }
        }
        if (holding.size() > 1) {
            throw new OrderException("on %s two sets of coverage rules hold: %s and %s. End one of them: effective, to."
                    .formatted(received, holding.get(0).label(), holding.get(1).label()));
        }
        return holding.stream().findFirst();
    }
}
