/* SPDX-License-Identifier: GPL-3.0-or-later. This test program links libsimavr; see ../LICENSE.md. */
#include "chip.h"

#include <stdarg.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <simavr/avr_eeprom.h>
#include <simavr/avr_uart.h>
#include <simavr/sim_avr.h>
#include <simavr/sim_elf.h>

#include "cell.h"
#include "meters.h"
#include "pins.h"

#define CHIP "atmega328p"
#define CLOCK_HZ 16000000u
#define SUPPLY_MV 5000u
#define BITS_PER_BYTE 10u
#define SELF_JUMP 0xCFFFu
#define BOTH_ON_RISING_EDGES 0x0Fu

/* Data addresses of the ATmega328P (data sheet, register summary). */
enum {
    MCUSR_AT = 0x54,
    EICRA_AT = 0x69,
    SRAM_AT = 0x100,
    UCSR0A_AT = 0xC0,
    UBRR0L_AT = 0xC4,
    UBRR0H_AT = 0xC5
};

static avr_t *avr;
static void (*core_reset)(avr_t *);
static bool was_reset;
static uint64_t offset; /* virtual cycles = the chip's cycles + offset */
static struct chip_inputs inputs_now;
static bool feedback_now;
static chip_take_byte take_byte;
static chip_put_byte put_byte;

static void log_to_stderr(avr_t *chip, const int level, const char *format, va_list arguments) {
    if (level <= LOG_ERROR && chip != NULL) {
        vfprintf(stderr, format, arguments);
    }
}

static void note_reset(avr_t *chip) {
    was_reset = true;
    if (core_reset != NULL) {
        core_reset(chip);
    }
}

static void on_output(avr_irq_t *irq, uint32_t value, void *parameter) {
    (void)irq;
    (void)parameter;
    put_byte((uint8_t)value);
}

static avr_cycle_count_t cycles_per_byte(void) {
    const unsigned divider = (unsigned)avr->data[UBRR0L_AT] + 256u * (avr->data[UBRR0H_AT] & 0x0Fu) + 1u;
    const unsigned per_bit = (avr->data[UCSR0A_AT] & 0x02u) != 0 ? 8u : 16u;
    return (avr_cycle_count_t)divider * per_bit * BITS_PER_BYTE;
}

/* One byte from the line in each byte's time, whether the chip listens or not, until there is none. */
static avr_cycle_count_t feed_byte(avr_t *chip, avr_cycle_count_t when, void *parameter) {
    uint8_t byte;
    (void)parameter;
    if (!take_byte(&byte)) {
        return 0;
    }
    avr_raise_irq(avr_io_getirq(chip, AVR_IOCTL_UART_GETIRQ('0'), UART_IRQ_INPUT), byte);
    return when + cycles_per_byte();
}

static void feed_line(void) {
    if (avr_cycle_timer_status(avr, feed_byte, NULL) == 0) {
        avr_cycle_timer_register(avr, cycles_per_byte(), feed_byte, NULL);
    }
}

/* Does nothing, but keeps a sleeping chip from sleeping on over the end of a run. */
static avr_cycle_count_t end_of_run(avr_t *chip, avr_cycle_count_t when, void *parameter) {
    (void)chip;
    (void)when;
    (void)parameter;
    return 0;
}

/* The library forgets its timers and the pins' levels with each reset. */
static void after_reset(void) {
    uint32_t flags = 0;
    was_reset = false;
    /* At a low level the library would poll the external interrupts, which the firmware does not use. */
    avr->data[EICRA_AT] = BOTH_ON_RISING_EDGES;
    avr_ioctl(avr, AVR_IOCTL_UART_SET_FLAGS('0'), &flags);
    cell_forget();
    pins_drive(avr, &inputs_now, feedback_now);
    feed_line();
    meters_watch(avr, offset);
}

static void stay_awake(avr_t *chip, avr_cycle_count_t how_long) {
    (void)chip;
    (void)how_long;
}

