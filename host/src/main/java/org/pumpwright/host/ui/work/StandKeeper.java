package org.pumpwright.host.ui.work;

import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.StandException.Trouble;

/**
 * Listens to a stand and does not give it up: when it is lost, it is looked for again and again until it is back. Confined to one worker
 * thread.
 */
final class StandKeeper implements Background.Watch {
    private static final long LOOK_AGAIN_MILLIS = 1000;

    private final Callable<StandWatch> opener;
    private final Consumer<StandException> lost;
    private @Nullable StandWatch watch;

    private StandKeeper(Callable<StandWatch> opener, Consumer<StandException> lost) {
        this.opener = opener;
        this.lost = lost;
    }

    /**
     * Reaches the stand for the first time.
     *
     * @param opener reaches it, each time anew
     * @param lost hears of each loss, on the worker thread
     * @throws Exception when it is not there to begin with
     */
    static StandKeeper opened(Callable<StandWatch> opener, Consumer<StandException> lost) throws Exception {
        StandKeeper keeper = new StandKeeper(opener, lost);
        keeper.watch = opener.call();
        return keeper;
    }

    @Override
    public void once() throws Exception {
        StandWatch heard = watch;
        if (heard == null) {
            TimeUnit.MILLISECONDS.sleep(LOOK_AGAIN_MILLIS);
            lookAgain();
            return;
        }
        try {
            heard.once();
        } catch (StandException e) {
            if (e.trouble() == Trouble.INTERRUPTED) {
                throw e;
            }
            watch = null;
            heard.close();
            lost.accept(e);
        }
    }

    private void lookAgain() throws Exception {
        try {
            watch = opener.call();
        } catch (StandException e) {
            if (e.trouble() == Trouble.INTERRUPTED) {
                throw e;
            }
            watch = null;
        } catch (OrderException e) {
            // No board answers yet; what was lost has been told.
            watch = null;
        }
    }

    @Override
    public void close() {
        StandWatch heard = watch;
        if (heard != null) {
            heard.close();
        }
    }
}
