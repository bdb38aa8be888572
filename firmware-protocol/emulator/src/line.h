/* SPDX-License-Identifier: GPL-3.0-or-later. This test program links libsimavr; see ../LICENSE.md. */
/* The serial line's far end: a pseudo-terminal that a host opens and closes as it likes. */
#ifndef EMULATOR_LINE_H
#define EMULATOR_LINE_H

#include <stdbool.h>
#include <stdint.h>

/* What the line does to the bytes of one direction: to every n-th byte, 0 for none. */
struct line_faults {
    unsigned corrupt_every;
    unsigned drop_every;
};

extern struct line_faults line_rx_faults; /* to the board */
extern struct line_faults line_tx_faults; /* from the board */

/* A symlink kept at this path points to the current pseudo-terminal. NULL: none. */
void line_keep_link(const char *path);

/* Makes a new pseudo-terminal and prints its `port` line. Does nothing while there is one. */
void line_plug(void);

/* The host sees a hang-up. */
void line_unplug(void);

/* Moves bytes between the pseudo-terminal and the queues; never waits. */
void line_poll(void);

/* How many bytes hosts have sent so far, whatever the faults made of them. */
uint64_t line_bytes_from_host(void);

/* The board's side. */
bool line_take_byte(uint8_t *byte);
void line_put_byte(uint8_t byte);

#endif
