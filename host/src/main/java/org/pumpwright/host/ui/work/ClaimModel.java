package org.pumpwright.host.ui.work;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.claim.ClaimList;
import org.pumpwright.host.app.claim.ClaimReview;
import org.pumpwright.host.app.claim.DecisionDesk.DecisionAsked;
import org.pumpwright.host.app.claim.DecisionDesk.FindingAsked;
import org.pumpwright.host.app.claim.DeskOfShop;
import org.pumpwright.host.app.claim.PacketDesk;
import org.pumpwright.host.catalog.UnitModel;
import org.pumpwright.host.claim.Act;
import org.pumpwright.host.claim.Amount;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.ClaimIntake;
import org.pumpwright.host.claim.CustodyMove;
import org.pumpwright.host.claim.CustodyRules;
import org.pumpwright.host.claim.CustodyState;
import org.pumpwright.host.claim.Photo;
import org.pumpwright.host.claim.photo.PhotoFolder;
import org.pumpwright.host.claim.photo.Thumbnail;
import org.pumpwright.host.record.ledger.Digest;

/** The warranty desk: the claims in the shop, one of them with all that is known, and what is done to it. JavaFX thread only. */
public final class ClaimModel {
    private final Background background;
    private final DeskOfShop desk;
    private final Path packets;
    private final Opener opener;
    private final ObservableList<Row> rows = FXCollections.observableArrayList();
    private final ObservableList<Row> rowsShown = FXCollections.unmodifiableObservableList(rows);
    private final List<String> numbers = new ArrayList<>();
    private final ReadOnlyObjectWrapper<Word> headline = new ReadOnlyObjectWrapper<>(Word.NONE);
    private final ReadOnlyObjectWrapper<Optional<ClaimView>> shown = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ObservableList<Row> standing = FXCollections.observableArrayList();
    private final ObservableList<Row> standingShown = FXCollections.unmodifiableObservableList(standing);
    private final ObservableList<Row> weighed = FXCollections.observableArrayList();
    private final ObservableList<Row> weighedShown = FXCollections.unmodifiableObservableList(weighed);
    private final ReadOnlyObjectWrapper<List<Fact>> facts = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyBooleanWrapper busy = new ReadOnlyBooleanWrapper();
    private final ReadOnlyBooleanWrapper closedToo = new ReadOnlyBooleanWrapper();
    private final ReadOnlyObjectWrapper<Optional<Path>> packed = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final StringProperty person = new SimpleStringProperty("");
    private final IntakeForm form = new IntakeForm();

    /**
     * The desk of this shop.
     *
     * @param packets folder where packets go
     * @param opener shows them
     */
    public ClaimModel(Background background, DeskOfShop desk, Path packets, Opener opener) {
        this.background = background;
        this.desk = desk;
        this.packets = packets;
        this.opener = opener;
    }

    /** Lists the claims that are in the shop, by state, the oldest first. */
    public void list() {
        boolean all = closedToo.get();
        background.run(() -> Patience.ask(() -> lines(all), desk.store()), this::show, failure -> {
            headline.set(Word.of("ui.claim.away"));
            background.trouble(Trouble.of(failure));
        });
    }

    private List<ClaimList.Line> lines(boolean all) throws Exception {
        return desk.mayHold() ? desk.list().lines(today(), all) : List.of();
    }

    private LocalDate today() {
        return LocalDate.now(desk.clock());
    }

    private void show(List<ClaimList.Line> lines) {
        numbers.clear();
        lines.forEach(line -> numbers.add(line.file().number()));
        rows.setAll(lines.stream().map(ClaimRows::line).toList());
        headline.set(lines.isEmpty() ? Word.of("ui.claim.none") : Word.of("ui.claim.count", lines.size()));
    }

    /** Lists those that have left the shop too, or no more. */
    public void flipClosed() {
        closedToo.set(!closedToo.get());
        list();
    }

    /** Looks at the claim in this line of the list. */
    public void open(int line) {
        if (line >= 0 && line < numbers.size()) {
            open(numbers.get(line));
        }
    }

    /** Looks at the claim with this number. */
    public void open(String number) {
        busy.set(true);
        background.run(() -> Patience.ask(() -> view(number), desk.store()), this::seen, this::failed);
    }

    /** Does something, then looks at the claim again whose number comes of it. */
    private void work(Callable<String> deed, Consumer<ClaimView> done) {
        busy.set(true);
        background.run(
                () -> view(deed.call()),
                view -> {
                    seen(view);
                    done.accept(view);
                },
                this::failed);
    }

    private void seen(ClaimView view) {
        busy.set(false);
        show(view);
    }

    private void failed(Throwable failure) {
        busy.set(false);
        background.trouble(
                failure instanceof IllegalArgumentException
                        ? Trouble.named("order", String.valueOf(failure.getMessage()))
                        : Trouble.of(failure));
    }

    private ClaimView view(String number) throws Exception {
        ClaimReview.Reviewed reviewed = desk.review().of(number);
        ClaimFile file = reviewed.file();
        PhotoFolder folder = desk.photoFolder();
        Map<Digest, byte[]> small = new HashMap<>();
        for (Photo photo : file.photos()) {
            try {
                small.put(photo.sha256(), Thumbnail.png(folder.read(photo)));
            } catch (IOException e) {
                background.trouble(Trouble.named("order", String.valueOf(e.getMessage())));
            }
        }
        String product = file.intake().planter().product();
        return new ClaimView(
                reviewed, small, product.isEmpty() ? List.of() : desk.data().cautions(product));
    }

