package org.pumpwright.host.ui;

import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;

/** One job at the window by keys alone, step by step, as a technician does it. Any thread but the JavaFX thread. */
final class JobByKeys {
    /** Without a complaint the model's own plan is proposed, and that is the quickest. */
    private static final String NO_COMPLAINT = "complaint-%d";

    private final Hands hands;

    JobByKeys(Hands hands) {
        this.hands = hands;
    }

    /** A unit comes in, and is taken in hand. */
    void receive(String serial) throws Exception {
        fillIn(serial);
        accept();
    }

    /** The same with another plan than the proposed one. */
    void receive(String serial, String plan) throws Exception {
        fillIn(serial);
        hands.act(KeyCode.F2);
        hands.await("the choice of plans", hands::isAsked);
        hands.pick(plan);
        hands.await("the chosen plan", () -> !hands.isAsked());
        accept();
    }

    private void fillIn(String serial) throws Exception {
        fillInAllButTheSerial();
        hands.write("serial", serial);
    }

    /** What the unit is, what it has pumped, who tests it, that nothing was said of it, and that it is clean. */
    void fillInAllButTheSerial() throws Exception {
        hands.goTo(Moment.RECEIVE);
        hands.choose("model-demo-pump");
        hands.choose("product-0");
        hands.tabTo("technician");
        if (Hands.look(() ->
                ((TextField) hands.scene().lookup("#technician")).getText().isEmpty())) {
            hands.write("technician", "ROSA VIDAL");
        }
        hands.choose(NO_COMPLAINT.formatted(lastComplaint()));
        hands.press(KeyCode.F4);
    }

    private void accept() throws Exception {
        hands.act(KeyCode.F1);
        hands.await("the screen that makes ready", () -> hands.isAt(Moment.READY));
    }

    private int lastComplaint() throws Exception {
        return Hands.look(() -> {
            int last = 0;
            while (hands.scene().lookup("#" + NO_COMPLAINT.formatted(last + 1)) != null) {
                last++;
            }
            return last;
        });
    }

    /** The stand checks itself. */
    void makeReady() throws Exception {
        hands.act(KeyCode.F2);
        hands.await("a stand that is fit", () -> hands.canDo(KeyCode.F1) && hands.canDo(KeyCode.F2));
    }

    /** The run begins. */
    void begin() throws Exception {
        hands.act(KeyCode.F1);
        hands.await("the run", () -> hands.isAt(Moment.RUN) && hands.canDo(KeyCode.F6));
    }

    /** Waits until the unit is being driven and something was measured. */
    void awaitMeasuring() throws Exception {
        hands.awaitWords("Point ");
    }

    /** Waits until the run is over. */
    void awaitEnd() throws Exception {
        hands.await("the end of the run", this::isOver);
    }

    /** Whether nothing can be ended any more and the next step can be done. JavaFX thread only. */
    boolean isOver() {
        return hands.isAt(Moment.RUN) && !hands.canDo(KeyCode.F6) && hands.canDo(KeyCode.F1);
    }

    void toVerdict() throws Exception {
        hands.act(KeyCode.F1);
        hands.await("the verdict", () -> hands.isAt(Moment.VERDICT));
    }

    /** From the door to the running unit. */
    void upToTheRun(String serial) throws Exception {
        receive(serial);
        makeReady();
        begin();
    }

    /** Whether somebody is asked why he stopped the run. JavaFX thread only. */
    boolean asksWhy() {
        return hands.isAsked() && hands.reads("Why was it stopped?");
    }

    /** A whole job, up to the verdict. */
    void whole(String serial) throws Exception {
        upToTheRun(serial);
        awaitEnd();
        toVerdict();
    }
}
