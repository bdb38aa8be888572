package org.pumpwright.host.campaign;

import static org.pumpwright.host.campaign.Stage.COMING_BACK;
import static org.pumpwright.host.campaign.Stage.DWELLING;
import static org.pumpwright.host.campaign.Stage.PROVING;
import static org.pumpwright.host.campaign.Stage.RAMPING;
import static org.pumpwright.host.campaign.Stage.RESTING;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.pumpwright.host.campaign.Fault.Bound;
import org.pumpwright.host.campaign.Fault.Host;
import org.pumpwright.host.campaign.Scene.Strike;
import org.pumpwright.host.grade.Verdict;

/** The faults of the campaign, with what most of them share. */
final class FaultList {
    static final List<Stage> DRIVEN = List.of(RAMPING, DWELLING, COMING_BACK);
    static final List<Stage> ARMED = List.of(RESTING, RAMPING, DWELLING, COMING_BACK);
    static final List<Stage> LIVE = List.of(PROVING, RAMPING, DWELLING, COMING_BACK);

    static final Bound AT_ONCE = new Bound("0: with the reset itself", 5);
    static final Bound INPUT = new Bound("20", 20);
    static final Bound LINK = new Bound("770: link time-out 750, and 20", 770);
    static final Bound GOES_ON = new Bound("must not stop", -1);

    static final String BOARD_LINK_LOST = "started .*, armed, made safe LINK_LOST";
    static final String BOARD_WAS_ASKED = "started .*, armed, made safe HOST_ASKED";
    static final String ALL_INSIDE = "all 6 judged features lie inside their healthy ranges";
    static final Set<Verdict> INVALID = Set.of(Verdict.INVALID);

    private final List<Fault> faults = new ArrayList<>();

    private FaultList() {}

    static List<Fault> all() {
        FaultList list = new FaultList();
        BoardFaults.addTo(list);
        LineFaults.addTo(list);
        StandFaults.addTo(list);
        return List.copyOf(list.faults);
    }

    void add(Fault fault) {
        faults.add(fault);
    }

    static Strike command(String command) {
        return scene -> scene.command("%s", command);
    }

    /** A fault that neither stops the run nor touches what is judged. */
    void goesOn(String sentence, Strike strike) {
        goesOn(sentence, strike, BOARD_WAS_ASKED, Set.of(Verdict.PASS), ALL_INSIDE);
    }

    void goesOn(String sentence, Strike strike, String boardSays, Set<Verdict> verdicts, String recordSays) {
        faults.add(new Fault(sentence, Host.HERE, strike, GOES_ON, boardSays, verdicts, recordSays, false, DRIVEN));
    }

    void goesOnLosingSamples(String sentence, Strike strike) {
        goesOn(sentence, strike);
        faults.add(faults.remove(faults.size() - 1).losingSamples());
    }

    void add(String sentence, Strike strike, Bound bound, String boardSays, String recordSays, List<Stage> stages) {
        faults.add(new Fault(sentence, Host.HERE, strike, bound, boardSays, INVALID, recordSays, false, stages));
    }
}
