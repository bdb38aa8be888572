package org.pumpwright.host.claim.statistics;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Batches that come back with confirmed failures more often than the rest. A young batch is compared with the rest at the same ages,
 * month by month (indirect standardisation). Given all failures of the fleet, those of a batch are dealt out by its share of the
 * units serving at each age. The upper tail of the binomial with the mean share is taken, which for one failure or more above the mean
 * is not below the true tail (W. Hoeffding, Annals of Mathematical Statistics 27 (1956) 713). With one age alone this is the exact comparison of two
 * Poisson rates (J. Przyborowski and H. Wilenski, Biometrika 31 (1940) 313), and it grows into the Poisson tail as the rest grows. So
 * many batches looked at, so many chances of a false alert: the number is given with the findings. Thread-safe.
 *
 * @param findings one a batch, least likely first
 * @param alertBelow chance below which a batch is an alert
 */
public record BatchWatch(List<BatchFinding> findings, double alertBelow) {
    /** The setting where the shop has none of its own. */
    public static final double USUAL_ALERT_BELOW = 0.02;

    public BatchWatch {
        findings = List.copyOf(findings);
        if (!(alertBelow > 0 && alertBelow < 1)) {
            throw new IllegalArgumentException("alert below %s: must lie between 0 and 1".formatted(alertBelow));
        }
    }

    /** Looks at every batch of the fleet; none when there is only one. */
    public static BatchWatch of(Fleet fleet, double alertBelow) {
        Map<String, List<Lot>> batches = new LinkedHashMap<>();
        fleet.lots()
                .forEach(lot -> batches.computeIfAbsent(lot.shipment().batch(), name -> new ArrayList<>())
                        .add(lot));
        List<BatchFinding> findings = new ArrayList<>();
        if (batches.size() > 1) {
            batches.forEach((name, lots) -> findings.add(finding(name, lots, fleet, alertBelow)));
        }
        findings.sort((a, b) -> Double.compare(a.chance(), b.chance()));
        return new BatchWatch(findings, alertBelow);
    }

    /** Alerts to expect when no batch differs; an upper limit, as counts come in whole numbers. */
    public double expectedFalseAlerts() {
        return findings.size() * alertBelow;
    }

    /** The alerts alone. */
    public List<BatchFinding> alerts() {
        return findings.stream().filter(BatchFinding::alert).toList();
    }

    private static BatchFinding finding(String name, List<Lot> lots, Fleet fleet, double alertBelow) {
        List<Lot> rest =
                fleet.lots().stream().filter(lot -> !lots.contains(lot)).toList();
        int own = 0;
        int all = 0;
        double expected = 0;
        double share = 0;
        for (int age = 0; serving(rest, age) > 0; age++) {
            int others = serving(rest, age);
            int mine = serving(lots, age);
            int failedMine = failures(lots, age);
            int failedOthers = mine == 0 ? 0 : failures(rest, age);
            own += failedMine;
            all += failedMine + failedOthers;
            expected += (double) mine * failedOthers / others;
            share += (double) (failedMine + failedOthers) * mine / (mine + others);
        }
        double chance = UpperTail.binomial(all, all == 0 ? 0 : share / all, own);
        int shipped = lots.stream().mapToInt(lot -> lot.shipment().count()).sum();
        return new BatchFinding(name, shipped, own, expected, chance, chance < alertBelow);
    }

    private static int serving(List<Lot> lots, int age) {
        return lots.stream().mapToInt(lot -> lot.servingAt(age)).sum();
    }

    private static int failures(List<Lot> lots, int age) {
        return lots.stream().mapToInt(lot -> lot.failuresAt(age)).sum();
    }
}
