/* SPDX-License-Identifier: GPL-3.0-or-later. This test program links libsimavr; see ../LICENSE.md. */
#include "commands.h"

#include <stddef.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "chip.h"
#include "line.h"
#include "pace.h"
#include "relay.h"
#include "toy.h"

struct commands_requests commands_requests;

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
        commands_requests.freeze_us += number * 1e3;
    } else if (strcmp(word, "speed") == 0) {
        pace_set_speed(number);
    } else {
        return false;
    }
    return true;
}

static bool take_feedback_command(const char *value) {
    if (strcmp(value, "auto") == 0) {
        relay_set_mode(RELAY_AUTO);
    } else if (strcmp(value, "0") == 0) {
        relay_set_mode(RELAY_OPEN);
    } else if (strcmp(value, "1") == 0) {
        relay_set_mode(RELAY_CLOSED);
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
    } else if (strcmp(word, "restart") == 0) {
        chip_reset(CHIP_WATCHDOG);
    } else if (strcmp(word, "hang") == 0) {
        chip_hang();
    } else if (strcmp(word, "unplug") == 0) {
        line_unplug();
    } else if (strcmp(word, "plug") == 0) {
        line_plug();
    } else if (strcmp(word, "quit") == 0) {
        commands_requests.quit = true;
    } else {
        return false;
    }
    return true;
}

static bool take_value_command(const char *word, const char *value, bool with_toy) {
    if (strcmp(word, "feedback") == 0) {
        return take_feedback_command(value);
    }
    char *end;
    const double number = strtod(value, &end);
    if (end != value && *end == '\0' && number >= 0.0 && take_number_command(word, number)) {
        return true;
    }
    return with_toy && toy_command(word, value);
}

void commands_take(const char *text, bool with_toy) {
    char word[16];
    char value[32];
    const int found = sscanf(text, "%15s %31s", word, value);
    const bool known = found == 2 ? take_value_command(word, value, with_toy) : found == 1 && take_plain_command(word);
    if (!known && found > 0) {
        fprintf(stderr, "stand-emulator: unknown command: %s\n", text);
    }
}
