/* SPDX-License-Identifier: GPL-3.0-or-later. This test program links libsimavr; see ../LICENSE.md. */
#include "line.h"

#include <errno.h>
#include <fcntl.h>
#include <limits.h>
#include <poll.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <termios.h>
#include <unistd.h>

#define QUEUE_SIZE 4096u

struct queue {
    uint8_t bytes[QUEUE_SIZE];
    size_t first;
    size_t count;
};

struct direction {
    unsigned long corrupt_counter;
    unsigned long drop_counter;
};

struct line_faults line_rx_faults;
struct line_faults line_tx_faults;

static int master = -1;
static char slave_name[PATH_MAX];
static const char *link_path;
static bool host_there;
static struct queue to_board;
static struct queue from_board;
static struct direction rx;
static struct direction tx;
static uint64_t bytes_from_host;

static void put(struct queue *queue, uint8_t byte) {
    if (queue->count < QUEUE_SIZE) {
        queue->bytes[(queue->first + queue->count++) % QUEUE_SIZE] = byte;
    }
}

static uint8_t take(struct queue *queue) {
    const uint8_t byte = queue->bytes[queue->first];
    queue->first = (queue->first + 1u) % QUEUE_SIZE;
    queue->count--;
    return byte;
}

static bool is_nth(unsigned long *counter, unsigned every) {
    return every != 0 && ++*counter % every == 0;
}

/* False when the byte is lost. Which bit is turned moves on from fault to fault. */
static bool pass(struct direction *direction, const struct line_faults *faults, uint8_t *byte) {
    if (is_nth(&direction->corrupt_counter, faults->corrupt_every)) {
        *byte ^= (uint8_t)(1u << (direction->corrupt_counter / faults->corrupt_every % 8u));
    }
    return !is_nth(&direction->drop_counter, faults->drop_every);
}

void line_keep_link(const char *path) {
    link_path = path;
}

static void renew_link(void) {
    char fresh[PATH_MAX];
    if (link_path == NULL) {
        return;
    }
    snprintf(fresh, sizeof fresh, "%s.new", link_path);
    unlink(fresh);
    if (symlink(slave_name, fresh) != 0 || rename(fresh, link_path) != 0) {
        fprintf(stderr, "stand-emulator: cannot make the link %s: %s\n", link_path, strerror(errno));
        exit(2);
    }
}

/* Throws away what a former host did not read. False when the slave cannot be opened. */
static bool freshen_slave(bool make_raw) {
    struct termios settings;
    const int slave = open(slave_name, O_RDWR | O_NOCTTY | O_CLOEXEC | O_NONBLOCK);
    if (slave < 0) {
        return false;
    }
    if (make_raw && tcgetattr(slave, &settings) == 0) {
        cfmakeraw(&settings);
        tcsetattr(slave, TCSANOW, &settings);
    }
    tcflush(slave, TCIFLUSH);
    close(slave);
    return true;
}

void line_plug(void) {
    if (master >= 0) {
        return;
    }
    master = posix_openpt(O_RDWR | O_NOCTTY | O_CLOEXEC | O_NONBLOCK);
    if (master < 0 || grantpt(master) != 0 || unlockpt(master) != 0
        || ptsname_r(master, slave_name, sizeof slave_name) != 0 || !freshen_slave(true)) {
        fprintf(stderr, "stand-emulator: cannot make a pseudo-terminal: %s\n", strerror(errno));
        exit(2);
    }
    host_there = false;
    renew_link();
    printf("port %s\n", slave_name);
    fflush(stdout);
}

void line_unplug(void) {
    if (master >= 0) {
        close(master);
        master = -1;
        to_board.count = 0;
        from_board.count = 0;
    }
    if (link_path != NULL) {
        unlink(link_path);
    }
}

/* A killed host may leave its exclusive lock behind; only a new pseudo-terminal helps then. */
static void host_left(void) {
    host_there = false;
    from_board.count = 0;
    if (!freshen_slave(false)) {
        line_unplug();
        line_plug();
    }
}

static void read_host(void) {
    uint8_t bytes[256];
    while (to_board.count + sizeof bytes <= QUEUE_SIZE) {
        const ssize_t got = read(master, bytes, sizeof bytes);
        if (got <= 0) {
            return;
        }
        for (ssize_t i = 0; i < got; i++) {
            put(&to_board, bytes[i]);
        }
        bytes_from_host += (uint64_t)got;
    }
}

static void write_host(void) {
    while (from_board.count > 0) {
        const size_t to_end = QUEUE_SIZE - from_board.first;
        const size_t part = from_board.count < to_end ? from_board.count : to_end;
        const ssize_t done = write(master, from_board.bytes + from_board.first, part);
        if (done <= 0) {
            return;
        }
        from_board.first = (from_board.first + (size_t)done) % QUEUE_SIZE;
        from_board.count -= (size_t)done;
    }
}

void line_poll(void) {
    struct pollfd state = {master, POLLIN, 0};
    if (master < 0) {
        from_board.count = 0;
        return;
    }
    if (poll(&state, 1, 0) < 0) {
        return;
    }
    if ((state.revents & POLLIN) != 0) {
        read_host();
    }
    if ((state.revents & POLLHUP) != 0) {
        if (host_there) {
            host_left();
        }
        from_board.count = 0;
        return;
    }
    host_there = true;
    write_host();
}

uint64_t line_bytes_from_host(void) {
    return bytes_from_host;
}

bool line_take_byte(uint8_t *byte) {
    while (to_board.count > 0) {
        *byte = take(&to_board);
        if (pass(&rx, &line_rx_faults, byte)) {
            return true;
        }
    }
    return false;
}

void line_put_byte(uint8_t byte) {
    if (pass(&tx, &line_tx_faults, &byte)) {
        put(&from_board, byte);
    }
}
