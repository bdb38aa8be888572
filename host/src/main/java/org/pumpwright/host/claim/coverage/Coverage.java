package org.pumpwright.host.claim.coverage;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.pumpwright.host.claim.Amount;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.CoverageAssessment;
import org.pumpwright.host.claim.CoverageAssessment.Holds;
import org.pumpwright.host.claim.CoverageAssessment.Line;
import org.pumpwright.host.claim.Finding;
import org.pumpwright.host.claim.Missing;
import org.pumpwright.host.claim.Sentence;
import org.pumpwright.host.claim.Source;
import org.pumpwright.host.claim.Sourced;
import org.pumpwright.host.claim.TimeInUse;
import org.pumpwright.host.claim.coverage.CoverageRules.Cap;
import org.pumpwright.host.claim.coverage.CoverageRules.Counted;
import org.pumpwright.host.claim.coverage.CoverageRules.CountedFrom;

/**
 * Looks at a claim by coverage rules. Says of every rule whether it holds and why; decides nothing. A day or a count that
 * nobody vouches for is not known. Thread-safe.
 */
public final class Coverage {
    private final CoverageRules rules;
    private final Circumstances about;
    private final ClaimFile file;
    private final LocalDate received;
    private final List<Line> lines = new ArrayList<>();

    private Coverage(CoverageRules rules, Circumstances about) {
        this.rules = rules;
        this.about = about;
        this.file = about.file();
        this.received = file.intake().received().toLocalDate();
    }

    /** What the rules say of the claim, as it stands now. */
    public static CoverageAssessment assess(CoverageRules rules, Circumstances about) {
        Coverage coverage = new Coverage(rules, about);
        coverage.period();
        rules.caps().forEach(coverage::cap);
        coverage.registration();
        coverage.consumables();
        rules.outOfBoxDays().ifPresent(coverage::outOfBox);
        rules.repeatDays().ifPresent(coverage::repeat);
        coverage.attachments();
        rules.secondSignerAbove().ifPresent(coverage::signatures);
        rules.goodwillBudget().ifPresent(coverage::goodwill);
        return new CoverageAssessment(rules.label(), coverage.lines);
    }

    private void period() {
        CoverageRules.Period period = rules.period();
        Optional<Sourced<LocalDate>> day = vouched(day(period.countedFrom()));
        if (day.isEmpty()) {
            say(
                    "period",
                    Holds.UNKNOWN,
                    Sentence.of("claim.because.no-day." + word(period.countedFrom())),
                    period.line());
            return;
        }
        LocalDate last = period.lastCovered(day.get().value());
        boolean early = received.isBefore(day.get().value());
        String key = period.seasons().isPresent() ? "claim.because.seasons." : "claim.because.months.";
        say(
                "period",
                early ? Holds.UNKNOWN : holds(!received.isAfter(last)),
                early
                        ? Sentence.of(
                                "claim.because.before-the-day",
                                received,
                                day.get().value())
                        : Sentence.of(
                                key + word(period.countedFrom()), day.get().value(), period.length(), last, received),
                period.line());
    }

    private Optional<Sourced<LocalDate>> day(CountedFrom from) {
        TimeInUse use = file.intake().use();
        return switch (from) {
            case SALE -> use.sold();
            case DELIVERY -> use.delivered();
            case FIRST_USE -> use.firstUsed();
        };
    }

    private void cap(Cap cap) {
        TimeInUse use = file.intake().use();
        Optional<Sourced<Double>> count = vouched(cap.counted() == Counted.HOURS ? use.hours() : use.acres());
        String what = word(cap.counted());
        if (count.isPresent()) {
            say(
                    what,
                    holds(count.get().value() <= cap.most()),
                    Sentence.of("claim.because.counted", number(count.get().value()), number(cap.most())),
                    cap.line());
            return;
        }
        Holds holds = switch (cap.ifUnknown()) {
            case HOLDS -> Holds.YES;
            case DOES_NOT_HOLD -> Holds.NO;
            case UNKNOWN -> Holds.UNKNOWN;
        };
        say(
                what,
                holds,
                Sentence.of("claim.because.not-counted." + word(cap.ifUnknown()), number(cap.most())),
                cap.line());
    }

    private void registration() {
        int line = rules.registration().line();
        if (!rules.registration().value()) {
            say("registration", Holds.YES, Sentence.of("claim.because.no-registration-needed"), line);
            return;
        }
        Optional<Boolean> registered = file.intake().use().registered();
        say(
                "registration",
                registered.map(Coverage::holds).orElse(Holds.UNKNOWN),
                Sentence.of(
                        registered.isEmpty()
                                ? "claim.because.registration-unknown"
                                : registered.get() ? "claim.because.registered" : "claim.because.not-registered"),
                line);
    }

