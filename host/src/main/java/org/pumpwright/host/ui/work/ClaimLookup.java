package org.pumpwright.host.ui.work;

import java.util.Optional;
import org.pumpwright.host.app.Complaint;

/** Finds what is known of a claim by its number. Called on a worker thread. */
@FunctionalInterface
public interface ClaimLookup {
    /** Knows no claims. */
    ClaimLookup NONE = number -> Optional.empty();

    /**
     * What a claim says of its unit; each is empty where it says nothing.
     *
     * @param model id of the unit model
     * @param serial as the claim gives it
     * @param complaint what the customer says
     */
    record Known(Optional<String> model, Optional<String> serial, Optional<Complaint> complaint) {}

    /**
     * What is known; empty when there is no such claim.
     *
     * @throws Exception when it can't be looked up
     */
    Optional<Known> find(String number) throws Exception;
}
