package org.pumpwright.host.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.pumpwright.host.bench.EmulatedBoard;
import org.pumpwright.host.bench.TestStands;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.record.sql.OwnPostgresql;
import org.pumpwright.host.record.sql.SmallDisk;
import org.pumpwright.host.trace.Ending;

/** A board, a server and a disk that fail in the middle of a run: a clear banner, a run that is kept, a window that goes on. */
@Timeout(600)
final class TroubledRunsTest extends JourneyTest {
    private static final double PACE = 8;
    private static final int MEGABYTES = 8;

    private static EmulatedBoard board() {
        return EmulatedBoard.inLockstep(
                TestStands.healthyPump(), TestStands.described("serial").channels());
    }

    @Test
    void aBoardThatLosesItsPowerCostsTheRunAndNothingElse() throws Exception {
        Path records = folder.resolve("records");
        AtomicReference<EmulatedBoard> board = new AtomicReference<>(board());
        try {
            open(records, Optional.empty(), board.get().port(), (port, baud) -> {
                EmulatedBoard now = board.get();
                return now.line(now.port(), baud);
            });
            job.upToTheRun("SN-1");
            job.awaitMeasuring();
            board.get().kill();

            job.awaitEnd();
            assertThat(hands.understandAll())
                    .anySatisfy(said -> assertThat(said)
                            .contains("The run ended before its time and says nothing about the unit")
                            .contains("the port went away. Check the cable and the board's supply"));
            RunRecord run = onlyRun(records, Verdict.INVALID);
            assertThat(run.ending().kind()).isEqualTo(Ending.Kind.STAND_LOST);
            assertThat(run.trace().samples()).hasSizeGreaterThan(10);

            EmulatedBoard lost = board.getAndSet(board());
            lost.close();
            job.whole("SN-2");
            hands.awaitWords("SN-2");
            hands.awaitWords("PASS");
            assertHistoryHas("SN-1", "SN-2");
        } finally {
            board.get().close();
        }
    }

    @Test
    void aServerThatIsKilledDuringTheRunGetsItLater() throws Exception {
        Path records = folder.resolve("records");
        try (OwnPostgresql server = OwnPostgresql.start()) {
            String store = server.address(server.newDatabase()) + "?user=" + OwnPostgresql.USER;
            open(records, Optional.of(store), "port", (port, baud) -> healthy(PACE));
            job.whole("SN-1");
            assertHistoryHas("SN-1");
            job.upToTheRun("SN-2");
            job.awaitMeasuring();
            server.kill();

            job.awaitEnd();
            hands.awaitWords("The records can't be reached");
            assertThat(hands.understandAll())
                    .anySatisfy(said -> assertThat(said).contains("Tests go on and are put on record later."));
            assertThat(kept(records)).hasSize(2).allMatch(run -> run.grade().verdict() == Verdict.PASS);
            job.toVerdict();
            hands.awaitWords("SN-2");
            hands.awaitWords("PASS");

            server.startAgain();
            job.whole("SN-3");
            assertHistoryHas("SN-1", "SN-2", "SN-3");
            closeBench();
        }
    }

    @Test
    void aDiskThatFillsUpDuringTheRunSendsItToTheSpareFolder() throws Exception {
        try (SmallDisk disk = SmallDisk.mount(folder.resolve("disk"), MEGABYTES)) {
            Path records = disk.folder().resolve("records");
            open(records, Optional.empty(), "port", (port, baud) -> healthy(PACE));
            job.upToTheRun("SN-1");
            job.awaitMeasuring();
            Path filling = disk.fill();

            job.awaitEnd();
            hands.awaitWords("A record can't be read or kept");
            hands.awaitWords(folder.resolve("spare").toString());
            RunRecord run = onlyRun(folder.resolve("spare"), Verdict.PASS);
            assertThat(run.subject().serial()).isEqualTo("SN-1");
            job.toVerdict();
            hands.awaitWords("SN-1");
            hands.awaitWords("PASS");

            Files.delete(filling);
            hands.understandAll();
            job.whole("SN-2");
            assertHistoryHas("SN-1", "SN-2");
            closeBench();
        }
    }

    private static RunRecord onlyRun(Path where, Verdict verdict) throws Exception {
        List<RunRecord> runs = kept(where);
        assertThat(runs).hasSize(1);
        assertThat(runs.get(0).grade().verdict()).isEqualTo(verdict);
        return runs.get(0);
    }

    private void assertHistoryHas(String... serials) throws Exception {
        hands.goTo(Moment.HISTORY);
        hands.await("runs on record", () -> {
            boolean all = Stream.of(serials).allMatch(hands::reads);
            // A store that is slow is entered meanwhile: whoever looks again sees it.
            if (!all && hands.reads("Nothing on record fits")) {
                window().goTo(Moment.RECEIVE);
                window().goTo(Moment.HISTORY);
            }
            return all;
        });
    }
}
