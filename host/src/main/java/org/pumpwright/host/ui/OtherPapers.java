package org.pumpwright.host.ui;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.pumpwright.host.app.paper.PaperDesk;
import org.pumpwright.host.app.paper.PaperKind;

/** Asks which of the papers of a run is to be made that are wanted now and then. JavaFX thread only. */
public final class OtherPapers {
    private OtherPapers() {}

    /**
     * Asks.
     *
     * @param claim whether the run belongs to a claim
     * @param wanted takes the answer
     */
    public static void ask(Frame frame, boolean claim, Consumer<PaperKind> wanted) {
        Saying saying = frame.saying();
        frame.ask(new Prompt(
                saying.text("ui.papers.which"),
                saying.text(claim ? "ui.papers.which.claim" : "ui.papers.which.text"),
                Optional.empty(),
                List.of(
                        Action.of(saying.text("ui.papers.customer"), () -> wanted.accept(PaperKind.CUSTOMER))
                                .asNext(),
                        claim
                                ? Action.of(saying.text("ui.papers.clerk"), () -> wanted.accept(PaperKind.CLERK))
                                : Action.nothing(),
                        Action.of(saying.text("ui.papers.factory"), () -> wanted.accept(PaperKind.FACTORY)),
                        Action.nothing(),
                        Action.nothing(),
                        Action.of(saying.text("ui.cancel"), () -> {}))));
    }

    /** Papers in the language and the units of the moment. */
    public static PaperDesk.Manner manner(Saying saying) {
        return new PaperDesk.Manner(
                saying.languageProperty().get(), saying.unitsProperty().get());
    }
}
