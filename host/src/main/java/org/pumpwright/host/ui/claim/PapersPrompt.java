package org.pumpwright.host.ui.claim;

import java.util.List;
import java.util.Optional;
import org.pumpwright.host.app.claim.PacketDesk;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.report.pdf.Sheet;
import org.pumpwright.host.ui.Action;
import org.pumpwright.host.ui.Frame;
import org.pumpwright.host.ui.Prompt;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.work.ClaimModel;

/** Asks which paper of a claim is wanted, or whether it is packed up, and tells where the packet is. JavaFX thread only. */
final class PapersPrompt {
    private final Frame frame;
    private final Saying saying;
    private final ClaimModel model;

    PapersPrompt(Frame frame, ClaimModel model) {
        this.frame = frame;
        this.saying = frame.saying();
        this.model = model;
        model.papers()
                .packedProperty()
                .addListener((observed, old, now) -> now.ifPresent(zip -> packed(zip.toString())));
    }

    void ask() {
        boolean tested = !model.shownProperty().get().orElseThrow().runs().isEmpty();
        frame.ask(new Prompt(
                saying.text("ui.claim.papers.ask"),
                saying.text("ui.claim.papers.text"),
                Optional.empty(),
                List.of(
                        Action.of(saying.text("ui.claim.papers.clerk"), () -> show(PacketDesk.Which.CLERK))
                                .asNext(),
                        tested
                                ? Action.of(
                                        saying.text("ui.claim.papers.customer"), () -> show(PacketDesk.Which.CUSTOMER))
                                : Action.nothing(),
                        Action.of(saying.text("ui.claim.packet.without"), () -> pack(false)),
                        Action.of(saying.text("ui.claim.packet.with"), () -> pack(true)),
                        Action.nothing(),
                        Action.of(saying.text("ui.cancel"), () -> {}))));
    }

    private void show(PacketDesk.Which which) {
        model.papers().show(which, wishes(true));
    }

    private void pack(boolean withCustomer) {
        model.papers().pack(wishes(withCustomer));
    }

    private PacketDesk.Wishes wishes(boolean withCustomer) {
        Sheet sheet = saying.unitsProperty().get() == UnitSystem.US ? Sheet.LETTER : Sheet.A4;
        return new PacketDesk.Wishes(withCustomer, saying.languageProperty().get(), sheet);
    }

    private void packed(String zip) {
        frame.ask(new Prompt(
                saying.text("ui.claim.packed"),
                saying.text("ui.claim.packed.text", zip),
                Optional.empty(),
                List.of(
                        Action.of(saying.text("ui.claim.packed.good"), () -> {}).asNext(),
                        Action.of(
                                saying.text("ui.claim.packed.open"),
                                () -> model.papers().openPacket()),
                        Action.of(
                                saying.text("ui.claim.packed.folder"),
                                () -> model.papers().openFolder()))));
    }
}
