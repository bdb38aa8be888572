package org.pumpwright.host.ui;

import org.pumpwright.host.ui.work.StopPress;
import org.pumpwright.host.ui.work.Trouble;

/** What the window does for its screens. JavaFX thread only, but for {@link #stop}. */
public interface Frame {
    /** What the window says. */
    Saying saying();

    /** The way of STOP: what is registered there is stopped at once when somebody presses it. */
    StopPress stop();

    /** Brings a screen to the front; nothing happens when there is none for the moment. */
    void goTo(Moment moment);

    /** Asks the person something; takes the place of a question that still stands. */
    void ask(Prompt prompt);

    /** Takes the question away unanswered. */
    void withdraw();

    /** Shows trouble until somebody acknowledges it. */
    void trouble(Trouble trouble);

    /** Gives a cue to ear and eye. */
    void cue(Cue cue);
}
