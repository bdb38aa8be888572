/* The host's end of the emulated line. */
#include <errno.h>
#include <fcntl.h>
#include <poll.h>
#include <stdio.h>
#include <string.h>
#include <unistd.h>

#include "bytes.h"
#include "emulated.h"
#include "emulated_line.h"

#define FRAMES_KEPT 8192u
#define KEEP_ALIVE_US 250000u
#define ANSWER_MS 600u

unsigned bad_frames;

static char port[200];
static int line = -1;
static bool hung_up;
static struct frame_receiver ear;
static struct board_frame frames[FRAMES_KEPT];
static unsigned frame_count;
static unsigned looked_at;
static uint16_t next_sequence;
static uint16_t asked; /* sequence of what host_ask sent last */
static uint32_t boot_id;
static bool keeps_alive;
static unsigned long long kept_alive_at;

void line_start(void) {
    bad_frames = 0;
    next_sequence = 0;
    keeps_alive = false;
    kept_alive_at = 0;
}

void line_set_port(const char *new_port) {
    snprintf(port, sizeof port, "%s", new_port);
}

void host_open(void) {
    const uint8_t delimiter = 0;
    host_close();
    frame_receiver_start(&ear);
    host_forget();
    hung_up = false;
    line = open(port, O_RDWR | O_NOCTTY | O_NONBLOCK | O_CLOEXEC);
    if (line >= 0 && write(line, &delimiter, 1) != 1) {
        printf("cannot write to %s\n", port);
    }
}

void host_close(void) {
    if (line >= 0) {
        close(line);
        line = -1;
    }
}

bool host_hung_up(void) {
    return hung_up;
}

void host_forget(void) {
    frame_count = 0;
    looked_at = 0;
}

static void keep(const struct frame *frame) {
    if (frame_count == FRAMES_KEPT) {
        host_forget();
    }
    struct board_frame *const at = &frames[frame_count++];
    at->type = frame->type;
    at->sequence = frame->sequence;
    at->length = frame->length;
    memcpy(at->payload, frame->payload, frame->length);
}

static void hear(uint8_t byte) {
    struct frame frame;
    const enum frame_outcome outcome = frame_receive(&ear, byte, &frame);
    if (outcome == FRAME_GOOD) {
        keep(&frame);
    } else if (outcome != FRAME_NONE) {
        bad_frames++;
    }
}

void line_listen(void) {
    uint8_t bytes[1024];
    if (line < 0) {
        return;
    }
    ssize_t got;
    while ((got = read(line, bytes, sizeof bytes)) > 0) {
        for (ssize_t i = 0; i < got; i++) {
            hear(bytes[i]);
        }
    }
    if (got == 0 || (errno != EAGAIN && errno != EINTR)) {
        hung_up = true;
    }
}

uint16_t host_send(uint8_t type, const uint8_t *payload, uint8_t length) {
    const struct frame frame = {PROTOCOL_VERSION, type, next_sequence++, length, payload};
    uint8_t wire[FRAME_WIRE_MAX(FRAME_PAYLOAD_MAX)];
    const struct frame_written written = frame_encode(&frame, wire, sizeof wire);
    if (line >= 0 && write(line, wire, written.length) != (ssize_t)written.length) {
        hung_up = true;
    }
    return frame.sequence;
}

void host_keep_alive(bool on) {
    keeps_alive = on;
}

void line_keep_alive(void) {
    if (keeps_alive && pins.us - kept_alive_at >= KEEP_ALIVE_US) {
        kept_alive_at = pins.us;
        host_send(MESSAGE_KEEP_ALIVE, NULL, 0);
        emulated_breathe();
    }
}

const struct board_frame *host_any(void) {
    return looked_at < frame_count ? &frames[looked_at++] : NULL;
}

const struct board_frame *host_next(uint8_t type) {
    const struct board_frame *frame = host_any();
    while (frame != NULL && frame->type != type) {
        frame = host_any();
    }
    return frame;
}

const struct board_frame *host_wait(uint8_t type, unsigned within_ms) {
    for (unsigned ms = 0; ms <= within_ms; ms += emulated_exchange_ms()) {
        line_listen();
        const struct board_frame *const frame = host_next(type);
        if (frame != NULL) {
            return frame;
        }
        emulated_breathe();
        emulated_step();
    }
    return NULL;
}

const struct board_frame *host_hello(void) {
    for (unsigned i = 0; i < 20; i++) {
        host_send(MESSAGE_HELLO, NULL, 0);
        const struct board_frame *const identity = host_wait(MESSAGE_IDENTITY, 100);
        if (identity != NULL) {
            boot_id = get_u32(identity->payload + 11);
            return identity;
        }
    }
    return NULL;
}

uint32_t host_boot_id(void) {
    return boot_id;
}

const struct board_frame *host_ask(uint8_t type, const uint8_t *payload, uint8_t length, uint8_t answer) {
    emulated_breathe();
    host_forget();
    asked = host_send(type, payload, length);
    return host_wait(answer, ANSWER_MS);
}

/* The answer to what was sent last, acknowledgement or refusal; NULL when it is the other one or for something else. */
static const struct board_frame *verdict(uint8_t type, const uint8_t *payload, uint8_t length, uint8_t wanted) {
    const struct board_frame *const answer = host_ask(type, payload, length, wanted);
    const bool ours = answer != NULL && get_u16(answer->payload) == asked && answer->payload[2] == type;
    return ours ? answer : NULL;
}

bool host_acknowledged(uint8_t type, const uint8_t *payload, uint8_t length) {
    return verdict(type, payload, length, MESSAGE_ACKNOWLEDGE) != NULL;
}

struct refusal host_refused(uint8_t type, const uint8_t *payload, uint8_t length) {
    struct refusal refusal = {REFUSE_NOTHING, 0};
    const struct board_frame *const answer = verdict(type, payload, length, MESSAGE_REFUSE);
    if (answer != NULL) {
        refusal.reason = answer->payload[3];
        refusal.detail = (int32_t)get_u32(answer->payload + 4);
    }
    return refusal;
}

bool host_ask_to_arm(void) {
    uint8_t payload[4];
    put_u32(payload, boot_id);
    return host_acknowledged(MESSAGE_ARM, payload, sizeof payload);
}

bool host_arm(void) {
    if (!host_ask_to_arm()) {
        return false;
    }
    const struct board_frame *const event = host_wait(MESSAGE_EVENT, 300);
    return event != NULL && event->payload[6] == EVENT_ARMED;
}

bool host_drive(uint8_t channel, uint32_t duty) {
    uint8_t payload[7];
    put_u16(put_u32(put_u8(payload, channel), duty), 0);
    return host_acknowledged(MESSAGE_DRIVE, payload, sizeof payload);
}

bool host_stream(uint16_t period_ms, uint8_t kind) {
    uint8_t payload[3];
    put_u8(put_u16(payload, period_ms), kind);
    return host_acknowledged(MESSAGE_STREAM, payload, sizeof payload);
}

bool host_tighten(uint8_t limit, uint32_t value) {
    uint8_t payload[5];
    put_u32(put_u8(payload, limit), value);
    const struct board_frame *const limits = host_ask(MESSAGE_TIGHTEN, payload, sizeof payload, MESSAGE_LIMITS);
    return limits != NULL && get_u32(limits->payload + 4u * limit) == value;
}
