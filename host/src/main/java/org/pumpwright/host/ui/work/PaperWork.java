package org.pumpwright.host.ui.work;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import org.pumpwright.host.app.paper.Found;
import org.pumpwright.host.app.paper.NoPaperException;
import org.pumpwright.host.app.paper.PaperDesk;
import org.pumpwright.host.app.paper.PaperKind;

/** Has papers made and opened, and says in words of the window why there is none. JavaFX thread only. */
final class PaperWork {
    private final Background background;
    private final PaperDesk desk;
    private final Opener opener;
    private final ReadOnlyBooleanWrapper busy = new ReadOnlyBooleanWrapper();

    PaperWork(Background background, PaperDesk desk, Opener opener) {
        this.background = background;
        this.desk = desk;
        this.opener = opener;
    }

    /**
     * What a paper is made of.
     *
     * @param found the run or the bucket test
     * @param other the other run, for a retest
     */
    record Source(Found found, Optional<Found> other) {}

    private record Made(Path file, Optional<String> notOpened) {}

    /**
     * Makes a paper and opens it.
     *
     * @param source asked on a worker thread
     * @param made is told where the paper is
     */
    void open(PaperKind kind, Callable<Source> source, PaperDesk.Manner manner, Consumer<Path> made) {
        busy.set(true);
        background.run(
                () -> Patience.ask(() -> make(kind, source.call(), manner), desk.store(), Patience.PAPER),
                paper -> {
                    busy.set(false);
                    made.accept(paper.file());
                    paper.notOpened()
                            .ifPresent(why -> background.trouble(
                                    Trouble.named("paper", paper.file().toString())));
                },
                failure -> {
                    busy.set(false);
                    background.trouble(trouble(failure));
                });
    }

    private Made make(PaperKind kind, Source source, PaperDesk.Manner manner) throws Exception {
        Path file = desk.make(kind, source.found(), source.other(), manner);
        try {
            opener.open(file);
            return new Made(file, Optional.empty());
        } catch (Exception e) {
            return new Made(file, Optional.of(String.valueOf(e.getMessage())));
        }
    }

    /** Opens what is there already. */
    static void open(Background background, Opener opener, Path file) {
        background.run(
                () -> {
                    opener.open(file);
                    return file;
                },
                opened -> {},
                failure -> background.trouble(Trouble.named("paper", file.toString())));
    }

    /** Which paper was opened. */
    static Word opened(Path file) {
        return Word.of("ui.verdict.opened", file.getFileName());
    }

    /** Why there is no paper. */
    static Trouble trouble(Throwable failure) {
        return failure instanceof NoPaperException none
                ? Trouble.named("paper_" + none.reason().word(), String.valueOf(none.getMessage()))
                : Trouble.of(failure);
    }

    /** True while one is made. */
    ReadOnlyBooleanProperty busyProperty() {
        return busy.getReadOnlyProperty();
    }
}
