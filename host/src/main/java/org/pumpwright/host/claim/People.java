package org.pumpwright.host.claim;

/**
 * Who brought a unit, and whose it is. Empty texts are what nobody has told yet. Thread-safe.
 *
 * @param broughtBy who brought it
 * @param contact how that person is reached
 * @param customer whose it is; never in what goes to the factory unless asked for
 */
public record People(String broughtBy, String contact, String customer) {
    public People {
        broughtBy = Words.bounded("brought by", broughtBy);
        contact = Words.bounded("contact", contact);
        customer = Words.bounded("customer", customer);
    }
}
