/* Sound frames with random contents, as the fuzzed input wants them: with escapes, and with some time behind them. */
#ifndef STAND_FUZZ_SOUND_FRAME_H
#define STAND_FUZZ_SOUND_FRAME_H

#include <stddef.h>
#include <stdint.h>

#define SOUND_FRAME_MAX 128u

/* Writes the frame of this seed; returns its length. */
size_t sound_frame(uint32_t seed, uint8_t bytes[SOUND_FRAME_MAX]);

#endif
