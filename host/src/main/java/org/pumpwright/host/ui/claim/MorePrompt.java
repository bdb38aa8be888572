package org.pumpwright.host.ui.claim;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.pumpwright.host.claim.ClaimRun;
import org.pumpwright.host.ui.Action;
import org.pumpwright.host.ui.Frame;
import org.pumpwright.host.ui.Pick;
import org.pumpwright.host.ui.Prompt;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.work.ClaimModel;
import org.pumpwright.host.ui.work.ClaimView;
import org.pumpwright.host.ui.work.Mark;
import org.pumpwright.host.ui.work.Row;
import org.pumpwright.host.ui.work.Word;

/** What is done to a claim less often: corrections, papers, its runs. JavaFX thread only. */
final class MorePrompt {
    private final Frame frame;
    private final Saying saying;
    private final ClaimModel model;
    private final ClaimPane.Routes routes;
    private final PapersPrompt papers;

    MorePrompt(Frame frame, ClaimModel model, ClaimPane.Routes routes, PapersPrompt papers) {
        this.frame = frame;
        this.saying = frame.saying();
        this.model = model;
        this.routes = routes;
        this.papers = papers;
    }

    void ask() {
        ClaimView view = model.shownProperty().get().orElseThrow();
        boolean found = view.file().finding().isPresent();
        boolean decided = view.file().decision().isPresent();
        frame.ask(new Prompt(
                saying.text("ui.claim.more.ask"),
                saying.text("ui.claim.more.text"),
                Optional.empty(),
                List.of(
                        Action.of(saying.text("ui.claim.papers"), papers::ask).asNext(),
                        Action.of(saying.text("ui.claim.correct"), routes::intake),
                        view.runs().isEmpty()
                                ? Action.nothing()
                                : Action.of(saying.text("ui.claim.see_run"), () -> seeRun(view.runs())),
                        Action.of(saying.text(found ? "ui.claim.find_again" : "ui.claim.find"), routes::find),
                        found
                                ? Action.of(
                                        saying.text(decided ? "ui.claim.decide_again" : "ui.claim.decide"),
                                        routes::decide)
                                : Action.nothing(),
                        Action.of(saying.text("ui.cancel"), () -> {}))));
    }

    private void seeRun(List<ClaimRun> runs) {
        if (runs.size() == 1) {
            routes.seeRun(runs.get(0));
            return;
        }
        List<Row> rows = runs.stream()
                .map(run -> new Row(
                        Word.of("ui.claim.run.line", run.startedAt().toLocalDate(), run.plan(), run.technician()),
                        Mark.UNKNOWN,
                        Word.of("verdict." + run.verdict().name().toLowerCase(Locale.ROOT)),
                        Word.NONE))
                .toList();
        Pick.one(frame, "ui.claim.runs.ask", rows, place -> routes.seeRun(runs.get(place)));
    }
}
