/* The memory that survives: each byte takes 3.4 ms, and the power may go in the midst of one. */
#include <string.h>

#include "bench.h"
#include "check.h"

#define BYTE_TICKS (TICKS_PER_MS * 34u / 10u)

struct bench_store store;

static uint32_t began;
static bool writing;

void bench_store_blank(void) {
    memset(&store, 0, sizeof store);
    memset(store.bytes, 0xFF, sizeof store.bytes);
    store.power_lasts = UINT32_MAX;
    writing = false;
}

bool hal_store_busy(void) {
    writing = writing && hardware.ticks - began < BYTE_TICKS;
    return writing;
}

void hal_store_write(uint16_t at, uint8_t byte) {
    CHECK(!hal_store_busy());
    CHECK(at < STORE_BYTES);
    began = hardware.ticks;
    writing = true;
    if (store.power_cut) {
        return;
    }
    store.power_cut = store.writes++ == store.power_lasts;
    store.bytes[at] = store.power_cut ? store.spoilt : byte;
}

uint8_t hal_store_read(uint16_t at) {
    CHECK(at < STORE_BYTES);
    return store.bytes[at];
}
