package org.pumpwright.host.campaign;

import static org.pumpwright.host.campaign.FaultList.BOARD_LINK_LOST;
import static org.pumpwright.host.campaign.FaultList.BOARD_WAS_ASKED;
import static org.pumpwright.host.campaign.FaultList.DRIVEN;
import static org.pumpwright.host.campaign.FaultList.INVALID;
import static org.pumpwright.host.campaign.FaultList.LINK;

import java.util.Set;
import org.pumpwright.host.campaign.Fault.Bound;
import org.pumpwright.host.campaign.Fault.Host;
import org.pumpwright.host.campaign.Scene.Strike;

/** Faults of the line and of the host at its other end. */
final class LineFaults {
    private static final Bound HOST_GIVES_UP = new Bound(
            "1000: the host hears nothing for 500, or no answer three times for 200, and asks for safe", 1000);

    private static final String LINK_LOST = "the board heard nothing from the program for 750 ms|did not answer";

    private final FaultList list;

    private LineFaults(FaultList list) {
        this.list = list;
    }

    static void addTo(FaultList list) {
        LineFaults all = new LineFaults(list);
        all.line();
        all.host();
    }

    private void line() {
        for (int n : new int[] {7, 50, 500}) {
            toBoard(n);
            fromBoard(n);
            bothWays(n);
        }
    }

    private void toBoard(int n) {
        String sentence = "every %dth byte to the board corrupted".formatted(n);
        if (n == 7) {
            list.add(sentence, FaultList.command("corrupt-rx " + n), LINK, BOARD_LINK_LOST, LINK_LOST, DRIVEN);
        } else {
            list.goesOn(sentence, FaultList.command("corrupt-rx " + n));
        }
    }

    private void fromBoard(int n) {
        String sentence = "every %dth byte from the board corrupted".formatted(n);
        if (n == 500) {
            list.goesOnLosingSamples(sentence, FaultList.command("corrupt-tx " + n));
        } else {
            list.add(
                    sentence,
                    FaultList.command("corrupt-tx " + n),
                    HOST_GIVES_UP,
                    BOARD_WAS_ASKED,
                    "no sample for 500 ms|did not answer",
                    DRIVEN);
        }
    }

    private void bothWays(int n) {
        Strike strike = scene -> {
            scene.command("drop-rx %d", n);
            scene.command("drop-tx %d", n);
        };
        String sentence = "every %dth byte lost, both ways".formatted(n);
        if (n == 500) {
            list.goesOnLosingSamples(sentence, strike);
        } else {
            list.add(
                    sentence,
                    strike,
                    n == 7 ? LINK : HOST_GIVES_UP,
                    "started .*, armed, made safe (LINK_LOST|HOST_ASKED)",
                    "no sample for 500 ms|did not answer",
                    DRIVEN);
        }
    }

    private void host() {
        list.add(
                "unplugged, and plugged in again after 0.3 s",
                scene -> {
                    scene.command("unplug");
                    scene.after(300, () -> scene.command("plug"));
                },
                LINK,
                BOARD_LINK_LOST,
                "the port went away",
                DRIVEN);
        list.add(
                "the host says nothing for 1.5 s",
                scene -> scene.board().hostAway(1_500_000),
                LINK,
                BOARD_LINK_LOST,
                "the board heard nothing from the program for 750 ms",
                DRIVEN);
        list.goesOn("the host says nothing for 0.4 s", scene -> scene.board().hostAway(400_000));
        list.goesOn("the chip stands still for 0.3 s, its clock too", FaultList.command("freeze 300"));
        list.add(new Fault(
                "the host is killed (SIGKILL)",
                Host.PROCESS,
                scene -> scene.signalHost("KILL"),
                LINK,
                BOARD_LINK_LOST,
                Set.of(),
                "",
                false,
                DRIVEN));
        list.add(new Fault(
                "the host is stopped for 2 s (SIGSTOP)",
                Host.PROCESS,
                scene -> {
                    scene.signalHost("STOP");
                    scene.after(2000, () -> scene.signalHost("CONT"));
                },
                LINK,
                BOARD_LINK_LOST,
                INVALID,
                "the board heard nothing from the program for 750 ms",
                false,
                DRIVEN));
    }
}
