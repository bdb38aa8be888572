#include "hardware.h"

#include <stdlib.h>
#include <string.h>

#include "analog.h"
#include "hal.h"
#include "ring.h"

#define RING_SIZE 256u
#define CONTACTOR_TICKS (10u * FUZZ_TICKS_PER_MS)
#define STORE_BYTE_TICKS (34u * FUZZ_TICKS_PER_MS / 10u)
#define LINE_BYTES_PER_MS 25u

static uint32_t ticks;
static bool allowed;
static bool pulled;
static uint32_t pulled_since;
static uint8_t inputs;
static bool blocked;
static uint16_t codes[ANALOGS_MAX];
static uint32_t converted_to;
static uint32_t drained_to;
static struct meter_reading meters[METERS_MAX];
static struct edge edges[METERS_MAX];
static bool edge_waits[METERS_MAX];
static uint8_t store[STORE_BYTES];
static uint32_t store_began;
static bool store_writes;
static volatile uint8_t rx_bytes[RING_SIZE];
static volatile uint8_t tx_bytes[RING_SIZE];
static struct ring rx;
static struct ring tx;

/* Not an assertion, which a build may leave out. */
static void must(bool condition) {
    if (!condition) {
        abort();
    }
}

void fuzz_hardware_start(void) {
    ticks = TICKS_AT_START;
    allowed = false;
    pulled = false;
    pulled_since = ticks - CONTACTOR_TICKS;
    inputs = INPUTS_WATCHED;
    blocked = false;
    memset(codes, 0, sizeof codes);
    converted_to = ticks;
    drained_to = ticks;
    memset(meters, 0, sizeof meters);
    for (unsigned i = 0; i < METERS_MAX; i++) {
        meters[i].count = EDGES_AT_START;
        edge_waits[i] = false;
    }
    memset(store, 0xFF, sizeof store);
    store_writes = false;
    ring_start(&rx, rx_bytes, RING_SIZE);
    ring_start(&tx, tx_bytes, RING_SIZE);
}

void fuzz_hardware_pass(uint32_t passing) {
    uint8_t byte;
    ticks += passing;
    const uint32_t ms = (ticks - drained_to) / FUZZ_TICKS_PER_MS;
    drained_to += ms * FUZZ_TICKS_PER_MS;
    for (uint32_t i = 0; i < ms * LINE_BYTES_PER_MS && !blocked; i++) {
        if (!ring_take(&tx, &byte)) {
            break;
        }
    }
}

void fuzz_hardware_receive(uint8_t byte) {
    ring_put(&rx, byte);
}

void fuzz_hardware_allow(void) {
    allowed = true;
}

static void edge(uint8_t meter) {
    meters[meter].count++;
    meters[meter].last_edge = ticks;
    if (!edge_waits[meter]) {
        edges[meter].time = ticks;
        edges[meter].number = (uint8_t)(meters[meter].count & 0xFFu);
        edge_waits[meter] = true;
    }
}

void fuzz_hardware_disturb(uint8_t how) {
    switch (how >> 5) {
        case 0:
            inputs = (uint8_t)(how & INPUTS_WATCHED);
            break;
        case 1:
            edge(how & 1u);
            break;
        case 2:
            blocked = (how & 1u) != 0;
            break;
        case 3:
            codes[how & 3u] = (uint16_t)((how & 0x1Cu) << 11 | 0xFFu);
            break;
        default:
            inputs = INPUTS_WATCHED;
            break;
    }
}

uint32_t hal_ticks(void) {
    return ticks;
}

uint32_t hal_drive_rounded(uint8_t channel, uint32_t duty) {
    must(channel < DRIVES_MAX);
    return (duty + 128u) / 256u * 256u;
}

void hal_drive_set(uint8_t channel, uint32_t duty) {
    must(channel < DRIVES_MAX);
    must(duty <= DUTY_FULL);
    must(duty == 0 || (allowed && pulled));
}

void hal_contactor_set(bool now_pulled) {
    must(!now_pulled || allowed);
    if (now_pulled != pulled) {
        pulled = now_pulled;
        pulled_since = ticks;
    }
}

void hal_armed_lamp_set(bool lit) {
    must(!lit || allowed);
}

uint8_t hal_inputs(void) {
    const bool moved = ticks - pulled_since >= CONTACTOR_TICKS;
    return (uint8_t)(inputs | (moved == pulled ? INPUT_FEEDBACK : 0));
}

void hal_meter_read(uint8_t meter, struct meter_reading *reading) {
    must(meter < METERS_MAX);
    *reading = meters[meter];
}

bool hal_edge_first(uint8_t meter, struct edge *first) {
    must(meter < METERS_MAX);
    *first = edges[meter];
    return edge_waits[meter];
}

void hal_edge_remove_first(uint8_t meter) {
    must(edge_waits[meter]);
    edge_waits[meter] = false;
}

void hal_analog_take(struct analog_sums *taken) {
    const uint32_t ms = (ticks - converted_to) / FUZZ_TICKS_PER_MS;

    analog_clear(taken);
    converted_to += ms * FUZZ_TICKS_PER_MS;
    taken->count = (uint16_t)(ms > 10000u ? 10000u : ms);
    for (uint8_t i = 0; i < ANALOGS_MAX && taken->count > 0; i++) {
        taken->sum[i] = (uint32_t)codes[i] * taken->count;
        taken->min[i] = codes[i];
        taken->max[i] = codes[i];
    }
}

bool hal_rx_take(uint8_t *byte) {
    return ring_take(&rx, byte);
}

uint16_t hal_tx_room(void) {
    return ring_room(&tx);
}

void hal_tx_put(const uint8_t *bytes, uint16_t length) {
    must(length <= ring_room(&tx));
    for (uint16_t i = 0; i < length; i++) {
        ring_put(&tx, bytes[i]);
    }
}

bool hal_store_busy(void) {
    store_writes = store_writes && ticks - store_began < STORE_BYTE_TICKS;
    return store_writes;
}

void hal_store_write(uint16_t at, uint8_t byte) {
    must(at < STORE_BYTES);
    must(!hal_store_busy());
    store[at] = byte;
    store_began = ticks;
    store_writes = true;
}

uint8_t hal_store_read(uint16_t at) {
    must(at < STORE_BYTES);
    return store[at];
}

void hal_self_test_begin(void) {
    must(!pulled);
}

/* Fails where the readings of the temperature channel are high, so that locking is reached too. */
bool hal_self_test_done(struct self_test *result) {
    result->tried = TEST_CONVERTER;
    result->failed = codes[3] > 0x8000u ? TEST_CONVERTER : 0;
    return true;
}

void hal_watchdog_kick(void) {
}
