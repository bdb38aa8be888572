package org.pumpwright.host.stand;

import java.util.Optional;
import org.pumpwright.host.datafile.Node;

/** Holds two keys of a file in order. Thread-safe. */
final class Order {
    private Order() {}

    /** A part of a file that has been refused already, where there is nothing to go on with. */
    static final class Refused extends IllegalArgumentException {
        private static final long serialVersionUID = 1;

        Refused(String message) {
            super(message);
        }
    }

    /**
     * Refuses the second key when its value is not above that of the first; keys that are left out are in order.
     *
     * @throws Refused when it was refused
     */
    static void check(Node group, String low, String high) {
        Optional<Node> least = group.find(low);
        Optional<Node> most = group.find(high);
        if (least.isPresent()
                && most.isPresent()
                && most.get().number() <= least.get().number()) {
            String says = "is %s, it must be above %s, %s"
                    .formatted(most.get().found(), low, least.get().found());
            most.get().refuse(says);
            throw new Refused(high + " " + says);
        }
    }
}
