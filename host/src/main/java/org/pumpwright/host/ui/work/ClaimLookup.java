package org.pumpwright.host.ui.work;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.app.Complaint;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.claim.Photo;
import org.pumpwright.host.grade.Handling;

/** The claims desk, as far as a unit that comes in needs it. Called on worker threads. */
public interface ClaimLookup {
    /** A shop without a desk: knows no claims. */
    ClaimLookup NONE = new ClaimLookup() {
        @Override
        public Optional<Known> find(String number) {
            return Optional.empty();
        }

        @Override
        public void handled(String number, Handling handling) throws OrderException {
            throw new OrderException("there is no claim " + number);
        }

        @Override
        public int addPhoto(String number, Path file, Photo.Shows shows, String person) throws OrderException {
            throw new OrderException("there is no claim " + number);
        }
    };

    /**
     * What a claim says of its unit; each is empty where it says nothing.
     *
     * @param model id of the unit model
     * @param title what that model is called
     * @param serial as the claim gives it
     * @param complaint what the customer says
     * @param words the same in the customer's own words
     * @param product what the unit has pumped
     * @param handling who has made sure that it is clean, or lets it on the stand uncleaned
     * @param lacking keys of what has to be written down before the unit may be tested
     * @param photos how many pictures there are
     */
    record Known(
            Optional<String> model,
            Optional<String> title,
            Optional<String> serial,
            Optional<Complaint> complaint,
            String words,
            String product,
            Handling handling,
            List<String> lacking,
            int photos) {
        public Known {
            lacking = List.copyOf(lacking);
        }
    }

    /**
     * What is known; empty when there is no such claim.
     *
     * @throws Exception when it can't be looked up
     */
    Optional<Known> find(String number) throws Exception;

    /**
     * Tells a claim whether its unit is clean.
     *
     * @throws Exception when it can't be told
     */
    void handled(String number, Handling handling) throws Exception;

    /**
     * Keeps a picture with a claim.
     *
     * @param person who hands it in
     * @return how many pictures there are then
     * @throws Exception when it can't be kept
     */
    int addPhoto(String number, Path file, Photo.Shows shows, String person) throws Exception;
}
