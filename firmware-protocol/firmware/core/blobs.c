#include "blobs.h"

#include <string.h>

#include "crc16.h"
#include "hal.h"

#define SLOTS 3u
#define SLOT_BYTES (STORE_BYTES / SLOTS)
#define NO_SLOT 0xFFu
#define NO_BLOB 0xFFu
#define SEAL 0xA5u
#define UNSEALED 0xFFu
#define AGES 128u

/* A slot: seal, owner (blob and age), length, CRC, bytes. */
enum slot_place { SEAL_AT = 0, OWNER_AT = 1, LENGTH_AT = 2, CRC_AT = 4, BYTES_AT = 6 };
#define HEADING_BYTES (BYTES_AT - OWNER_AT)

typedef char slots_fit_the_store[SLOT_BYTES == BYTES_AT + BLOB_BYTES_MAX ? 1 : -1];

static uint16_t place(uint8_t slot, uint16_t at) {
    return (uint16_t)(slot * SLOT_BYTES + at);
}

static uint8_t read_byte(uint8_t slot, uint16_t at) {
    return hal_store_read(place(slot, at));
}

static uint16_t read_u16(uint8_t slot, uint16_t at) {
    return (uint16_t)(read_byte(slot, at) | ((uint16_t)read_byte(slot, (uint16_t)(at + 1u)) << 8));
}

static uint16_t crc_of(uint8_t slot, uint16_t length) {
    uint16_t crc = CRC16_START;
    for (uint16_t i = 0; i < length; i++) {
        crc = crc16_add(crc, read_byte(slot, (uint16_t)(BYTES_AT + i)));
    }
    return crc;
}

static bool is_sealed(uint8_t slot) {
    return read_byte(slot, SEAL_AT) == SEAL;
}

static uint8_t owner_of(uint8_t blob, uint8_t age) {
    return (uint8_t)(blob * AGES + age);
}

/* False when the slot's CRC is not that of its bytes. */
static bool read_slot(uint8_t slot, struct stored_blob *found) {
    found->slot = slot;
    found->age = (uint8_t)(read_byte(slot, OWNER_AT) % AGES);
    found->length = read_u16(slot, LENGTH_AT);
    found->crc = read_u16(slot, CRC_AT);
    return found->length > 0 && found->length <= BLOB_BYTES_MAX && crc_of(slot, found->length) == found->crc;
}

static bool is_newer(uint8_t age, uint8_t than) {
    return (uint8_t)(age - than) % AGES < AGES / 2u;
}

static bool is_stored(const struct blobs *blobs, uint8_t slot) {
    for (uint8_t i = 0; i < BLOBS; i++) {
        if (blobs->stored[i].slot == slot) {
            return true;
        }
    }
    return false;
}

/* Of the slots that hold no valid blob, a sealed one first: so no blob ever has more than two sealed slots. */
static void choose_spare(struct blobs *blobs) {
    uint8_t spare = NO_SLOT;
    for (uint8_t slot = 0; slot < SLOTS; slot++) {
        if (!is_stored(blobs, slot) && (spare == NO_SLOT || is_sealed(slot))) {
            spare = slot;
        }
    }
    blobs->spare = spare;
    blobs->spare_blob = NO_BLOB;
}

void blobs_start(struct blobs *blobs) {
    struct stored_blob found;

    memset(blobs, 0, sizeof *blobs);
    for (uint8_t i = 0; i < BLOBS; i++) {
        blobs->stored[i].slot = NO_SLOT;
    }
    for (uint8_t slot = 0; slot < SLOTS; slot++) {
        if (!is_sealed(slot) || !read_slot(slot, &found)) {
            continue;
        }
        struct stored_blob *const known = &blobs->stored[read_byte(slot, OWNER_AT) / AGES];
        if (known->slot == NO_SLOT || is_newer(found.age, known->age)) {
            *known = found;
        }
    }
    choose_spare(blobs);
}

bool blobs_busy(const struct blobs *blobs) {
    return blobs->work != BLOB_IDLE;
}

static void begin(struct blobs *blobs, enum blob_work work) {
    blobs->work = (uint8_t)work;
    blobs->done = 0;
}

void blobs_write(struct blobs *blobs, uint8_t blob, uint16_t offset, const uint8_t *bytes, uint8_t count) {
    memcpy(blobs->bytes, bytes, count);
    blobs->count = count;
    blobs->offset = offset;
    blobs->blob = blob;
    blobs->spare_blob = blob;
    begin(blobs, BLOB_UNSEALING);
}

