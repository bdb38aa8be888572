package org.pumpwright.host.ui.work;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.pumpwright.host.app.claim.DeskOfShop;

/**
 * The warranty desk: the list of claims, and one of them that is looked at. What is done to it is in {@link ClaimDeeds}, its papers in
 * {@link ClaimPaperwork}, pictures before they are added in {@link PhotoPicker}. JavaFX thread only.
 */
public final class ClaimModel {
    private final Background background;
    private final DeskOfShop desk;
    private final ClaimReader reader;
    private final ClaimListModel list;
    private final ClaimDeeds deeds;
    private final ClaimPaperwork papers;
    private final PhotoPicker pictures;
    private final IntakeForm form = new IntakeForm();
    private final ReadOnlyObjectWrapper<Optional<ClaimView>> shown = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ObservableList<Row> standing = FXCollections.observableArrayList();
    private final ObservableList<Row> standingShown = FXCollections.unmodifiableObservableList(standing);
    private final ObservableList<Row> weighed = FXCollections.observableArrayList();
    private final ObservableList<Row> weighedShown = FXCollections.unmodifiableObservableList(weighed);
    private final ReadOnlyObjectWrapper<List<Fact>> facts = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyBooleanWrapper busy = new ReadOnlyBooleanWrapper();
    private final StringProperty person = new SimpleStringProperty("");

    /**
     * The desk of this shop.
     *
     * @param folder where papers and packets go
     * @param opener shows them
     */
    public ClaimModel(Background background, DeskOfShop desk, Path folder, Opener opener) {
        this.background = background;
        this.desk = desk;
        reader = new ClaimReader(background, desk);
        list = new ClaimListModel(background, desk);
        deeds = new ClaimDeeds(background, desk, this);
        papers = new ClaimPaperwork(background, desk, this, folder, opener);
        pictures = new PhotoPicker(background, desk.clock().getZone());
    }

    /** The list of claims. */
    public ClaimListModel list() {
        return list;
    }

    /** What is done to the claim. */
    public ClaimDeeds deeds() {
        return deeds;
    }

    /** Its papers. */
    public ClaimPaperwork papers() {
        return papers;
    }

    /** Pictures that may be added. */
    public PhotoPicker pictures() {
        return pictures;
    }

    /** The intake that is being filled in. */
    public IntakeForm form() {
        return form;
    }

    /** Looks at the claim in this line of the list. */
    public void open(int line) {
        list.number(line).ifPresent(this::open);
    }

    /** Looks at the claim with this number. */
    public void open(String number) {
        work(() -> number, () -> {});
    }

    /** Something was scanned: looks at the claim with this number, or of the unit with this serial. */
    public void scanned(String text) {
        list.scanned(text, this::open);
    }

    /** Does something, then looks at the claim again whose number comes of it. */
    void work(Callable<String> deed, Runnable done) {
        busy.set(true);
        background.run(
                () -> {
                    String number = deed.call();
                    return Patience.ask(() -> reader.view(number), desk.store());
                },
                view -> {
                    busy.set(false);
                    show(view);
                    done.run();
                },
                this::failed);
    }

    void failed(Throwable failure) {
        busy.set(false);
        background.trouble(
                failure instanceof IllegalArgumentException
                        ? Trouble.named("order", String.valueOf(failure.getMessage()))
                        : Trouble.of(failure));
    }

    void busy(boolean now) {
        busy.set(now);
    }

    private void show(ClaimView view) {
        papers.forget();
        standing.setAll(ClaimRows.of(view));
        weighed.setAll(ClaimRows.forDecision(view));
        facts.set(ClaimFacts.of(view.file()));
        shown.set(Optional.of(view));
    }

    /** Back to the list. */
    public void back() {
        shown.set(Optional.empty());
        list.refresh();
    }

    String number() {
        return shown.get().orElseThrow().file().number();
    }

    String person() {
        return person.get();
    }

    /** The claim that is looked at; empty while the list is. */
    public ReadOnlyObjectProperty<Optional<ClaimView>> shownProperty() {
        return shown.getReadOnlyProperty();
    }

    /** What stands of it: decision, finding, runs, what to look at, what is missing, notes, coverage. */
    public ObservableList<Row> standing() {
        return standingShown;
    }

    /** What whoever decides should have read. */
    public ObservableList<Row> weighed() {
        return weighedShown;
    }

    /** What was written down when the unit came in, and where it was since. */
    public ReadOnlyObjectProperty<List<Fact>> factsProperty() {
        return facts.getReadOnlyProperty();
    }

    /** True while something is done. */
    public ReadOnlyBooleanProperty busyProperty() {
        return busy.getReadOnlyProperty();
    }

    /** Who is at the desk; signs and hands in. */
    public StringProperty personProperty() {
        return person;
    }
}