    private void consumables() {
        int line = rules.consumables().line();
        List<String> parts = file.finding().map(Finding::parts).orElse(List.of());
        String listed = String.join(", ", rules.consumables().value());
        if (parts.isEmpty()) {
            say("consumables", Holds.UNKNOWN, Sentence.of("claim.because.no-part", listed), line);
            return;
        }
        String found = parts.stream()
                .filter(part -> rules.consumables().value().stream().anyMatch(part::equalsIgnoreCase))
                .collect(Collectors.joining(", "));
        say(
                "consumables",
                holds(found.isEmpty()),
                found.isEmpty()
                        ? Sentence.of("claim.because.no-consumable", String.join(", ", parts))
                        : Sentence.of("claim.because.consumable", found),
                line);
    }

    private void outOfBox(At<Integer> days) {
        TimeInUse use = file.intake().use();
        Optional<Sourced<LocalDate>> day = vouched(use.delivered()).or(() -> vouched(use.sold()));
        Optional<Boolean> unused = unused(use);
        if (day.isEmpty() || unused.isEmpty()) {
            say(
                    "out-of-box",
                    Holds.UNKNOWN,
                    Sentence.of("claim.because.out-of-box-unknown", days.value()),
                    days.line());
            return;
        }
        long passed = ChronoUnit.DAYS.between(day.get().value(), received);
        boolean holds = unused.get() && passed >= 0 && passed <= days.value();
        say(
                "out-of-box",
                holds(holds),
                Sentence.of(
                        unused.get() ? "claim.because.out-of-box-unused" : "claim.because.out-of-box-used",
                        passed,
                        days.value()),
                days.line());
    }

    private static Optional<Boolean> unused(TimeInUse use) {
        Optional<Double> hours = vouched(use.hours()).map(Sourced::value);
        Optional<Double> acres = vouched(use.acres()).map(Sourced::value);
        if (vouched(use.firstUsed()).isPresent()
                || hours.filter(count -> count > 0).isPresent()
                || acres.filter(count -> count > 0).isPresent()) {
            return Optional.of(false);
        }
        return hours.isPresent() || acres.isPresent() ? Optional.of(true) : Optional.empty();
    }

    private void repeat(At<Integer> days) {
        Optional<Circumstances.EarlierClaim> same = about.earlier().stream()
                .filter(each -> each.complaintCode()
                        .equalsIgnoreCase(file.intake().complaint().code()))
                .filter(each -> {
                    long passed = ChronoUnit.DAYS.between(each.returned(), received);
                    return passed >= 0 && passed <= days.value();
                })
                .findFirst();
        if (!file.intake().unit().hasSerial()) {
            say("repeat", Holds.UNKNOWN, Sentence.of("claim.because.repeat-no-serial"), days.line());
            return;
        }
        say(
                "repeat",
                holds(same.isPresent()),
                same.map(each -> Sentence.of("claim.because.repeat", each.claim(), each.returned(), days.value()))
                        .orElseGet(() -> Sentence.of("claim.because.no-repeat", days.value())),
                days.line());
    }

    private void attachments() {
        List<Missing> needed = rules.needed(file.intake().value());
        String lacking = needed.stream()
                .filter(file.missing()::contains)
                .map(Missing::word)
                .collect(Collectors.joining(", "));
        boolean byValue = file.intake().value().isEmpty() && rules.askForTheValue();
        say(
                "attachments",
                lacking.isEmpty() ? byValue ? Holds.UNKNOWN : Holds.YES : Holds.NO,
                lacking.isEmpty()
                        ? Sentence.of(byValue ? "claim.because.value-unknown" : "claim.because.attachments-there")
                        : Sentence.of("claim.because.attachments-missing", lacking),
                rules.attachments().isEmpty() ? 1 : rules.attachments().get(0).line());
    }

    private void signatures(At<Amount> limit) {
        Optional<Amount> value = file.intake().value();
        say(
                "one-signature",
                value.map(known -> holds(!rules.needsSecondSigner(known))).orElse(Holds.UNKNOWN),
                value.map(known -> Sentence.of(
                                "claim.because.value",
                                known.text(),
                                limit.value().text()))
                        .orElseGet(() -> Sentence.of("claim.because.value-unknown")),
                limit.line());
    }

    private void goodwill(At<Amount> budget) {
        long left = Math.max(0, budget.value().cents() - about.goodwillGiven().cents());
        Amount open = new Amount(left);
        Optional<Amount> value = file.intake().value();
        say(
                "goodwill-budget",
                value.map(known -> holds(known.compareTo(open) <= 0)).orElse(left > 0 ? Holds.UNKNOWN : Holds.NO),
                Sentence.of(
                        "claim.because.goodwill-left",
                        open.text(),
                        budget.value().text()),
                budget.line());
    }

    private void say(String rule, Holds holds, Sentence because, int line) {
        lines.add(new Line(rule, holds, because, rules.where(line)));
    }

    private static Holds holds(boolean yes) {
        return yes ? Holds.YES : Holds.NO;
    }

    private static <T> Optional<Sourced<T>> vouched(Optional<Sourced<T>> value) {
        return value.filter(each -> each.source() != Source.UNKNOWN);
    }

    private static String word(Enum<?> choice) {
        return choice.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** As it was written: without a needless point. */
    private static String number(double value) {
        return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
    }
}