    private void show(ClaimView view) {
        packed.set(Optional.empty());
        standing.setAll(ClaimRows.of(view));
        weighed.setAll(ClaimRows.forDecision(view));
        facts.set(ClaimRows.facts(view));
        shown.set(Optional.of(view));
    }

    /** Back to the list. */
    public void back() {
        shown.set(Optional.empty());
        list();
    }

    private String number() {
        return shown.get().orElseThrow().file().number();
    }

    /** Puts the form on record: opens the claim, or completes the one it was filled from. */
    public void takeIn(Runnable done) {
        boolean corrects = form.corrects();
        ClaimIntake intake;
        try {
            intake = form.intake(OffsetDateTime.now(desk.clock()));
        } catch (IllegalArgumentException e) {
            background.trouble(Trouble.named("order", String.valueOf(e.getMessage())));
            return;
        }
        work(
                () -> corrects
                        ? desk.desk().correct(intake, "intake completed").number()
                        : desk.desk().open(intake).number(),
                view -> done.run());
    }

    /** The unit models that the shop knows. */
    public void models(Consumer<List<UnitModel>> found) {
        background.run(() -> desk.data().models(), found);
    }

    /** Adds a picture. */
    public void photo(Path file, Photo.Shows shows) {
        String claim = number();
        String by = person.get();
        work(() -> desk.photos().add(claim, file, shows, by).number(), view -> {});
    }

    /** Notes that somebody has rinsed the unit. */
    public void rinsed(int times) {
        String claim = number();
        String by = person.get();
        work(
                () -> desk.desk()
                        .act(claim, (file, now) -> new Act.Rinsed(by, times), Optional.empty())
                        .number(),
                view -> {});
    }

    /** Notes that the unit went on. */
    public void move(CustodyState to, String place) {
        String claim = number();
        String by = person.get();
        work(
                () -> desk.desk()
                        .act(
                                claim,
                                (file, now) -> {
                                    CustodyRules.check(file, to);
                                    return new Act.Moved(new CustodyMove(
                                            now,
                                            to,
                                            by,
                                            place,
                                            file.intake().unit().tag(),
                                            Optional.empty()));
                                },
                                Optional.empty())
                        .number(),
                view -> {});
    }

    /** Signs a finding. */
    public void find(FindingAsked asked, Runnable done) {
        String claim = number();
        work(() -> desk.decisions().find(claim, asked, Optional.empty()).number(), view -> done.run());
    }

    /** Signs a decision. */
    public void decide(DecisionAsked asked, Runnable done) {
        String claim = number();
        work(() -> desk.decisions().decide(claim, asked, Optional.empty()).number(), view -> done.run());
    }

    /** Whether this person measured, and so may not decide. */
    public boolean measured(String name) {
        String plain = name.strip().replaceAll("\\s+", " ");
        return shown.get().map(view -> view.file().testers().contains(plain)).orElse(false);
    }

    /** Packs the claim up. */
    public void pack(PacketDesk.Wishes wishes) {
        String claim = number();
        Path zip = packets.resolve(claim + ".zip");
        busy.set(true);
        background.run(
                () -> desk.packets().pack(claim, wishes, zip),
                reviewed -> {
                    busy.set(false);
                    packed.set(Optional.of(zip));
                },
                this::failed);
    }

    /** Opens the folder with the packet. */
    public void showPacket() {
        packed.get()
                .ifPresent(zip -> background.run(
                        () -> {
                            opener.open(packets);
                            return zip;
                        },
                        opened -> {},
                        failure -> background.trouble(Trouble.named("paper", zip.toString()))));
    }

    /**
     * An amount as it is typed; empty where nothing was.
     *
     * @throws OrderException when it is no amount
     */
    public static Optional<Amount> amount(String typed) throws OrderException {
        try {
            return typed.isBlank() ? Optional.empty() : Optional.of(Amount.of(typed));
        } catch (IllegalArgumentException e) {
            throw new OrderException(String.valueOf(e.getMessage()));
        }
    }

    /** Tells what a person has typed wrongly. */
    public void complain(Throwable about) {
        background.trouble(Trouble.of(about));
    }

    /** The claims, as lines. */
    public ObservableList<Row> rows() {
        return rowsShown;
    }

    /** How many there are. */
    public ReadOnlyObjectProperty<Word> headlineProperty() {
        return headline.getReadOnlyProperty();
    }

    /** The claim that is looked at; empty while the list is. */
    public ReadOnlyObjectProperty<Optional<ClaimView>> shownProperty() {
        return shown.getReadOnlyProperty();
    }

    /** What stands of it: decision, finding, runs, what to look at, what is missing, coverage. */
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

    /** Whether claims that left the shop are listed too. */
    public ReadOnlyBooleanProperty closedTooProperty() {
        return closedToo.getReadOnlyProperty();
    }

    /** The packet that was made last; empty when there is none of this claim. */
    public ReadOnlyObjectProperty<Optional<Path>> packedProperty() {
        return packed.getReadOnlyProperty();
    }

    /** Who is at the desk; signs and hands in. */
    public StringProperty personProperty() {
        return person;
    }

    /** The intake that is being filled in. */
    public IntakeForm form() {
        return form;
    }
}
