package org.pumpwright.host.app.claim;

import java.util.List;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.claim.ClaimFile;

/** Where statistics read claims from. Confined to one thread. */
@FunctionalInterface
public interface ReturnSource {
    /**
     * Every claim as it stands, practice ones too.
     *
     * @throws OrderException when they cannot be read
     */
    List<ClaimFile> all() throws OrderException;
}
