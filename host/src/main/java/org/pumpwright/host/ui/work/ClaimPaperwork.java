package org.pumpwright.host.ui.work;

import java.nio.file.Path;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.claim.DeskOfShop;
import org.pumpwright.host.app.claim.PacketDesk;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.record.ledger.StoreException;

/** The papers of the claim that is looked at: single ones to look at and to print, and the packet of all. JavaFX thread only. */
public final class ClaimPaperwork {
    private final Background background;
    private final DeskOfShop desk;
    private final ClaimModel model;
    private final Path folder;
    private final Opener opener;
    private final ReadOnlyObjectWrapper<Optional<Path>> packed = new ReadOnlyObjectWrapper<>(Optional.empty());

    ClaimPaperwork(Background background, DeskOfShop desk, ClaimModel model, Path folder, Opener opener) {
        this.background = background;
        this.desk = desk;
        this.model = model;
        this.folder = folder;
        this.opener = opener;
    }

    /** Makes a paper and shows it. */
    public void show(PacketDesk.Which which, PacketDesk.Wishes wishes) {
        String claim = model.number();
        model.busy(true);
        background.run(
                () -> {
                    Path paper = desk.packets().make(claim, which, wishes, folder);
                    opener.open(paper);
                    return paper;
                },
                opened -> model.busy(false),
                this::noPaper);
    }

    private void noPaper(Throwable failure) {
        if (failure instanceof OrderException
                || failure instanceof StoreException
                || failure instanceof DataFileException) {
            model.failed(failure);
        } else {
            model.busy(false);
            background.trouble(Trouble.named("paper", folder.toString()));
        }
    }

    /** Packs the claim up. */
    public void pack(PacketDesk.Wishes wishes) {
        String claim = model.number();
        Path zip = folder.resolve(claim + ".zip");
        model.busy(true);
        background.run(
                () -> desk.packets().pack(claim, wishes, zip),
                reviewed -> {
                    model.busy(false);
                    packed.set(Optional.of(zip));
                },
                model::failed);
    }

    /** Another claim is looked at: there is no packet of it. */
    void forget() {
        packed.set(Optional.empty());
    }

    /** Opens the packet. */
    public void openPacket() {
        packed.get().ifPresent(this::open);
    }

    /** Opens the folder with the packet. */
    public void openFolder() {
        packed.get().ifPresent(zip -> open(folder));
    }

    private void open(Path what) {
        PaperWork.open(background, opener, what);
    }

    /** The packet that was made last; empty when there is none of this claim. */
    public ReadOnlyObjectProperty<Optional<Path>> packedProperty() {
        return packed.getReadOnlyProperty();
    }
}
