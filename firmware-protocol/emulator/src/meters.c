/* SPDX-License-Identifier: GPL-3.0-or-later. This test program links libsimavr; see ../LICENSE.md. */
#include "meters.h"

#include "chip.h"
#include "pins.h"

#define EDGES_MAX 4096u
/* A pulse stays high so long, or half way to the next edge where that is sooner. */
#define PULSE_CYCLES (50u * CYCLES_PER_US)

struct meter {
    uint64_t edges[EDGES_MAX]; /* virtual cycles */
    unsigned first;
    unsigned count;
    bool high;
};

static struct meter meters[METERS];
static uint64_t chip_offset;

static uint64_t first_of(const struct meter *meter) {
    return meter->edges[meter->first];
}

static void remove_first(struct meter *meter) {
    meter->first = (meter->first + 1u) % EDGES_MAX;
    meter->count--;
}

bool meters_add_edge(unsigned number, uint64_t cycle) {
    struct meter *const meter = &meters[number];
    if (meter->count == EDGES_MAX) {
        return false;
    }
    meter->edges[(meter->first + meter->count++) % EDGES_MAX] = cycle;
    return true;
}

void meters_lose_before(uint64_t cycle) {
    for (unsigned i = 0; i < METERS; i++) {
        while (meters[i].count > 0 && first_of(&meters[i]) < cycle) {
            remove_first(&meters[i]);
        }
    }
}

static void set_level(avr_t *avr, struct meter *meter, bool high) {
    meter->high = high;
    pins_set_meter(avr, (unsigned)(meter - meters), high);
}

static avr_cycle_count_t change_level(avr_t *avr, avr_cycle_count_t when, void *parameter) {
    struct meter *const meter = parameter;
    if (meter->high) {
        set_level(avr, meter, false);
        return meter->count > 0 ? first_of(meter) - chip_offset : 0;
    }
    set_level(avr, meter, true);
    remove_first(meter);
    avr_cycle_count_t width = PULSE_CYCLES;
    if (meter->count > 0) {
        const uint64_t next = first_of(meter) - chip_offset;
        const uint64_t gap = next > when ? next - when : 2u;
        width = gap / 2u < width ? gap / 2u : width;
    }
    return when + width;
}

void meters_watch(avr_t *avr, uint64_t offset) {
    chip_offset = offset;
    for (unsigned i = 0; i < METERS; i++) {
        struct meter *const meter = &meters[i];
        if (avr_cycle_timer_status(avr, change_level, meter) != 0 && meter->high) {
            continue; /* the pulse's end finds the next edge */
        }
        avr_cycle_timer_cancel(avr, change_level, meter);
        if (meter->high) {
            set_level(avr, meter, false);
        }
        if (meter->count > 0) {
            const uint64_t first = first_of(meter);
            const uint64_t now = avr->cycle + offset;
            avr_cycle_timer_register(avr, first > now ? first - now : 0, change_level, meter);
        }
    }
}
