package org.pumpwright.host.ui.work;

import java.nio.file.Path;

/** Opens a paper for a person to look at or to print. Called on a worker thread. */
@FunctionalInterface
public interface Opener {
    /**
     * Opens it with the program that the machine has for it, and does not wait for that to end.
     *
     * @throws Exception when there is none
     */
    void open(Path paper) throws Exception;
}
