package org.pumpwright.host.run;

/** Hears what a run tells. Called on the run thread; must return soon, because the run waits for it. */
@FunctionalInterface
public interface RunListener {
    /** Hears one event. */
    void heard(RunEvent event);
}
