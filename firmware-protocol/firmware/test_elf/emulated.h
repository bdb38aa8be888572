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
    unsigned long duty;
    int contactor;
};

/* What the plant puts on the pins. */
struct plant {
    unsigned millivolts[4];
    bool emergency_stop;
    bool guard;
    double edge_every_us; /* meter 0, 0: no edges */
};

struct board_frame {
    uint8_t type;
    uint16_t sequence;
    uint8_t length;
    uint8_t payload[FRAME_PAYLOAD_MAX];
};

extern struct pins pins;
extern struct plant plant;
extern double last_edge_us; /* virtual time of the last edge sent, and how many were */
extern uint32_t edges_sent;
extern unsigned bad_frames;

/* Starts the emulator, runs 50 ms and says hello. False when that fails. */
bool emulated_start(const char *emulator, const char *elf);

/* Ends it with `quit` and returns its exit code. */
int emulated_quit(void);
/* Ends it with SIGTERM and returns its exit code. */
int emulated_terminate(void);

/* A command line to the emulator, carried out at the next exchange. */
void emulated_command(const char *line);

void emulated_run_ms(unsigned ms);

/* The line, as a host has it. */
void host_open(void);
void host_close(void);
bool host_hung_up(void);
uint16_t host_send(uint8_t type, const uint8_t *payload, uint8_t length);
/* Keep-alives on and off, one every 250 ms of virtual time. */
void host_keep_alive(bool on);

/* Runs until a frame of the type comes that was not looked at yet; NULL after so many milliseconds. */
const struct board_frame *host_wait(uint8_t type, unsigned within_ms);
/* Forgets all frames so far. */
void host_forget(void);

/* Hello, and again until it is answered. NULL when it never is. */
const struct board_frame *host_hello(void);
/* Sends and waits for the acknowledgement. */
bool host_acknowledged(uint8_t type, const uint8_t *payload, uint8_t length);
bool host_arm(void);
bool host_drive(uint32_t duty, uint16_t ramp);
bool host_stream(uint16_t period_ms);

#endif
