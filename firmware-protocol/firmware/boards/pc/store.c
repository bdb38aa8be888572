/* Memory that a restart leaves alone and the end of the program does not; a byte takes 3.4 ms as in an ATmega328P. */
#include <string.h>

#include "hal.h"
#include "parts.h"

#define BYTE_TICKS (TICK_HZ * 34u / 10000u)

static uint8_t bytes[STORE_BYTES];
static bool blank_made;
static uint32_t began;
static bool writing;

static void make_blank(void) {
    if (!blank_made) {
        memset(bytes, 0xFF, sizeof bytes);
        blank_made = true;
    }
}

bool hal_store_busy(void) {
    writing = writing && hal_ticks() - began < BYTE_TICKS;
    return writing;
}

void hal_store_write(uint16_t at, uint8_t byte) {
    make_blank();
    bytes[at] = byte;
    began = hal_ticks();
    writing = true;
}

uint8_t hal_store_read(uint16_t at) {
    make_blank();
    return bytes[at];
}

/* Toy hardware has nothing of its own to try. */
void hal_self_test_begin(void) {
}

bool hal_self_test_done(struct self_test *result) {
    result->tried = 0;
    result->failed = 0;
    return true;
}
