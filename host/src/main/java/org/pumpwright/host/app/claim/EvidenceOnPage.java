package org.pumpwright.host.app.claim;

import java.util.List;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.ClaimRun;
import org.pumpwright.host.claim.CustodyMove;
import org.pumpwright.host.claim.Observation;
import org.pumpwright.host.claim.Photo;

/** What happened to a unit and what was seen of it, as sections of the claim's text page. Thread-safe. */
final class EvidenceOnPage {
    private static final int DIGITS_OF_A_DIGEST = 16;

    private EvidenceOnPage() {}

    static void add(PageText page, ClaimFile file) {
        page.section("Custody", file.moves().stream().map(EvidenceOnPage::move).toList());
        page.section("Photos", file.photos().stream().map(EvidenceOnPage::photo).toList());
        page.section(
                "Seen", file.observations().stream().map(EvidenceOnPage::seen).toList());
        page.section("Gone past", gonePast(file));
        page.section("Runs", file.runs().stream().map(EvidenceOnPage::run).toList());
    }

    private static String move(CustodyMove move) {
        return "%s  %-18s %s, %s%s%s"
                .formatted(
                        move.at(),
                        PageText.say(move.to().key()),
                        move.person(),
                        move.place(),
                        move.tag().isEmpty() ? "" : ", tag " + move.tag(),
                        move.colour().map(word -> ", " + word).orElse(""));
    }

    private static String photo(Photo photo) {
        return "%-14s %s, %s, %s"
                .formatted(
                        PageText.say(photo.shows().key()),
                        photo.takenAt(),
                        PageText.say(photo.by().key()),
                        photo.sha256().hex().substring(0, DIGITS_OF_A_DIGEST));
    }

    private static String seen(Observation each) {
        return "%s%s (%s, %s)"
                .formatted(
                        PageText.say(each.seen().key()),
                        each.words().isEmpty() ? "" : ": " + each.words(),
                        each.person(),
                        each.at().toLocalDate());
    }

    private static List<String> gonePast(ClaimFile file) {
        return file.waivers().stream()
                .map(each -> "%s: %s, %s".formatted(PageText.say(each.step().key()), each.person(), each.reason()))
                .toList();
    }

    private static String run(ClaimRun run) {
        return "%s  %-13s %s, %s%s"
                .formatted(
                        run.run(),
                        run.verdict(),
                        run.plan(),
                        run.technician(),
                        run.regradedFrom()
                                .map(first -> ", graded again of " + first)
                                .orElse(""));
    }
}
