/*
 * Any bytes on the line of a whole board, in virtual time. Whatever comes, no drive rises above 0 and no contactor is
 * pulled unless a sound `arm` frame for this boot was among the bytes; the hardware checks that at each pin, and the
 * frame is looked for by a parser that shares nothing with the core.
 *
 * The input is the line: its bytes are received one after another. FFh is an escape for what a line cannot do: the byte
 * behind it disturbs the hardware or lets time pass, and FFh again is the byte FFh.
 */
#include <string.h>

#include "board.h"
#include "hardware.h"
#include "listener.h"
#include "sound_frame.h"

#define ESCAPE 0xFFu
#define BYTE_TICKS 80u /* 250000 baud */
#define IDLE_MS 20u

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t length);
size_t LLVMFuzzerCustomMutator(uint8_t *bytes, size_t length, size_t most, unsigned seed);
size_t LLVMFuzzerMutate(uint8_t *bytes, size_t length, size_t most);

static const struct description fresh_description = {
    .boot_id = FUZZ_BOOT_ID,
    .reset_cause = RESET_POWER_ON,
    .meters = 2,
    .drives = 2,
    .analogs = 4,
    .tick_hz = FUZZ_TICKS_PER_MS * 1000u,
    .pwm_hz = {7812, 7812},
    .ramp_limit = 131,
    .roles = {ROLE_VOLTS, ROLE_AMPS, ROLE_PRESSURE, ROLE_TEMPERATURE},
    .limits = {49152, 50, 2400000, 58982, 100, 52429, 5000, 0, 5000, 55706, 50, 750},
    .kind = {'f', 'u', 'z', 'z', 0, 0, 0, 0},
};

static struct description description;
static struct board board;
static struct listener listener;

static void pass(uint32_t ticks) {
    fuzz_hardware_pass(ticks);
    board_poll(&board);
}

static void receive(uint8_t byte) {
    if (listener_hears_arm(&listener, byte, FUZZ_BOOT_ID)) {
        fuzz_hardware_allow();
    }
    fuzz_hardware_receive(byte);
    pass(BYTE_TICKS);
}

static void idle(uint32_t ms) {
    for (uint32_t i = 0; i < 2u * ms; i++) {
        pass(FUZZ_TICKS_PER_MS / 2u);
    }
}

/* What stands behind an escape. */
static void happen(uint8_t what) {
    if (what == ESCAPE) {
        receive(ESCAPE);
    } else if (what >= 0xE0u) {
        idle((what & 0x1Fu) * 8u);
    } else {
        fuzz_hardware_disturb(what);
        pass(BYTE_TICKS);
    }
}

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t length) {
    description = fresh_description;
    memset(&listener, 0, sizeof listener);
    fuzz_hardware_start();
    board_start(&board, &description, PROTOCOL_VERSION);
    for (size_t i = 0; i < length; i++) {
        if (bytes[i] == ESCAPE && i + 1u < length) {
            happen(bytes[++i]);
        } else {
            receive(bytes[i]);
        }
    }
    idle(IDLE_MS);
    return 0;
}

/* One more sound frame, which chance alone would hardly ever make, or the library's own changes. */
size_t LLVMFuzzerCustomMutator(uint8_t *bytes, size_t length, size_t most, unsigned seed) {
    uint8_t sound[SOUND_FRAME_MAX];

    if (seed % 3u != 0) {
        return LLVMFuzzerMutate(bytes, length, most);
    }
    const size_t added = sound_frame(seed, sound);
    if (added > most) {
        return LLVMFuzzerMutate(bytes, length, most);
    }
    const size_t kept = length + added > most ? most - added : length;
    memcpy(bytes + kept, sound, added);
    return kept + added;
}
