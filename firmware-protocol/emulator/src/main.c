/* SPDX-License-Identifier: GPL-3.0-or-later. This test program links libsimavr; see ../LICENSE.md. */
/*
 * stand-emulator: runs the ATmega328P firmware of the stand's board against a plant on standard input and output and
 * a host on a pseudo-terminal. For tests only.
 */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "chip.h"
#include "commands.h"
#include "eeprom_file.h"
#include "line.h"
#include "pace.h"
#include "plant.h"
#include "relay.h"
#include "stop.h"

#define SLICE_US 500.0
/* After a stall so many exchanges are made up for at once. */
#define BURST_EXCHANGES 3.0

volatile sig_atomic_t stop_asked;

struct options {
    const char *elf;
    const char *eeprom;
    double exchange_us;
    enum plant_kind plant;
};

static void ask_stop(int signal_number) {
    (void)signal_number;
    stop_asked = 1;
}

static void usage(void) {
    fputs("usage: stand-emulator --elf FILE [--speed X] [--exchange-us N] [--plant link|none] [--link PATH]\n"
          "                      [--eeprom FILE]\n",
          stderr);
    exit(2);
}

static void read_option(struct options *options, const char *name, const char *value) {
    if (strcmp(name, "--elf") == 0) {
        options->elf = value;
    } else if (strcmp(name, "--speed") == 0) {
        pace_set_speed(atof(value));
    } else if (strcmp(name, "--exchange-us") == 0) {
        options->exchange_us = atof(value);
    } else if (strcmp(name, "--plant") == 0 && strcmp(value, "none") == 0) {
        options->plant = PLANT_NONE;
    } else if (strcmp(name, "--plant") == 0 && strcmp(value, "link") == 0) {
        options->plant = PLANT_LINK;
    } else if (strcmp(name, "--link") == 0) {
        line_keep_link(value);
    } else if (strcmp(name, "--eeprom") == 0) {
        options->eeprom = value;
    } else {
        usage();
    }
}

static struct options read_options(int count, char **words) {
    struct options options = {NULL, NULL, 5000.0, PLANT_LINK};
    for (int i = 1; i < count; i += 2) {
        if (i + 1 >= count) {
            usage();
        }
        read_option(&options, words[i], words[i + 1]);
    }
    if (options.elf == NULL || options.exchange_us < 1.0 || options.exchange_us > 1e6) {
        usage();
    }
    return options;
}

/* One slice of an exchange; part of it may be frozen. */
static bool run_slice(uint64_t until) {
    if (commands_requests.freeze_us > 0.0) {
        const uint64_t now = chip_now();
        const uint64_t thawed = now + (uint64_t)(commands_requests.freeze_us * CYCLES_PER_US);
        const uint64_t frozen_until = thawed < until ? thawed : until;
        chip_freeze_until(frozen_until);
        commands_requests.freeze_us = thawed <= until ? 0.0 : (double)(thawed - until) / CYCLES_PER_US;
    }
    return chip_run_until(until);
}

static bool run_exchange(double exchange_us, uint64_t *ends) {
    const uint64_t began = *ends;
    for (double at = 0.0; at < exchange_us && !stop_asked; at += SLICE_US) {
        const double part = exchange_us - at < SLICE_US ? exchange_us - at : SLICE_US;
        line_poll();
        if (!run_slice(began + (uint64_t)((at + part) * CYCLES_PER_US))) {
            fputs("stand-emulator: the firmware crashed\n", stderr);
            return false;
        }
        line_poll();
        chip_set_feedback(relay_follow(chip_get_outputs().contactor_pulled, chip_now()));
        pace_advance(part);
    }
    *ends = began + (uint64_t)(exchange_us * CYCLES_PER_US);
    return true;
}

static void catch_signals(void) {
    struct sigaction stop;
    memset(&stop, 0, sizeof stop);
    stop.sa_handler = ask_stop;
    sigaction(SIGTERM, &stop, NULL);
    sigaction(SIGINT, &stop, NULL);
    signal(SIGPIPE, SIG_IGN);
    signal(SIGHUP, SIG_IGN);
}

int main(int count, char **words) {
    const struct options options = read_options(count, words);
    uint64_t ends = 0;
    bool well = true;

    catch_signals();
    chip_load(options.elf, line_take_byte, line_put_byte);
    if (options.eeprom != NULL) {
        eeprom_file_open(options.eeprom);
    }
    line_plug();
    pace_set_burst(BURST_EXCHANGES * options.exchange_us);
    while (well && !stop_asked && plant_exchange(options.plant, options.exchange_us)) {
        well = run_exchange(options.exchange_us, &ends);
        eeprom_file_keep();
    }
    line_unplug();
    return well ? 0 : 1;
}
