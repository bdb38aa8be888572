#include "self_test.h"

#include "hal.h"
#include "safety.h"
#include "send.h"

#define VITAL ((uint16_t)(TEST_PROGRAM_MEMORY | TEST_WORKING_MEMORY | TEST_CONVERTER | TEST_CLOCK))

void self_test_begin(struct board *board) {
    board->testing = true;
    hal_self_test_begin();
}

static void judge_own(const struct board *board, struct self_test *result) {
    result->tried = (uint16_t)(result->tried | TEST_BLOBS | TEST_FEEDBACK);
    if (!blobs_sound(&board->blobs)) {
        result->failed = (uint16_t)(result->failed | TEST_BLOBS);
    }
    /* The contactor is let go; while its contact is still on its way, it has not failed yet. */
    if (!board->letting_go && inputs_closed(&board->inputs, INPUT_FEEDBACK)) {
        result->failed = (uint16_t)(result->failed | TEST_FEEDBACK);
    }
}

void self_test_poll(struct board *board) {
    struct self_test result = {0, 0};

    if (!board->testing || !hal_self_test_done(&result)) {
        return;
    }
    board->testing = false;
    judge_own(board, &result);
    if ((result.failed & VITAL) != 0) {
        safety_lock(board, result.failed, hal_ticks());
    }
    send_self_test(board, &result);
}
