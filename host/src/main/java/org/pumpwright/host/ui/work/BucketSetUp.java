package org.pumpwright.host.ui.work;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.pumpwright.host.app.bucket.BucketBench;

/** What is settled before a bucket test begins: bench, plan, meter and who tests. JavaFX thread only. */
public final class BucketSetUp {
    private final Background background;
    private final Path benches;
    private final BooleanSupplier simulated;
    private final ReadOnlyObjectWrapper<Optional<BucketBench>> bench = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<BucketPlan> plan = new ReadOnlyObjectWrapper<>(BucketPlan.USUAL);
    private final StringProperty serial = new SimpleStringProperty("");
    private final StringProperty technician = new SimpleStringProperty("");

    /**
     * @param benches folder of the files of benches
     * @param simulated whether the stand is
     */
    BucketSetUp(Background background, Path benches, BooleanSupplier simulated) {
        this.background = background;
        this.benches = benches;
        this.simulated = simulated;
    }

    /** Finds the benches; takes the one that goes with the stand when none is chosen yet. */
    public void findBenches(Consumer<List<BucketBench>> found) {
        background.run(() -> BucketBench.in(benches), all -> {
            if (bench.get().isEmpty()) {
                all.stream()
                        .max(Comparator.comparing(
                                each -> each.name().contains("simulated") == simulated.getAsBoolean()))
                        .ifPresent(this::choose);
            }
            found.accept(all);
        });
    }

    /** Takes a bench, with the meter and the technician that its file names. */
    public void choose(BucketBench chosen) {
        serial.set(chosen.sheet().meter().serial());
        technician.set(chosen.sheet().job().technician());
        bench.set(Optional.of(chosen));
    }

    /** Changes the plan. */
    public void plan(BucketPlan other) {
        plan.set(other);
    }

    /** How far runs at one flow may lie apart, as a share of their mean; not a number while there is no bench. */
    double gateShare() {
        return bench.get().map(each -> each.gateShare(plan.get().runs())).orElse(Double.NaN);
    }

    /** The bench: scale, liquid and meter. */
    public ReadOnlyObjectProperty<Optional<BucketBench>> benchProperty() {
        return bench.getReadOnlyProperty();
    }

    /** The plan. */
    public ReadOnlyObjectProperty<BucketPlan> planProperty() {
        return plan.getReadOnlyProperty();
    }

    /** The meter's serial number. */
    public StringProperty serialProperty() {
        return serial;
    }

    /** Who tests. */
    public StringProperty technicianProperty() {
        return technician;
    }
}
