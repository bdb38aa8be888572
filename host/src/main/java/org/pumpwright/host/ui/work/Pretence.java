package org.pumpwright.host.ui.work;

import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.stand.StandDescription.Connection;

/** Says of a run that it is no test of a real part, and why. Thread-safe. */
final class Pretence {
    private Pretence() {}

    /** Why a run of this unit on this stand is only pretended; {@link Word#NONE} when everything is real. */
    static Word of(WorkOrder order, StandDescription stand) {
        if (order.practice().isPresent()) {
            return Word.of("ui.pretence.practice");
        }
        if (stand.connection() instanceof Connection.Simulated) {
            return Word.of("ui.pretence.stand");
        }
        return order.model().invented() ? Word.of("ui.pretence.model") : Word.NONE;
    }

    /** That a run on record was only pretended; {@link Word#NONE} when everything was real. */
    static Word of(RunRecord run) {
        return recorded(run.subject().practice());
    }

    /** That something on record was only pretended, as its record says. */
    static Word recorded(boolean practice) {
        return practice ? Word.of("ui.pretence.record") : Word.NONE;
    }
}
