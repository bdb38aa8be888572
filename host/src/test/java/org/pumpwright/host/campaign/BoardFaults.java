package org.pumpwright.host.campaign;

import static org.pumpwright.host.campaign.FaultList.ALL_INSIDE;
import static org.pumpwright.host.campaign.FaultList.ARMED;
import static org.pumpwright.host.campaign.FaultList.AT_ONCE;
import static org.pumpwright.host.campaign.FaultList.DRIVEN;
import static org.pumpwright.host.campaign.FaultList.INPUT;
import static org.pumpwright.host.campaign.FaultList.LIVE;
import static org.pumpwright.host.campaign.Stage.PROVING;
import static org.pumpwright.host.campaign.Stage.SAFE;

import java.util.List;
import java.util.Set;
import org.pumpwright.host.campaign.Fault.Bound;
import org.pumpwright.host.grade.Verdict;

/** Faults of the board itself and of its contactor. */
final class BoardFaults {
    private final FaultList list;

    private BoardFaults(FaultList list) {
        this.list = list;
    }

    static void addTo(FaultList list) {
        BoardFaults all = new BoardFaults(list);
        all.resets();
        all.contactor();
    }

    private void resets() {
        reset("external reset", "reset", "external");
        reset("restart by the watchdog", "restart", "watchdog");
        reset("brown-out", "brown-out", "brown-out");
        list.add(
                "the program hangs",
                FaultList.command("hang"),
                new Bound("276: watchdog 256, and 20", 276),
                "started watchdog",
                "started anew \\(watchdog\\)",
                DRIVEN);
        list.add(
                "the chip stands still for 2 s, its clock too",
                FaultList.command("freeze 2000"),
                new Bound("2770: link time-out 750 once it runs again, and 20", 2770),
                "started .*, armed, made safe (LINK_LOST|HOST_ASKED)",
                "no sample for 500 ms|did not answer",
                DRIVEN);
    }

    /** In the first moments of proving the reset takes the answer to the arm with it. */
    private void reset(String sentence, String command, String cause) {
        list.add(
                sentence,
                FaultList.command(command),
                AT_ONCE,
                "started " + cause,
                "started anew \\(" + cause + "\\)|did not answer 'arm'",
                LIVE);
    }

    private void contactor() {
        list.add(
                "the contactor's feedback opens",
                FaultList.command("feedback 0"),
                INPUT,
                "started .*, armed, made safe CONTACTOR",
                "the contactor opened by itself",
                ARMED);
        list.add(
                "the contactor's feedback never closes",
                FaultList.command("feedback 0"),
                new Bound("220: proof 200, and 20", 220),
                "started .*, made safe CONTACTOR",
                "the contactor did not close",
                List.of(PROVING));
        list.goesOn(
                "the contactor's feedback stays closed",
                FaultList.command("feedback 1"),
                "started .*, armed, made safe HOST_ASKED, locked HARDWARE",
                Set.of(Verdict.PASS),
                ALL_INSIDE + "; after it the board locked itself: the contactor may be stuck");
        list.add(
                "the contactor's feedback is closed before the run",
                FaultList.command("feedback 1"),
                INPUT,
                "started .*",
                "refused 'arm'.*contactor",
                List.of(SAFE));
    }
}
