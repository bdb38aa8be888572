/* SPDX-License-Identifier: GPL-3.0-or-later. This test program links libsimavr; see ../LICENSE.md. */
#include "plant.h"

#include <inttypes.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "chip.h"
#include "input.h"
#include "line.h"
#include "pace.h"

#define TOY_HZ_AT_FULL 250.0
#define TOY_VOLTS_MV 3450u   /* 13.8 V of 20 V */
#define TOY_FULL_AMPS_MV 1250u /* 10 A of 40 A */
#define TOY_PRESSURE_MV 1500u
#define TOY_WATER_MV 1000u

struct plant_requests plant_requests;

static double toy_phase;

static bool read_count(const char **at, double most, double *value) {
    char *end;
    *value = strtod(*at, &end);
    if (end == *at || *value < 0.0 || *value > most) {
        return false;
    }
    *at = end;
    return true;
}

static bool read_edges(const char **at, uint64_t began, bool used) {
    double count;
    double us;
    if (!read_count(at, 4096.0, &count)) {
        return false;
    }
    for (double i = 0.0; i < count; i += 1.0) {
        if (!read_count(at, 1e9, &us)) {
            return false;
        }
        if (used && !chip_add_edge(began + (uint64_t)(us * CYCLES_PER_US))) {
            return false;
        }
    }
    return true;
}

/* A0 A1 A2 A3 E G n0 t... n1 t... */
static bool take_inputs(const char *at) {
    struct chip_inputs inputs;
    double value;
    for (unsigned i = 0; i < ANALOG_PINS; i++) {
        if (!read_count(&at, 5000.0, &value)) {
            return false;
        }
        inputs.millivolts[i] = (uint32_t)(value + 0.5);
    }
    if (!read_count(&at, 1.0, &value)) {
        return false;
    }
    inputs.emergency_stop_closed = value > 0.0;
    if (!read_count(&at, 1.0, &value)) {
        return false;
    }
    inputs.guard_closed = value > 0.0;
    chip_set_inputs(&inputs);
    const uint64_t began = chip_now();
    /* The second meter has no pin on this board yet: its edges are read and left. */
    return read_edges(&at, began, true) && read_edges(&at, began, false);
}

static bool take_number_command(const char *word, double number) {
    if (strcmp(word, "corrupt-rx") == 0) {
        line_rx_faults.corrupt_every = (unsigned)number;
    } else if (strcmp(word, "corrupt-tx") == 0) {
        line_tx_faults.corrupt_every = (unsigned)number;
    } else if (strcmp(word, "drop-rx") == 0) {
        line_rx_faults.drop_every = (unsigned)number;
    } else if (strcmp(word, "drop-tx") == 0) {
        line_tx_faults.drop_every = (unsigned)number;
    } else if (strcmp(word, "freeze") == 0) {
        plant_requests.freeze_us += number * 1e3;
    } else if (strcmp(word, "speed") == 0) {
        pace_set_speed(number);
    } else {
        return false;
    }
    return true;
}

static bool take_plain_command(const char *word) {
    if (strcmp(word, "reset") == 0) {
        chip_reset(CHIP_EXTERNAL);
    } else if (strcmp(word, "brown-out") == 0) {
        chip_reset(CHIP_BROWN_OUT);
    } else if (strcmp(word, "hang") == 0) {
        chip_hang();
    } else if (strcmp(word, "unplug") == 0) {
        line_unplug();
    } else if (strcmp(word, "plug") == 0) {
        line_plug();
    } else if (strcmp(word, "quit") == 0) {
        plant_requests.quit = true;
    } else {
        return false;
    }
    return true;
}

static void take_command(const char *text) {
    char word[16];
    double number;
    const int found = sscanf(text, "%15s %lf", word, &number);
    const bool known = found == 2 ? number >= 0.0 && take_number_command(word, number)
                                  : found == 1 && take_plain_command(word);
    if (!known && found > 0) {
        fprintf(stderr, "stand-emulator: unknown command: %s\n", text);
    }
}

static bool print_pins(void) {
    const struct chip_outputs outputs = chip_get_outputs();
    printf("pins %" PRIu64 " %" PRIu32 " 0 %d %" PRIu64 "\n", chip_now() / CYCLES_PER_US, outputs.pump_duty,
           outputs.contactor_closed ? 1 : 0, line_bytes_from_host());
    return fflush(stdout) == 0;
}

static bool exchange_by_link(void) {
    const char *text;
    if (!print_pins()) {
        return false;
    }
    while ((text = input_wait_line()) != NULL) {
        if (strncmp(text, "in ", 3) == 0) {
            if (!take_inputs(text + 3)) {
                fprintf(stderr, "stand-emulator: cannot read: %s\n", text);
                return false;
            }
            return true;
        }
        take_command(text);
        if (plant_requests.quit) {
            return false;
        }
    }
    return false;
}

static bool exchange_by_toy(double exchange_us) {
    const char *text;
    const double duty = chip_get_outputs().pump_duty / 65536.0;
    const struct chip_inputs inputs = {
        {TOY_VOLTS_MV, (uint32_t)(TOY_FULL_AMPS_MV * duty + 0.5), TOY_PRESSURE_MV, TOY_WATER_MV}, true, true};
    const uint64_t began = chip_now();
    const double edges_per_us = TOY_HZ_AT_FULL * duty * 1e-6;

    while (!plant_requests.quit && (text = input_line()) != NULL) {
        take_command(text);
    }
    chip_set_inputs(&inputs);
    const double until = toy_phase + edges_per_us * exchange_us;
    for (double edge = 1.0; edge <= until; edge += 1.0) {
        chip_add_edge(began + (uint64_t)((edge - toy_phase) / edges_per_us * CYCLES_PER_US));
    }
    toy_phase = until - (double)(uint64_t)until;
    return !plant_requests.quit;
}

bool plant_exchange(enum plant_kind kind, double exchange_us) {
    return kind == PLANT_LINK ? exchange_by_link() : exchange_by_toy(exchange_us);
}
