package org.pumpwright.host.ui.work;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.pumpwright.host.app.claim.ClaimList;
import org.pumpwright.host.app.claim.DeskOfShop;
import org.pumpwright.host.app.claim.NextStep;
import org.pumpwright.host.claim.CustodyState;

/** The claims of the shop: which wait, how long, and whose move it is; narrowed down by state, or by what is typed or scanned. JavaFX thread only. */
public final class ClaimListModel {
    private final Background background;
    private final DeskOfShop desk;
    private final ObservableList<Row> rows = FXCollections.observableArrayList();
    private final ObservableList<Row> rowsShown = FXCollections.unmodifiableObservableList(rows);
    private final ReadOnlyObjectWrapper<Word> headline = new ReadOnlyObjectWrapper<>(Word.NONE);
    private final ObjectProperty<Which> which = new SimpleObjectProperty<>(Which.HERE);
    private final StringProperty sought = new SimpleStringProperty("");
    private final List<String> numbers = new ArrayList<>();
    private List<ClaimLine> all = List.of();

    /** Which claims are listed. */
    public enum Which {
        /** Those whose unit is in the shop. */
        HERE(Optional.empty()),
        RECEIVED(Optional.of(CustodyState.RECEIVED)),
        QUARANTINED(Optional.of(CustodyState.QUARANTINED)),
        TESTED(Optional.of(CustodyState.TESTED)),
        AWAITING_DECISION(Optional.of(CustodyState.AWAITING_DECISION)),
        TO_FACTORY(Optional.of(CustodyState.TO_FACTORY)),
        /** Those whose unit has left it. */
        LEFT(Optional.empty());

        private final Optional<CustodyState> state;

        Which(Optional<CustodyState> state) {
            this.state = state;
        }

        /** Key of its name. */
        public String key() {
            return state.map(CustodyState::key).orElse("ui.claim.which." + name().toLowerCase(Locale.ROOT));
        }

        private boolean shows(CustodyState now) {
            return state.map(now::equals).orElse(now.isOut() == (this == LEFT));
        }
    }

    ClaimListModel(Background background, DeskOfShop desk) {
        this.background = background;
        this.desk = desk;
        which.addListener((observed, old, now) -> show());
        sought.addListener((observed, old, now) -> show());
    }

    /** Reads the claims, by state, the oldest first. */
    public void refresh() {
        read(lines -> {
            all = lines;
            show();
        });
    }

    private void read(Consumer<List<ClaimLine>> done) {
        background.run(() -> Patience.ask(this::lines, desk.store()), done, failure -> {
            headline.set(Word.of("ui.claim.away"));
            background.trouble(Trouble.of(failure));
        });
    }

    private List<ClaimLine> lines() throws Exception {
        if (!desk.mayHold()) {
            return List.of();
        }
        ClaimList list = desk.list();
        Set<String> tested = list.tested();
        return list.lines(LocalDate.now(desk.clock()), true).stream()
                .map(line -> new ClaimLine(
                        line,
                        NextStep.ofOutline(
                                line.file(), tested.contains(line.file().number()))))
                .toList();
    }

    private void show() {
        String text = sought.get();
        List<ClaimLine> shown = all.stream()
                // Who looks for a certain one does not know its state.
                .filter(line -> text.isBlank()
                        ? which.get().shows(line.line().file().whereabouts().to())
                        : line.has(text))
                .toList();
        numbers.clear();
        shown.forEach(line -> numbers.add(line.number()));
        rows.setAll(shown.stream().map(ClaimLine::row).toList());
        headline.set(headline(shown, text));
    }

    private Word headline(List<ClaimLine> shown, String text) {
        if (!text.isBlank()) {
            return shown.isEmpty()
                    ? Word.of("ui.claim.not_found", text.strip())
                    : Word.of(shown.size() == 1 ? "ui.claim.found.one" : "ui.claim.found", text.strip(), shown.size());
        }
        if (shown.isEmpty()) {
            return Word.of(which.get() == Which.HERE ? "ui.claim.none" : "ui.claim.none_so");
        }
        long ours = shown.stream()
                .filter(line -> line.next().whose() == NextStep.Whose.DESK)
                .count();
        return shown.size() == 1
                ? Word.of(ours == 1 ? "ui.claim.count.one_ours" : "ui.claim.count.one")
                : Word.of("ui.claim.count", shown.size(), ours);
    }

    /**
     * Looks for what was scanned: the number of a claim or the serial of a unit.
     *
     * @param one takes the number when it is a single claim's; otherwise the list shows what was found
     */
    public void scanned(String text, Consumer<String> one) {
        read(lines -> {
            all = lines;
            List<ClaimLine> found = all.stream().filter(line -> line.is(text)).toList();
            if (found.size() == 1) {
                sought.set("");
                show();
                one.accept(found.get(0).number());
            } else {
                sought.set(text);
                show();
            }
        });
    }

    /** Number of the claim in this line; empty when there is no such line. */
    public Optional<String> number(int line) {
        return line >= 0 && line < numbers.size() ? Optional.of(numbers.get(line)) : Optional.empty();
    }

    /** The claims, as lines. */
    public ObservableList<Row> rows() {
        return rowsShown;
    }

    /** How many there are, and how many wait for the desk. */
    public ReadOnlyObjectProperty<Word> headlineProperty() {
        return headline.getReadOnlyProperty();
    }

    /** Which are listed. */
    public ObjectProperty<Which> whichProperty() {
        return which;
    }

    /** What is looked for: a part of a claim number, serial, model or tag. Empty: every one of the state. */
    public StringProperty soughtProperty() {
        return sought;
    }
}
