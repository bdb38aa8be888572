package org.pumpwright.host.ui.work;

import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.pumpwright.host.app.claim.ClaimDesk;
import org.pumpwright.host.app.claim.DecisionDesk.DecisionAsked;
import org.pumpwright.host.app.claim.DecisionDesk.FindingAsked;
import org.pumpwright.host.app.claim.DeskOfShop;
import org.pumpwright.host.catalog.UnitModel;
import org.pumpwright.host.claim.Act;
import org.pumpwright.host.claim.ClaimIntake;
import org.pumpwright.host.claim.CustodyMove;
import org.pumpwright.host.claim.CustodyRules;
import org.pumpwright.host.claim.CustodyState;
import org.pumpwright.host.claim.Observation;
import org.pumpwright.host.claim.Observation.Seen;
import org.pumpwright.host.claim.Photo;
import org.pumpwright.host.claim.Waiver;

/** What the desk does to the claim that is looked at; each act becomes one entry on record, by the person at the desk. JavaFX thread only. */
public final class ClaimDeeds {
    private final Background background;
    private final DeskOfShop desk;
    private final ClaimModel model;

    ClaimDeeds(Background background, DeskOfShop desk, ClaimModel model) {
        this.background = background;
        this.desk = desk;
        this.model = model;
    }

    /** Puts the form on record: opens the claim, or takes the place of the intake it was filled from. */
    public void takeIn(IntakeForm form, Runnable done) {
        boolean corrects = form.corrects();
        String why = form.why();
        ClaimIntake intake;
        try {
            intake = form.intake(OffsetDateTime.now(desk.clock()));
        } catch (IllegalArgumentException e) {
            background.trouble(Trouble.named("order", String.valueOf(e.getMessage())));
            return;
        }
        model.work(
                () -> corrects
                        ? desk.desk().correct(intake, why).number()
                        : desk.desk().open(intake).number(),
                done);
    }

    /** The unit models that the shop knows. */
    public void models(Consumer<List<UnitModel>> found) {
        background.run(() -> desk.data().models(), found);
    }

    /** Adds a picture. */
    public void photo(Path file, Photo.Shows shows, Runnable done) {
        String claim = model.number();
        String by = model.person();
        model.work(() -> desk.photos().add(claim, file, shows, by).number(), done);
    }

    /** Notes that somebody has rinsed the unit, or made sure that it is clean. */
    public void rinsed(int times, Runnable done) {
        String by = model.person();
        act((file, now) -> new Act.Rinsed(by, times), Optional.empty(), done);
    }

    /**
     * Notes what was seen.
     *
     * @param corrects why it takes the place of the last note; empty for a new one
     */
    public void note(Seen seen, String words, Optional<String> corrects, Runnable done) {
        String by = model.person();
        act((file, now) -> new Act.Observed(new Observation(seen, words, by, now)), corrects, done);
    }

    /** Lets the unit be tested although nobody has confirmed that it is clean; the person answers for it. */
    public void waive(String reason, Runnable done) {
        String by = model.person();
        act(
                (file, now) -> new Act.Waived(new Waiver(Waiver.Step.DECONTAMINATION, by, reason, now)),
                Optional.empty(),
                done);
    }

    /**
     * Where a unit goes.
     *
     * @param place where it stands
     * @param tag number of a new tag; empty when it keeps the one it has
     * @param colour its colour; empty when none is told
     */
    public record Move(CustodyState to, String place, String tag, Optional<String> colour) {}

    /** Notes that the unit went on. */
    public void move(Move asked) {
        String by = model.person();
        act(
                (file, now) -> {
                    CustodyRules.check(file, asked.to());
                    String tag = asked.tag().isBlank() ? file.intake().unit().tag() : asked.tag();
                    return new Act.Moved(new CustodyMove(now, asked.to(), by, asked.place(), tag, asked.colour()));
                },
                Optional.empty(),
                () -> {});
    }

    /**
     * Signs a finding.
     *
     * @param corrects why it takes the place of the last one; empty for the first
     */
    public void find(FindingAsked asked, Optional<String> corrects, Runnable done) {
        String claim = model.number();
        model.work(() -> desk.decisions().find(claim, asked, corrects).number(), done);
    }

    /**
     * Signs a decision.
     *
     * @param corrects why it takes the place of the last one; empty for the first
     */
    public void decide(DecisionAsked asked, Optional<String> corrects, Runnable done) {
        String claim = model.number();
        model.work(() -> desk.decisions().decide(claim, asked, corrects).number(), done);
    }

    private void act(ClaimDesk.Deed deed, Optional<String> corrects, Runnable done) {
        String claim = model.number();
        model.work(() -> desk.desk().act(claim, deed, corrects).number(), done);
    }
}
