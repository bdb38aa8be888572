/* SPDX-License-Identifier: GPL-3.0-or-later. This test program links libsimavr; see ../LICENSE.md. */
/* Lines from standard input. */
#ifndef EMULATOR_INPUT_H
#define EMULATOR_INPUT_H

/* The next line without its end; waits for it. NULL at the end of the input or after a signal to stop. */
const char *input_wait_line(void);

/* The next line if it is there already, else NULL. */
const char *input_line(void);

#endif