void chip_load(const char *elf, chip_take_byte from_line, chip_put_byte to_line) {
    elf_firmware_t firmware;
    memset(&firmware, 0, sizeof firmware);
    avr_global_logger_set(log_to_stderr);
    if (elf_read_firmware(elf, &firmware) != 0) {
        fprintf(stderr, "stand-emulator: cannot read the firmware %s\n", elf);
        exit(2);
    }
    avr = avr_make_mcu_by_name(CHIP);
    if (avr == NULL) {
        fprintf(stderr, "stand-emulator: the library does not know the chip %s\n", CHIP);
        exit(2);
    }
    avr_init(avr);
    firmware.frequency = CLOCK_HZ;
    avr_load_firmware(avr, &firmware);
    avr->frequency = CLOCK_HZ;
    avr->vcc = avr->avcc = avr->aref = SUPPLY_MV;
    avr->sleep = stay_awake;
    avr->log = LOG_ERROR;
    core_reset = avr->reset;
    avr->reset = note_reset;
    take_byte = from_line;
    put_byte = to_line;
    avr_irq_register_notify(avr_io_getirq(avr, AVR_IOCTL_UART_GETIRQ('0'), UART_IRQ_OUTPUT), on_output, NULL);
    cell_watch(avr);
    chip_reset(CHIP_POWER_ON);
}

uint64_t chip_now(void) {
    return avr->cycle + offset;
}

bool chip_run_until(uint64_t cycle) {
    if (chip_now() < cycle) {
        feed_line();
        avr_cycle_timer_register(avr, cycle - chip_now(), end_of_run, NULL);
    }
    while (chip_now() < cycle) {
        const avr_cycle_count_t before = avr->cycle;
        const int state = avr_run(avr);
        if (avr->cycle < before) {
            offset += before - avr->cycle;
        }
        if (was_reset) {
            after_reset();
        }
        if (state == cpu_Done || state == cpu_Crashed) {
            return false;
        }
    }
    return true;
}

void chip_freeze_until(uint64_t cycle) {
    uint8_t lost;
    if (cycle <= chip_now()) {
        return;
    }
    offset += cycle - chip_now();
    while (take_byte(&lost)) {
    }
    meters_lose_before(cycle);
    meters_watch(avr, offset);
}

static void spoil_memory(void) {
    uint32_t noise = 1;
    for (unsigned at = SRAM_AT; at <= avr->ramend; at++) {
        noise = noise * 1103515245u + 12345u;
        avr->data[at] = (uint8_t)(noise >> 16);
    }
}

void chip_reset(enum chip_reset cause) {
    const avr_cycle_count_t before = avr->cycle;
    const bool supply_lost = cause == CHIP_POWER_ON || cause == CHIP_BROWN_OUT;
    if (supply_lost) {
        cell_tear(avr);
    }
    avr_reset(avr);
    if (avr->cycle < before) {
        offset += before - avr->cycle;
    }
    if (supply_lost) {
        spoil_memory();
    }
    avr->data[MCUSR_AT] = (uint8_t)cause;
    after_reset();
}

void chip_hang(void) {
    const avr_flashaddr_t last_word = avr->flashend & ~(avr_flashaddr_t)1u;
    avr->flash[last_word] = SELF_JUMP & 0xFFu;
    avr->flash[last_word + 1u] = SELF_JUMP >> 8;
    avr->sreg[S_I] = 0;
    avr->interrupt_state = 0;
    avr->state = cpu_Running;
    avr->pc = last_word;
}

void chip_set_inputs(const struct chip_inputs *inputs) {
    inputs_now = *inputs;
    pins_drive(avr, &inputs_now, feedback_now);
}

void chip_set_feedback(bool closed) {
    if (closed != feedback_now) {
        feedback_now = closed;
        pins_drive(avr, &inputs_now, feedback_now);
    }
}

struct chip_outputs chip_get_outputs(void) {
    return pins_read(avr);
}

bool chip_add_edge(unsigned meter, uint64_t cycle) {
    if (!meters_add_edge(meter, cycle)) {
        return false;
    }
    meters_watch(avr, offset);
    return true;
}

uint8_t *chip_eeprom(void) {
    avr_eeprom_desc_t whole = {NULL, 0, 0};
    avr_ioctl(avr, AVR_IOCTL_EEPROM_GET, &whole);
    return whole.ee;
}
