package org.pumpwright.host.stand.conform;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Duration;
import org.pumpwright.host.bench.BoardProcess;

/** Provokes a test board by the commands that it reads from its standard input. */
final class CommandProvoker implements Provoker {
    private final BoardProcess board;

    CommandProvoker(BoardProcess board) {
        this.board = board;
    }

    @Override
    public boolean can(Provocation.Cause cause) {
        return true;
    }

    @Override
    public void provoke(Provocation what) {
        try {
            board.say(what.command());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public Duration patience() {
        return Duration.ofMillis(100);
    }

    @Override
    public boolean toy() {
        return true;
    }
}
