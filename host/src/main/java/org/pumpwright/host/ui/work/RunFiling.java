package org.pumpwright.host.ui.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.pumpwright.host.app.paper.Found;
import org.pumpwright.host.app.paper.NoPaperException;
import org.pumpwright.host.app.paper.PaperDesk;
import org.pumpwright.host.app.record.AfterTheRun;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.record.RunRecordException;
import org.pumpwright.host.record.ledger.StoreException;

/** Puts the run that is just over on record, and says whether it is. JavaFX thread only. */
final class RunFiling {
    private static final Row NOTHING = new Row(Word.NONE, Mark.UNKNOWN, Word.NONE, Word.NONE);

    private final Background background;
    private final AfterTheRun after;
    private final PaperDesk desk;
    private final ReadOnlyObjectWrapper<Row> state = new ReadOnlyObjectWrapper<>(NOTHING);
    private final List<Consumer<Found.Run>> waiting = new ArrayList<>();
    private Optional<Found.Run> found = Optional.empty();
    private int runs;

    RunFiling(Background background, AfterTheRun after, PaperDesk desk) {
        this.background = background;
        this.after = after;
        this.desk = desk;
    }

    /** A run as papers are made of it, and why it is not on record yet; no reason where it is. */
    private record Filed(Found.Run found, Optional<String> why) {}

    /** No run any more. */
    void clear() {
        runs++;
        found = Optional.empty();
        waiting.clear();
        state.set(NOTHING);
    }

    /** Puts this run on record. */
    void file(RunRecord run) {
        clear();
        int own = runs;
        state.set(new Row(Word.of("ui.verdict.filing"), Mark.UNKNOWN, Word.NONE, Word.NONE));
        background.run(() -> filed(run), filed -> {
            if (own == runs) {
                show(filed);
            }
        });
    }

    private Filed filed(RunRecord run) throws Exception {
        try {
            List<String> troubles =
                    Patience.ask(() -> after.enter(run), desk.store()).troubles();
            Found.Run there = Patience.ask(() -> desk.justMade(run), desk.store());
            Optional<String> why = there.entry().isPresent()
                    ? Optional.empty()
                    : Optional.of(troubles.isEmpty() ? "" : troubles.get(0));
            return new Filed(there, why);
        } catch (StoreException | RunRecordException | NoPaperException e) {
            return new Filed(new Found.Run(run, Optional.empty()), Optional.of(String.valueOf(e.getMessage())));
        }
    }

    private void show(Filed filed) {
        found = Optional.of(filed.found());
        filed.why().ifPresent(why -> background.trouble(Trouble.named("store", why)));
        state.set(
                filed.why().isEmpty()
                        ? new Row(Word.of("ui.verdict.filed"), Mark.GOOD, Word.NONE, Word.NONE)
                        : new Row(
                                Word.of("ui.verdict.not_filed"),
                                Mark.WATCH,
                                Word.asIs(filed.why().get()),
                                Word.NONE));
        List<Consumer<Found.Run>> asked = List.copyOf(waiting);
        waiting.clear();
        asked.forEach(each -> each.accept(filed.found()));
    }

    /** Hands the run over as soon as it is known whether it is on record. */
    void whenFiled(Consumer<Found.Run> use) {
        if (found.isPresent()) {
            use.accept(found.get());
        } else {
            waiting.add(use);
        }
    }

    /** Whether it is on record: in its name; why it is not: in its finding. */
    ReadOnlyObjectProperty<Row> stateProperty() {
        return state.getReadOnlyProperty();
    }
}
