/*
 * stand-pc: the same core as on the microcontroller, as a program on a PC. For trying a host without hardware and for
 * the tests. Ends at the end of its standard input or on SIGTERM.
 */
#include <signal.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>
#include <unistd.h>

#include "board.h"
#include "hal.h"
#include "parts.h"

static volatile sig_atomic_t stop_asked;

static void ask_stop(int signal_number) {
    (void)signal_number;
    stop_asked = 1;
}

static const struct description fresh_description = {
    .meters = 2,
    .drives = 2,
    .analogs = 4,
    .tick_hz = TICK_HZ,
    .pwm_hz = {7812, 7812},
    .ramp_limit = 131, /* 500 ms from 0 to full */
    .roles = {ROLE_VOLTS, ROLE_AMPS, ROLE_PRESSURE, ROLE_TEMPERATURE},
    .limits = {49152, 50, 2400000, 58982, 100, 52429, 5000, 0, 5000, 55706, 50, 750},
    .kind = {'p', 'c', 0, 0, 0, 0, 0, 0},
};

static struct description description;
static struct board board;

/* Two starts hardly share wall time and process number; the factor spreads them over all bits. */
static uint32_t fresh_boot_id(void) {
    struct timespec now;
    clock_gettime(CLOCK_REALTIME, &now);
    const uint64_t seed = (uint64_t)now.tv_sec * 1000000000u + (uint64_t)now.tv_nsec + (uint64_t)getpid();
    return (uint32_t)((seed * 0x9E3779B97F4A7C15u) >> 32);
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

static void start(uint8_t version, uint8_t reset_cause) {
    clock_start();
    outputs_start();
    meters_start();
    analogs_start();
    pty_reset();
    description = fresh_description;
    description.boot_id = fresh_boot_id();
    description.reset_cause = reset_cause;
    board_start(&board, &description, version);
}

static void catch_signals(void) {
    struct sigaction stop;
    memset(&stop, 0, sizeof stop);
    stop.sa_handler = ask_stop;
    sigaction(SIGTERM, &stop, NULL);
    sigaction(SIGINT, &stop, NULL);
    signal(SIGHUP, SIG_IGN);
}

static void run(uint8_t version) {
    enum provoked provoked = PROVOKED_NOTHING;

    while (!stop_asked && provoked != PROVOKED_END) {
        if (provoked == PROVOKED_RESTART) {
            start(version, RESET_WATCHDOG);
        }
        do {
            pty_move();
            board_poll(&board);
        } while (pty_has_input() && !stop_asked);
        pty_move();
        provoked = provoke();
    }
}

int main(int count, char **words) {
    uint8_t version;

    if (!read_version(count, words, &version)) {
        fputs("usage: stand-pc [--version-byte 0..255]\n", stderr);
        return 2;
    }
    catch_signals();
    if (!pty_start()) {
        return 1;
    }
    start(version, RESET_POWER_ON);
    run(version);
    pty_stop();
    return 0;
}
