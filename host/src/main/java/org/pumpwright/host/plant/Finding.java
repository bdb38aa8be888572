package org.pumpwright.host.plant;

/** What an inspection of a simulated unit finds without power. Thread-safe. */
public enum Finding {
    WEEPS("Liquid comes out of the weep hole."),
    TURNS_HARD("The shaft cannot be turned by hand."),
    SHORT_TO_CASE("There is a conducting path from a lead to the case."),
    NO_CONTINUITY("There is no path from lead to lead."),
    LEADS_SWAPPED("The leads are swapped: plus is on minus."),
    COLD("The pump head is cold to the touch."),
    WARM("The motor is warm to the touch.");

    private final String sentence;

    Finding(String sentence) {
        this.sentence = sentence;
    }

    /** One plain sentence. */
    public String sentence() {
        return sentence;
    }
}
