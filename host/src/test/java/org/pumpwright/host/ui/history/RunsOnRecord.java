package org.pumpwright.host.ui.history;

import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pumpwright.host.app.Acceptance;
import org.pumpwright.host.app.RunWatcher;
import org.pumpwright.host.app.Stands;
import org.pumpwright.host.ui.BenchServices;
import org.pumpwright.host.ui.WindowTest;

/** Simulated runs put on record, for tests of what is shown of them. */
public final class RunsOnRecord {
    private RunsOnRecord() {}
}
