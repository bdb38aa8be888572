/* The inputs of the toy hardware: closed, unless a command opens them. */
#include "hal.h"
#include "parts.h"

/* As long as a contactor of this size takes (common practice, no source). */
#define CONTACTOR_TICKS (TICK_HZ / 100u)

static uint8_t closed = INPUTS_WATCHED;
static int feedback = AS_USUAL;

void inputs_force(uint8_t bit, bool now_closed) {
    closed = (uint8_t)(now_closed ? closed | bit : closed & ~bit);
}

void inputs_force_feedback(int now_closed) {
    feedback = now_closed;
}

static bool feedback_is_closed(void) {
    const uint64_t since = outputs_contactor_since();
    if (feedback != AS_USUAL) {
        return feedback != 0;
    }
    /* Before it has moved it is where it was. */
    const bool moved = since == 0 || clock_run_ticks() - since >= CONTACTOR_TICKS;
    return moved == outputs_contactor_pulled();
}

uint8_t hal_inputs(void) {
    return (uint8_t)(closed | (feedback_is_closed() ? INPUT_FEEDBACK : 0));
}
