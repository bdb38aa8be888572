package org.pumpwright.host.app.claim;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.CustodyState;
import org.pumpwright.host.record.ledger.StoreException;

/** Lists claims by state and age. Thread-safe. */
public final class ClaimList {
    private final ClaimShelf claims;

    /** @param claims finds them */
    public ClaimList(ClaimShelf claims) {
        this.claims = claims;
    }

    /**
     * A claim in the list.
     *
     * @param file as it stands
     * @param days since it came
     * @param daysHere since it came into its state
     */
    public record Line(ClaimFile file, long days, long daysHere) {}

    /** Numbers of the claims that have a run on record, which their outlines do not tell. */
    public Set<String> tested() throws StoreException {
        return claims.tested();
    }

    /**
     * The claims, by state in the order of the work, the oldest first.
     *
     * @param today by the shop's date
     * @param closedToo whether those that left the shop are listed too
     */
    public List<Line> lines(LocalDate today, boolean closedToo) throws StoreException {
        List<Line> lines = new ArrayList<>();
        for (ClaimFile file : claims.outlines()) {
            CustodyState state = file.whereabouts().to();
            if (closedToo || !state.isOut()) {
                lines.add(new Line(
                        file,
                        ChronoUnit.DAYS.between(file.intake().received().toLocalDate(), today),
                        ChronoUnit.DAYS.between(file.whereabouts().at().toLocalDate(), today)));
            }
        }
        lines.sort(Comparator.comparing((Line line) -> line.file().whereabouts().to())
                .thenComparing(line -> line.file().intake().received().toInstant())
                .thenComparing(line -> line.file().number()));
        return lines;
    }
}
