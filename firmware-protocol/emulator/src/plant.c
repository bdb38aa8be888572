/* SPDX-License-Identifier: GPL-3.0-or-later. This test program links libsimavr; see ../LICENSE.md. */
#include "plant.h"

#include <inttypes.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "chip.h"
#include "commands.h"
#include "input.h"
#include "line.h"
#include "toy.h"

#define REFERENCE_MV 5000.0

static bool read_number(const char **at, double most, double *value) {
    char *end;
    *value = strtod(*at, &end);
    if (end == *at || !(*value >= 0.0 && *value <= most)) {
        return false;
    }
    *at = end;
    return true;
}

static bool read_edges(const char **at, unsigned meter, uint64_t began) {
    double count;
    double us;
    if (!read_number(at, 4096.0, &count)) {
        return false;
    }
    for (double i = 0.0; i < count; i += 1.0) {
        if (!read_number(at, 1e9, &us) || !chip_add_edge(meter, began + (uint64_t)(us * CYCLES_PER_US))) {
            return false;
        }
    }
    return true;
}

static uint16_t code_of(double millivolts) {
    const double code = millivolts * (CODE_MAX + 1u) / REFERENCE_MV;
    return code > CODE_MAX ? CODE_MAX : (uint16_t)code;
}

/* A0 A1 A2 A3 I n0 t... n1 t... */
static bool take_inputs(const char *at) {
    struct chip_inputs inputs;
    double value;
    for (unsigned i = 0; i < ANALOG_PINS; i++) {
        if (!read_number(&at, REFERENCE_MV, &value)) {
            return false;
        }
        inputs.codes[i] = code_of(value);
    }
    if (!read_number(&at, LOOPS_ALL, &value)) {
        return false;
    }
    inputs.closed = (uint8_t)value;
    chip_set_inputs(&inputs);
    const uint64_t began = chip_now();
    return read_edges(&at, 0, began) && read_edges(&at, 1, began);
}

static bool print_pins(void) {
    const struct chip_outputs outputs = chip_get_outputs();
    printf("pins %" PRIu64 " %" PRIu32 " %" PRIu32 " %d %" PRIu64 "\n", chip_now() / CYCLES_PER_US, outputs.duty[0],
           outputs.duty[1], outputs.contactor_pulled ? 1 : 0, line_bytes_from_host());
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
                line_unplug();
                exit(1);
            }
            return true;
        }
        commands_take(text, false);
        if (commands_requests.quit) {
            return false;
        }
    }
    return false;
}

static bool exchange_by_toy(double exchange_us) {
    const char *text;
    while (!commands_requests.quit && (text = input_line()) != NULL) {
        commands_take(text, true);
    }
    toy_exchange(exchange_us);
    return !commands_requests.quit;
}

bool plant_exchange(enum plant_kind kind, double exchange_us) {
    return kind == PLANT_LINK ? exchange_by_link() : exchange_by_toy(exchange_us);
}
