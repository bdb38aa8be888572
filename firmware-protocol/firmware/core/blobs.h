/*
 * Blobs: bytes kept for the host in memory that survives a power cut.
 *
 * Three slots serve two blobs and the one spare copy that is being written, which belongs to the blob written last. A
 * slot counts only with its seal, which is the last byte that a commit writes; the seal of a slot that a newer one has
 * made obsolete is broken before anything else in it is touched. So whichever byte a power cut spoils, the start finds
 * the old blob or the new one, whole.
 */
#ifndef STAND_BLOBS_H
#define STAND_BLOBS_H

#include <stdbool.h>
#include <stdint.h>

#include "message.h"

struct stored_blob {
    uint8_t slot;    /* NO_SLOT when none is stored */
    uint8_t age;     /* counts the commits of this blob, modulo 128 */
    uint16_t length; /* 0 when none is stored */
    uint16_t crc;
};

enum blob_work { BLOB_IDLE, BLOB_UNSEALING, BLOB_WRITING, BLOB_HEADING, BLOB_SEALING };

struct blobs {
    struct stored_blob stored[BLOBS];
    uint8_t spare;      /* the slot that is written */
    uint8_t spare_blob; /* whose bytes it holds, or NO_BLOB */
    uint8_t work;       /* enum blob_work */
    uint8_t blob;       /* whose work it is */
    uint8_t done;       /* bytes of this step that are written */
    uint8_t count;
    uint16_t offset;
    struct stored_blob next; /* what the commit makes valid */
    uint8_t bytes[BLOB_WRITE_MAX];
};

/* Finds what is stored. */
void blobs_start(struct blobs *blobs);

bool blobs_busy(const struct blobs *blobs);

/* Begins to write; not while busy. */
void blobs_write(struct blobs *blobs, uint8_t blob, uint16_t offset, const uint8_t *bytes, uint8_t count);

/*
 * Begins to make the spare copy the valid one; not while busy. False when its CRC is another one. A blob that is stored
 * already, as it was asked for, is nothing to do and true.
 */
bool blobs_commit(struct blobs *blobs, uint8_t blob, uint16_t length, uint16_t crc);

/* Goes on with the work by one byte at most. True when it was finished by this call. */
bool blobs_work(struct blobs *blobs);

/* Bytes of the stored blob, as many of those asked for as there are. Returns how many. */
uint8_t blobs_read(const struct blobs *blobs, uint8_t blob, uint16_t offset, uint8_t count, uint8_t *bytes);

/* How many bytes blobs_read would give. */
uint8_t blobs_available(const struct blobs *blobs, uint8_t blob, uint16_t offset, uint8_t count);

/* Every sealed slot holds what its CRC says. */
bool blobs_sound(const struct blobs *blobs);

#endif
