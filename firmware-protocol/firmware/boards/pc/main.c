/*
 * stand-pc: the same core as on the microcontroller, as a program on a PC. For trying a host without hardware and for
 * the tests. Ends at the end of its standard input or on SIGTERM.
 */
#include <poll.h>
#include <signal.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>
#include <unistd.h>

#include "board.h"
#include "hal.h"
#include "parts.h"

#define WAIT_MS 1

static volatile sig_atomic_t stop_asked;

static void ask_stop(int signal_number) {
    (void)signal_number;
    stop_asked = 1;
}

static struct identity identity = {
    .firmware_major = 0,
    .firmware_minor = 1,
    .firmware_patch = 0,
    .reset_cause = RESET_POWER_ON,
    .meters = 1,
    .drives = 1,
    .analogs = 4,
    .tick_hz = TICK_HZ,
    .pwm_hz = {7812, 0},
    .ramp_limit = 131,
    .link_timeout_ms = 750,
    .current_channel = 1,
    .over_current_limit = 49152,
    .over_current_ms = 50,
    .kind = {'p', 'c', 0, 0, 0, 0, 0, 0},
};

/* Two starts hardly share wall time and process number; the factor spreads them over all bits. */
static uint32_t fresh_boot_id(void) {
    struct timespec now;
    clock_gettime(CLOCK_REALTIME, &now);
    const uint64_t seed = (uint64_t)now.tv_sec * 1000000000u + (uint64_t)now.tv_nsec + (uint64_t)getpid();
    return (uint32_t)((seed * 0x9E3779B97F4A7C15u) >> 32);
}

/* False at the end of the input. Lines on the input mean nothing. */
static bool wait_a_little(void) {
    struct pollfd state = {STDIN_FILENO, POLLIN, 0};
    char bytes[64];
    if (poll(&state, 1, WAIT_MS) <= 0) {
        return true;
    }
    return read(STDIN_FILENO, bytes, sizeof bytes) > 0;
}

static bool read_version(int count, char **words, uint8_t *version) {
    *version = PROTOCOL_VERSION;
    if (count == 1) {
        return true;
    }
    if (count != 3 || strcmp(words[1], "--version-byte") != 0) {
        return false;
    }
    char *end;
    const long given = strtol(words[2], &end, 10);
    *version = (uint8_t)given;
    return *end == '\0' && end != words[2] && given >= 0 && given <= 255;
}

int main(int count, char **words) {
    static struct board board;
    uint8_t version;
    struct sigaction stop;

    if (!read_version(count, words, &version)) {
        fputs("usage: stand-pc [--version-byte 0..255]\n", stderr);
        return 2;
    }
    memset(&stop, 0, sizeof stop);
    stop.sa_handler = ask_stop;
    sigaction(SIGTERM, &stop, NULL);
    sigaction(SIGINT, &stop, NULL);
    signal(SIGHUP, SIG_IGN);
    hardware_start();
    if (!pty_start()) {
        return 1;
    }
    identity.boot_id = fresh_boot_id();
    board_start(&board, &identity, version);
    while (!stop_asked && wait_a_little()) {
        do {
            pty_move();
            board_poll(&board);
        } while (pty_has_input() && !stop_asked);
        pty_move();
    }
    pty_stop();
    return 0;
}
