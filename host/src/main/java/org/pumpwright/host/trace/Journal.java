package org.pumpwright.host.trace;

/**
 * Takes down a trace while it is measured, so that nothing is lost when the program does not live to its end. It
 * never throws: a journal that fails must not cost the run. Confined to the run thread.
 */
public interface Journal {
    /** Writes nothing down. */
    Journal NONE = new Journal() {
        @Override
        public void sample(Sample sample) {}

        @Override
        public void point(PointMark point) {}

        @Override
        public void stretch(Stretch stretch) {}

        @Override
        public void answer(Answer answer) {}
    };

    /** A sample was taken. */
    void sample(Sample sample);

    /** A point is done. */
    void point(PointMark point);

    /** A stretch is over. */
    void stretch(Stretch stretch);

    /** A person has answered. */
    void answer(Answer answer);
}
