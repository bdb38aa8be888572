/*
 * The board's part of the self-test: working memory and converter. The program memory carries no check value, and the
 * chip has no second clock of known rate to hold against its crystal, so those two are not tried.
 */
#include <avr/io.h>
#include <util/atomic.h>

#include "hal.h"
#include "parts.h"

/* About 2 us a byte, and the meters' interrupts between them. */
#define BYTES_PER_SLICE 256u

static uint16_t tested_to;
static uint16_t failed;

void hal_self_test_begin(void) {
    tested_to = RAMSTART;
    failed = 0;
    adc_check_begin();
}

/*
 * Each bit of a byte must hold both values; the byte's own value is back before an interrupt or the main loop can miss
 * it. So it may be done to all of the memory, variables and stack in use included. It finds bits that are stuck, not
 * addresses that are mixed up.
 */
static bool holds(volatile uint8_t *byte) {
    bool sound = false;
    ATOMIC_BLOCK(ATOMIC_RESTORESTATE) {
        const uint8_t kept = *byte;
        const uint8_t turned = kept ^ 0xFFu;
        *byte = turned;
        sound = *byte == turned;
        *byte = kept;
        sound = sound && *byte == kept;
    }
    return sound;
}

static void test_memory_slice(void) {
    for (uint16_t i = 0; i < BYTES_PER_SLICE && tested_to <= RAMEND; i++) {
        if (!holds((volatile uint8_t *)tested_to)) {
            failed |= TEST_WORKING_MEMORY;
        }
        tested_to++;
    }
}

bool hal_self_test_done(struct self_test *result) {
    bool converter_sound = false;

    test_memory_slice();
    if (tested_to <= RAMEND || !adc_check_done(&converter_sound)) {
        return false;
    }
    if (!converter_sound) {
        failed |= TEST_CONVERTER;
    }
    result->tried = TEST_WORKING_MEMORY | TEST_CONVERTER;
    result->failed = failed;
    return true;
}
