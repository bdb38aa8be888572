package org.pumpwright.host.ui.work;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.pumpwright.host.quantity.FlowRate;

/** What can be seen of a run while it goes on and afterwards. {@link RunTold} fills it. JavaFX thread only. */
public final class RunView {
    private final List<StripSample> strip = new ArrayList<>();
    private final ReadOnlyObjectWrapper<Word> headline = new ReadOnlyObjectWrapper<>(Word.of("ui.run.idle"));
    private final ReadOnlyObjectWrapper<Word> detail = new ReadOnlyObjectWrapper<>(Word.NONE);
    private final ReadOnlyObjectWrapper<Word> left = new ReadOnlyObjectWrapper<>(Word.NONE);
    private final ReadOnlyObjectWrapper<FlowRate> flow = new ReadOnlyObjectWrapper<>(new FlowRate(0));
    private final ReadOnlyObjectWrapper<SweepView> sweep = new ReadOnlyObjectWrapper<>(SweepView.EMPTY);
    private final ReadOnlyDoubleWrapper progress = new ReadOnlyDoubleWrapper();
    private final ReadOnlyIntegerWrapper stripSize = new ReadOnlyIntegerWrapper();
    private Optional<StripSample> newest = Optional.empty();

    /** Shows nothing but these words. */
    void clear(Word first) {
        strip.clear();
        stripSize.set(0);
        newest = Optional.empty();
        sweep.set(SweepView.EMPTY);
        say(first, Word.NONE);
        left.set(Word.NONE);
        progress.set(0);
        flow.set(new FlowRate(0));
    }

    void say(Word large, Word small) {
        headline.set(large);
        detail.set(small);
    }

    void headline(Word large) {
        headline.set(large);
    }

    void detail(Word small) {
        detail.set(small);
    }

    void left(Word time) {
        left.set(time);
    }

    void flow(FlowRate now) {
        flow.set(now);
    }

    /** It never goes back. */
    void progress(double share) {
        progress.set(Math.max(progress.get(), Math.min(1, Math.max(0, share))));
    }

    /** One more sample, unless it is no newer than the last. */
    void add(StripSample sample) {
        if (newest.filter(last -> last.second() >= sample.second()).isEmpty()) {
            newest = Optional.of(sample);
            strip.add(sample);
        }
    }

    /** All that came in is to be shown. */
    void show(SweepView soFar) {
        sweep.set(soFar);
        stripSize.set(strip.size());
    }

    /** What the strip chart shows, oldest first; it grows, and is emptied when a run begins. */
    public List<StripSample> strip() {
        return Collections.unmodifiableList(strip);
    }

    /** How much of {@link #strip} is to be shown. */
    public ReadOnlyIntegerProperty stripSizeProperty() {
        return stripSize.getReadOnlyProperty();
    }

    /** Which step, or what has come of it. */
    public ReadOnlyObjectProperty<Word> headlineProperty() {
        return headline.getReadOnlyProperty();
    }

    /** Which point, and what is being done there. */
    public ReadOnlyObjectProperty<Word> detailProperty() {
        return detail.getReadOnlyProperty();
    }

    /** How much time is left. */
    public ReadOnlyObjectProperty<Word> leftProperty() {
        return left.getReadOnlyProperty();
    }

    /** The flow of the moment. */
    public ReadOnlyObjectProperty<FlowRate> flowProperty() {
        return flow.getReadOnlyProperty();
    }

    /** The sweep so far. */
    public ReadOnlyObjectProperty<SweepView> sweepProperty() {
        return sweep.getReadOnlyProperty();
    }

    /** How far the plan is, 0 to 1. */
    public ReadOnlyDoubleProperty progressProperty() {
        return progress.getReadOnlyProperty();
    }
}
