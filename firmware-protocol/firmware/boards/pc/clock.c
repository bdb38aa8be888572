/* Board time in real time. */
#include <time.h>

#include "hal.h"
#include "parts.h"

static struct timespec began;

void clock_start(void) {
    clock_gettime(CLOCK_MONOTONIC, &began);
}

uint64_t clock_run_ticks(void) {
    struct timespec now;
    clock_gettime(CLOCK_MONOTONIC, &now);
    const int64_t seconds = (int64_t)now.tv_sec - (int64_t)began.tv_sec;
    const int64_t nanoseconds = (int64_t)now.tv_nsec - (int64_t)began.tv_nsec;
    return (uint64_t)(seconds * (int64_t)TICK_HZ + nanoseconds / 500);
}

uint32_t hal_ticks(void) {
    return (uint32_t)(TICKS_AT_START + clock_run_ticks());
}

void hal_watchdog_kick(void) {
}
