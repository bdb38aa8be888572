/* The converter. */
#include <stddef.h>
#include <string.h>

#include "bytes.h"
#include "check.h"
#include "elf_suites.h"

#define SAMPLE_ANALOG_AT 20u
#define SAMPLE_CONVERSIONS_AT 44u

static void each_analogue_channel_is_its_own_pin(void) {
    static const unsigned millivolts[ANALOGS_MAX] = {100, 1300, 2500, 4900};
    if (!start()) {
        return;
    }
    memcpy(plant.millivolts, millivolts, sizeof millivolts);
    CHECK(host_stream(50, STREAM_SAMPLES));
    emulated_run_ms(200);
    host_forget();
    const struct board_frame *const sample = host_wait(MESSAGE_SAMPLE, 200);
    if (CHECK(sample != NULL)) {
        for (unsigned i = 0; i < ANALOGS_MAX; i++) {
            const uint8_t *const channel = sample->payload + SAMPLE_ANALOG_AT + 6u * i;
            check_reading(millivolts[i], get_u16(channel));
            check_reading(millivolts[i], get_u16(channel + 2));
            check_reading(millivolts[i], get_u16(channel + 4));
        }
        const uint16_t conversions = get_u16(sample->payload + SAMPLE_CONVERSIONS_AT);
        CHECK(conversions >= 100 && conversions <= 121);
    }
    quit();
}

/* So that nothing between the plant and the sample scales or rounds a second time. */
static void every_code_of_the_converter_is_the_one_that_its_voltage_means(void) {
    unsigned wrong = 0;
    if (!start()) {
        return;
    }
    CHECK(host_stream(5, STREAM_SAMPLES));
    for (unsigned first = 0; first < 1024; first += ANALOGS_MAX) {
        for (unsigned i = 0; i < ANALOGS_MAX; i++) {
            /* The least whole millivolt that reads as this code. */
            plant.millivolts[i] = ((first + i) * 5000u + 1023u) / 1024u;
        }
        emulated_run_ms(15);
        host_forget();
        const struct board_frame *const sample = host_wait(MESSAGE_SAMPLE, 100);
        for (unsigned i = 0; i < ANALOGS_MAX && sample != NULL; i++) {
            wrong += get_u16(sample->payload + SAMPLE_ANALOG_AT + 6u * i) != (first + i) * 64u;
        }
        wrong += sample == NULL;
    }
    CHECK_EQUAL(0, wrong);
    quit();
}

void reading_tests(void) {
    RUN(each_analogue_channel_is_its_own_pin);
    RUN(every_code_of_the_converter_is_the_one_that_its_voltage_means);
}
