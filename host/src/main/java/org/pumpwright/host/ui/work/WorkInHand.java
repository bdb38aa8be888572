package org.pumpwright.host.ui.work;

import java.util.Optional;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import org.pumpwright.host.app.Acceptance;

/** The unit in hand, from the door to the verdict: what the screens of one job share. JavaFX thread only. */
public final class WorkInHand {
    private final ReadOnlyObjectWrapper<Optional<WorkOrder>> order = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ObjectProperty<Optional<Acceptance.Result>> result = new SimpleObjectProperty<>(Optional.empty());
    private final BooleanProperty fit = new SimpleBooleanProperty();
    private final BooleanProperty busy = new SimpleBooleanProperty();

    /** What is to be done; empty while no unit is in hand. */
    public ReadOnlyObjectProperty<Optional<WorkOrder>> orderProperty() {
        return order.getReadOnlyProperty();
    }

    /** Whether the stand's checks hold for it. */
    public BooleanProperty fitProperty() {
        return fit;
    }

    /** Whether its run goes on; no other unit is taken in hand meanwhile. */
    public BooleanProperty busyProperty() {
        return busy;
    }

    /** What came of the last run; empty before it. */
    public ObjectProperty<Optional<Acceptance.Result>> resultProperty() {
        return result;
    }

    /** Takes a unit in hand; the stand is to be looked at anew. */
    public void take(WorkOrder taken) {
        if (busy.get()) {
            throw new IllegalStateException("a run goes on: its unit can't be taken out of hand");
        }
        fit.set(false);
        result.set(Optional.empty());
        order.set(Optional.of(taken));
    }
}
