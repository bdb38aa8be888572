package org.pumpwright.benchmarks.signal;

/** Prints the tables of the signal page: the confusion of the pulse classifier, then frequency against its bound. */
public final class SignalTables {
    private SignalTables() {}

    /**
     * Measures and prints; a few minutes.
     *
     * @param arguments none
     */
    public static void main(String[] arguments) {
        ConfusionTable.print();
        FrequencyTable.print();
        FrequencyTable.printSlow();
    }
}
