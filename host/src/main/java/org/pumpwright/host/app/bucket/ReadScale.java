package org.pumpwright.host.app.bucket;

import java.util.function.BooleanSupplier;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.stand.StandException;

/** A scale that is read by the program. Confined to the run thread. */
interface ReadScale {
    /**
     * Waits until several readings in a row are steady and agree.
     *
     * @param over asked again and again; true when nobody wants the reading any more
     * @throws OrderException when it does not come to rest, sends what the settings do not describe, or is no longer wanted
     * @throws StandException when the line is lost
     */
    double steadyKilograms(BooleanSupplier over) throws OrderException, StandException;
}
