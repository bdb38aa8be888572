/* The line: the board's rings, and the host's ear. */
#include <string.h>

#include "bench_line.h"
#include "check.h"
#include "ring.h"

#define RING_SIZE 256u

struct heard heard[HEARD_MAX];
unsigned heard_count;
unsigned heard_bad;

static volatile uint8_t rx_bytes[RING_SIZE];
static volatile uint8_t tx_bytes[RING_SIZE];
static struct ring rx;
static struct ring tx;
static struct frame_receiver ear;

void bench_line_start(void) {
    ring_start(&rx, rx_bytes, RING_SIZE);
    ring_start(&tx, tx_bytes, RING_SIZE);
    frame_receiver_start(&ear);
    bench_forget();
    heard_bad = 0;
}

void bench_open_line(void) {
    frame_receiver_start(&ear);
    bench_forget();
}

void bench_forget(void) {
    heard_count = 0;
}

static void note(const struct frame *frame) {
    if (!CHECK(heard_count < HEARD_MAX)) {
        heard_count = 0;
    }
    struct heard *const at = &heard[heard_count++];
    at->version = frame->version;
    at->type = frame->type;
    at->sequence = frame->sequence;
    at->length = frame->length;
    memcpy(at->payload, frame->payload, frame->length);
}

void bench_line_drain(unsigned bytes) {
    uint8_t byte;
    struct frame frame;
    while (bytes-- > 0 && ring_take(&tx, &byte)) {
        const enum frame_outcome outcome = frame_receive(&ear, byte, &frame);
        if (outcome == FRAME_GOOD) {
            note(&frame);
        } else if (outcome != FRAME_NONE) {
            heard_bad++;
        }
    }
}

void bench_line_put(uint8_t byte) {
    ring_put(&rx, byte);
}

bool hal_rx_take(uint8_t *byte) {
    return ring_take(&rx, byte);
}

uint16_t hal_tx_room(void) {
    return ring_room(&tx);
}

void hal_tx_put(const uint8_t *bytes, uint16_t length) {
    CHECK(length <= ring_room(&tx));
    for (uint16_t i = 0; i < length; i++) {
        ring_put(&tx, bytes[i]);
    }
}
