package org.pumpwright.host.app.bucket;

import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.stand.StandException;

/** A scale that is read by the program. Confined to the run thread. */
interface ReadScale {
    /**
     * Waits until several readings in a row are steady and agree.
     *
     * @throws OrderException when it does not come to rest, or sends what the settings do not describe
     * @throws StandException when the line is lost
     */
    double steadyKilograms() throws OrderException, StandException;
}
