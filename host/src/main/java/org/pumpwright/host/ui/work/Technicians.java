package org.pumpwright.host.ui.work;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** Who tests, and who did lately: since the window was opened, and in the runs on record. JavaFX thread only. */
public final class Technicians {
    /** How many are offered. */
    public static final int MOST = 5;

    private final Background background;
    private final Callable<List<String>> onRecord;
    private final StringProperty name = new SimpleStringProperty("");
    private final Set<String> here = new LinkedHashSet<>();
    private final ObservableList<String> recent = FXCollections.observableArrayList();
    private final ObservableList<String> recentShown = FXCollections.unmodifiableObservableList(recent);
    private List<String> before = List.of();

    /** @param onRecord names of those who tested lately, the latest first; called on a worker thread */
    Technicians(Background background, Callable<List<String>> onRecord) {
        this.background = background;
        this.onRecord = onRecord;
    }

    /** Looks up who tested lately. A record that does not answer costs nobody a unit: the name is typed then. */
    void load() {
        background.run(
                onRecord,
                found -> {
                    before = List.copyOf(found);
                    offer();
                },
                failure -> {});
    }

    /** Remembers whoever tests now. */
    void remember() {
        here.remove(name.get().strip());
        here.add(name.get().strip());
        offer();
    }

    private void offer() {
        List<String> latest = new ArrayList<>(here);
        Collections.reverse(latest);
        Set<String> all = new LinkedHashSet<>(latest);
        all.addAll(before);
        recent.setAll(all.stream().limit(MOST).toList());
    }

    /** Who tests. */
    public StringProperty nameProperty() {
        return name;
    }

    /** Who tested lately, the latest first. */
    public ObservableList<String> recent() {
        return recentShown;
    }
}
