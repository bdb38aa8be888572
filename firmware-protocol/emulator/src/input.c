/* SPDX-License-Identifier: GPL-3.0-or-later. This test program links libsimavr; see ../LICENSE.md. */
#include "input.h"

#include <errno.h>
#include <poll.h>
#include <stdbool.h>
#include <stddef.h>
#include <string.h>
#include <unistd.h>

#include "stop.h"

/* A line with a thousand edges fits with room to spare. */
#define BUFFER_SIZE 65536u

static char buffer[BUFFER_SIZE];
static size_t filled;
static size_t used;
static bool ended;

static const char *line_in_buffer(void) {
    char *const start = buffer + used;
    char *const end = memchr(start, '\n', filled - used);
    if (end == NULL) {
        return NULL;
    }
    *end = '\0';
    if (end > start && end[-1] == '\r') {
        end[-1] = '\0';
    }
    used = (size_t)(end - buffer) + 1u;
    return start;
}

static void read_more(void) {
    memmove(buffer, buffer + used, filled - used);
    filled -= used;
    used = 0;
    const ssize_t got = read(STDIN_FILENO, buffer + filled, BUFFER_SIZE - filled);
    if (got > 0) {
        filled += (size_t)got;
    } else if (got == 0 || errno != EINTR) {
        ended = true;
    }
}

const char *input_wait_line(void) {
    const char *line;
    while ((line = line_in_buffer()) == NULL) {
        struct pollfd state = {STDIN_FILENO, POLLIN, 0};
        /* The time limit covers a signal that comes just before the wait. */
        if (ended || stop_asked) {
            return NULL;
        }
        if (poll(&state, 1, 200) > 0) {
            read_more();
        }
    }
    return line;
}

const char *input_line(void) {
    struct pollfd state = {STDIN_FILENO, POLLIN, 0};
    const char *const line = line_in_buffer();
    if (line != NULL || ended || poll(&state, 1, 0) <= 0) {
        return line;
    }
    read_more();
    return line_in_buffer();
}
