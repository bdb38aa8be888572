package org.pumpwright.host.cli;

import java.util.Optional;
import org.pumpwright.host.app.Regrading;

/** Tells how stored runs are judged again. */
interface RegradeFace extends Regrading.Listener {
    /**
     * All is told.
     *
     * @param stopped why it ended early; empty when every file had its turn
     */
    void over(RegradeTally tally, Optional<String> stopped);
}
