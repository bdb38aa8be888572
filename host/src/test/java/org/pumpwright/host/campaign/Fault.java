package org.pumpwright.host.campaign;

import java.util.List;
import java.util.Set;
import org.pumpwright.host.campaign.Scene.Strike;
import org.pumpwright.host.grade.Verdict;

/**
 * A fault and what is demanded of board and host when it is struck.
 *
 * @param sentence what happens, in words
 * @param host where the host runs
 * @param strike how it is done
 * @param bound how long anything may be driven afterwards
 * @param boardSays what the board's own events must be, a regular expression
 * @param verdicts what the record may conclude; empty where no record can be
 * @param recordSays what the record's reasons must say, a regular expression
 * @param losesSamples whether samples get lost on the line between others that arrive; the record must count them, and none
 *     where this is false
 * @param stages when it is struck
 */
record Fault(
        String sentence,
        Host host,
        Strike strike,
        Bound bound,
        String boardSays,
        Set<Verdict> verdicts,
        String recordSays,
        boolean losesSamples,
        List<Stage> stages) {

    /** Where the host runs. */
    enum Host {
        /** In the test, with a line on which waiting is counted in the board's time. */
        HERE,
        /** A process of its own, which runs the command line in real time. */
        PROCESS
    }

    /**
     * How long anything may be driven after the fault.
     *
     * @param words the time that is stated, and what it is made of
     * @param millis the same as a figure; below 0 where the fault must not stop the run
     */
    record Bound(String words, int millis) {
        boolean mustNotStop() {
            return millis < 0;
        }
    }

    /** The same, but samples get lost between others. */
    Fault losingSamples() {
        return new Fault(sentence, host, strike, bound, boardSays, verdicts, recordSays, true, stages);
    }

    @Override
    public String toString() {
        return sentence;
    }
}
