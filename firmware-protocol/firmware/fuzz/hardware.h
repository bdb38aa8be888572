/* The hardware under the fuzzed board, in virtual time, and what must never be seen at its pins. */
#ifndef STAND_FUZZ_HARDWARE_H
#define STAND_FUZZ_HARDWARE_H

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

#define FUZZ_TICKS_PER_MS 2000u
#define FUZZ_BOOT_ID 0x1234ABCDu /* of the golden `arm` frame */

/* A reset with a blank store and closed inputs. */
void fuzz_hardware_start(void);

void fuzz_hardware_pass(uint32_t ticks);

/* One byte from the host. */
void fuzz_hardware_receive(uint8_t byte);

/* What the host does with the hardware: inputs, readings, edges and a line that stands still, out of one byte. */
void fuzz_hardware_disturb(uint8_t how);

/* From now on the board may pull the contactor and drive: a sound arm frame was sent. */
void fuzz_hardware_allow(void);

#endif
