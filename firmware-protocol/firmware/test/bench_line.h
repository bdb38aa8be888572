/* What the parts of the bench share. */
#ifndef STAND_BENCH_LINE_H
#define STAND_BENCH_LINE_H

#include "bench.h"

void bench_hardware_start(uint32_t ticks);
/* The outputs drop, as they do at every reset; the feedback follows. */
void bench_hardware_reset(void);
void bench_line_start(void);
/* Moves up to so many bytes from the board to the host. */
void bench_line_drain(unsigned bytes);
/* Puts a byte where the board will take it. */
void bench_line_put(uint8_t byte);

#endif
