/*
 * The real firmware in the emulator, in virtual time: this side is the plant and the host at once. Virtual time stands
 * still while a test thinks. A pseudo-terminal hands bytes on in the kernel's own time, so a test that waits for an
 * answer gives each exchange a millisecond of wall time; nothing is asserted on the wall clock.
 */
#ifndef STAND_EMULATED_H
#define STAND_EMULATED_H

#include <stdbool.h>
#include <stdint.h>

#include "message.h"

#define EXCHANGE_MS 5u

/* What the board's pins gave at the end of the last exchange. */
struct pins {
    unsigned long long us;
    unsigned long duty[DRIVES_MAX];
    int contactor;
};

/* What the plant puts on the pins. */
struct plant {
    unsigned millivolts[ANALOGS_MAX];
    unsigned closed; /* input bits but for the feedback, which follows the contactor */
    double edge_every_us[METERS_MAX]; /* 0: no edges */
};

/* What a meter was given so far. */
struct given {
    uint32_t edges;
    double last_us; /* virtual time of the last one */
};

struct board_frame {
    uint8_t type;
    uint16_t sequence;
    uint8_t length;
    uint8_t payload[FRAME_PAYLOAD_MAX];
};

extern struct pins pins;
extern struct plant plant;
extern struct given given[METERS_MAX];
extern unsigned bad_frames;

/* The emulator and the ELF to run in it. */
void emulated_use(const char *emulator, const char *elf);

/*
 * Starts the emulator, runs 100 ms and says hello. False when that fails. `eeprom` is a file to keep the EEPROM in, or
 * NULL; `exchange_ms` is how far apart the looks at the pins are, EXCHANGE_MS but for tests that look closer.
 */
bool emulated_start(const char *eeprom, unsigned exchange_ms);

/* Each ends it and returns its exit code, -1 after a kill. */
int emulated_quit(void);
int emulated_terminate(void);
int emulated_kill(void);

/* A command line to the emulator, carried out at the next exchange. */
void emulated_command(const char *line);

/* One single edge of a meter at a virtual time that is still to come. */
void emulated_edge_at(unsigned meter, double us);

void emulated_run_ms(unsigned ms);
/* One exchange. */
void emulated_step(void);

/* The line, as a host has it. */
void host_open(void);
void host_close(void);
bool host_hung_up(void);
uint16_t host_send(uint8_t type, const uint8_t *payload, uint8_t length);
/* Keep-alives on and off, one every 250 ms of virtual time. */
void host_keep_alive(bool on);

/* Runs until a frame of the type comes that was not looked at yet; NULL after so many milliseconds. */
const struct board_frame *host_wait(uint8_t type, unsigned within_ms);
/* The next frame of the type that has come already and was not looked at yet, or NULL. */
const struct board_frame *host_next(uint8_t type);
/* The next frame of any type that has come already and was not looked at yet, or NULL. */
const struct board_frame *host_any(void);
/* Forgets all frames so far. */
void host_forget(void);

/* Hello, and again until it is answered. NULL when it never is. */
const struct board_frame *host_hello(void);
uint32_t host_boot_id(void);

/* Sends and waits for the answer of this type; NULL when another one came, or none. */
const struct board_frame *host_ask(uint8_t type, const uint8_t *payload, uint8_t length, uint8_t answer);
/* Sends and waits for the acknowledgement. */
bool host_acknowledged(uint8_t type, const uint8_t *payload, uint8_t length);
/* Sends and waits for the refusal; its reason, or REFUSE_NOTHING when none came. */
struct refusal host_refused(uint8_t type, const uint8_t *payload, uint8_t length);

/* Asks to arm; true when that was acknowledged. */
bool host_ask_to_arm(void);
/* Asks to arm and waits for the event that tells that it is. */
bool host_arm(void);
bool host_drive(uint8_t channel, uint32_t duty);
bool host_stream(uint16_t period_ms, uint8_t kind);
bool host_tighten(uint8_t limit, uint32_t value);

#endif