bool blobs_commit(struct blobs *blobs, uint8_t blob, uint16_t length, uint16_t crc) {
    const struct stored_blob *const stored = &blobs->stored[blob];

    blobs->blob = blob;
    if (blobs->spare_blob == blob && crc_of(blobs->spare, length) == crc) {
        blobs->next.slot = blobs->spare;
        blobs->next.age = (uint8_t)((stored->age + 1u) % AGES);
        blobs->next.length = length;
        blobs->next.crc = crc;
        begin(blobs, BLOB_HEADING);
        return true;
    }
    return stored->length == length && stored->crc == crc;
}

/* The byte of the work's present step; false when the step has no more. */
static bool next_byte(const struct blobs *blobs, uint16_t *at, uint8_t *byte) {
    const struct stored_blob *const next = &blobs->next;
    const uint8_t heading[HEADING_BYTES] = {
        owner_of(blobs->blob, next->age), (uint8_t)(next->length & 0xFFu), (uint8_t)(next->length >> 8),
        (uint8_t)(next->crc & 0xFFu), (uint8_t)(next->crc >> 8)};

    switch (blobs->work) {
        case BLOB_UNSEALING:
            *at = SEAL_AT;
            *byte = UNSEALED;
            return blobs->done < 1u;
        case BLOB_WRITING:
            *at = (uint16_t)(BYTES_AT + blobs->offset + blobs->done);
            *byte = blobs->bytes[blobs->done % BLOB_WRITE_MAX];
            return blobs->done < blobs->count;
        case BLOB_HEADING:
            *at = (uint16_t)(OWNER_AT + blobs->done);
            *byte = heading[blobs->done % HEADING_BYTES];
            return blobs->done < HEADING_BYTES;
        default:
            *at = SEAL_AT;
            *byte = SEAL;
            return blobs->done < 1u;
    }
}

/* True when the step was the last one of its work. */
static bool end_step(struct blobs *blobs) {
    switch (blobs->work) {
        case BLOB_UNSEALING:
            begin(blobs, BLOB_WRITING);
            return false;
        case BLOB_HEADING:
            begin(blobs, BLOB_SEALING);
            return false;
        case BLOB_SEALING:
            blobs->stored[blobs->blob] = blobs->next;
            choose_spare(blobs);
            break;
        default:
            break;
    }
    begin(blobs, BLOB_IDLE);
    return true;
}

bool blobs_work(struct blobs *blobs) {
    uint16_t at;
    uint8_t byte;

    if (blobs->work == BLOB_IDLE || hal_store_busy()) {
        return false;
    }
    if (!next_byte(blobs, &at, &byte)) {
        return end_step(blobs);
    }
    blobs->done++;
    /* A byte that is there already is not written again: such memory wears out. */
    if (read_byte(blobs->spare, at) != byte) {
        hal_store_write(place(blobs->spare, at), byte);
    }
    return false;
}

uint8_t blobs_available(const struct blobs *blobs, uint8_t blob, uint16_t offset, uint8_t count) {
    const uint16_t length = blobs->stored[blob].length;
    if (offset >= length) {
        return 0;
    }
    const uint16_t left = (uint16_t)(length - offset);
    return (uint8_t)(left < count ? left : count);
}

uint8_t blobs_read(const struct blobs *blobs, uint8_t blob, uint16_t offset, uint8_t count, uint8_t *bytes) {
    const uint8_t there = blobs_available(blobs, blob, offset, count);
    for (uint8_t i = 0; i < there; i++) {
        bytes[i] = read_byte(blobs->stored[blob].slot, (uint16_t)(BYTES_AT + offset + i));
    }
    return there;
}

bool blobs_sound(const struct blobs *blobs) {
    struct stored_blob found;
    for (uint8_t slot = 0; slot < SLOTS; slot++) {
        if (is_sealed(slot) && !read_slot(slot, &found)) {
            return false;
        }
    }
    /* What was found at the start must not have gone since. */
    for (uint8_t i = 0; i < BLOBS; i++) {
        if (blobs->stored[i].slot != NO_SLOT && !is_sealed(blobs->stored[i].slot)) {
            return false;
        }
    }
    return true;
}
