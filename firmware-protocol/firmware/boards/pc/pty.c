/*
 * The line as a pseudo-terminal that a host may open and close as it likes. Like a serial port it never waits: what
 * nobody reads is lost.
 */
#include <errno.h>
#include <fcntl.h>
#include <poll.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <termios.h>
#include <unistd.h>

#include "hal.h"
#include "parts.h"
#include "ring.h"

#define RING_SIZE 256u

static int master = -1;
static volatile uint8_t rx_bytes[RING_SIZE];
static volatile uint8_t tx_bytes[RING_SIZE];
static struct ring rx;
static struct ring tx;

static bool make_raw(const char *name) {
    struct termios settings;
    const int slave = open(name, O_RDWR | O_NOCTTY | O_CLOEXEC);
    if (slave < 0) {
        return false;
    }
    const bool read = tcgetattr(slave, &settings) == 0;
    cfmakeraw(&settings);
    const bool made = read && tcsetattr(slave, TCSANOW, &settings) == 0;
    close(slave);
    return made;
}

void pty_reset(void) {
    ring_start(&rx, rx_bytes, RING_SIZE);
    ring_start(&tx, tx_bytes, RING_SIZE);
}

bool pty_start(void) {
    char name[128];

    pty_reset();
    master = posix_openpt(O_RDWR | O_NOCTTY | O_CLOEXEC | O_NONBLOCK);
    if (master < 0 || grantpt(master) != 0 || unlockpt(master) != 0 || ptsname_r(master, name, sizeof name) != 0
        || !make_raw(name)) {
        fprintf(stderr, "stand-pc: cannot make a pseudo-terminal: %s\n", strerror(errno));
        return false;
    }
    printf("port %s\n", name);
    return fflush(stdout) == 0;
}

static void read_host(void) {
    uint8_t bytes[RING_SIZE];
    const uint8_t room = ring_room(&rx);
    const ssize_t got = room == 0 ? 0 : read(master, bytes, room);
    for (ssize_t i = 0; i < got; i++) {
        ring_put(&rx, bytes[i]);
    }
}

static void write_host(bool host_there) {
    uint8_t bytes[RING_SIZE];
    size_t count = 0;
    while (count < sizeof bytes && ring_take(&tx, &bytes[count])) {
        count++;
    }
    if (host_there && count > 0 && write(master, bytes, count) < 0 && errno != EAGAIN && errno != EIO) {
        fprintf(stderr, "stand-pc: cannot write: %s\n", strerror(errno));
    }
}

void pty_move(void) {
    struct pollfd state = {master, POLLIN, 0};
    if (poll(&state, 1, 0) < 0) {
        return;
    }
    if ((state.revents & POLLIN) != 0) {
        read_host();
    }
    write_host((state.revents & POLLHUP) == 0);
}

bool pty_has_input(void) {
    return ring_room(&rx) < RING_SIZE - 1u;
}

void pty_stop(void) {
    close(master);
}

bool hal_rx_take(uint8_t *byte) {
    return ring_take(&rx, byte);
}

uint16_t hal_tx_room(void) {
    return ring_room(&tx);
}

void hal_tx_put(const uint8_t *bytes, uint16_t length) {
    for (uint16_t i = 0; i < length; i++) {
        ring_put(&tx, bytes[i]);
    }
}
