/* The serial line at its limits and with its faults. */
#include <stddef.h>

#include "bytes.h"
#include "check.h"
#include "elf_suites.h"
#include "emulated_line.h"

#define SHORT_PERIOD_MS 2u
#define RUN_S 60u

struct shorts {
    unsigned count;
    unsigned gaps;
    unsigned uneven;
    uint16_t sequence;
    uint32_t first_time;
    uint32_t time;
};

static void take_short(struct shorts *shorts, const struct board_frame *frame) {
    const uint32_t time = get_u32(frame->payload);
    if (shorts->count++ == 0) {
        shorts->first_time = time;
    } else {
        const uint32_t step = time - shorts->time;
        shorts->gaps += frame->sequence != (uint16_t)(shorts->sequence + 1u);
        /* Twice 2 ms would be a sample left out. */
        shorts->uneven += step < 2000u || step > 6000u;
    }
    shorts->sequence = frame->sequence;
    shorts->time = time;
}

static void five_hundred_short_samples_a_second_come_without_a_gap_for_a_minute(void) {
    struct shorts shorts = {0};
    const struct board_frame *frame;
    if (!start()) {
        return;
    }
    plant.edge_every_us[0] = 4000.0;
    plant.edge_every_us[1] = 7000.0;
    armed_at_half();
    CHECK(host_stream(SHORT_PERIOD_MS, STREAM_SHORT_SAMPLES));
    emulated_breathe();
    line_listen();
    host_forget();
    const unsigned long long ends = pins.us + RUN_S * 1000000ull;
    bad_frames = 0;
    while (pins.us < ends) {
        emulated_step();
        while ((frame = host_next(MESSAGE_SHORT_SAMPLE)) != NULL) {
            take_short(&shorts, frame);
        }
        host_forget();
        /* The kernel may hand bytes on later than the board sends them in virtual time; it must not fall far behind. */
        const unsigned due = (unsigned)((pins.us + RUN_S * 1000000ull - ends) / (SHORT_PERIOD_MS * 1000u));
        if (shorts.count + 20u < due) {
            emulated_breathe();
            line_listen();
        }
    }
    CHECK_EQUAL(0, shorts.gaps);
    CHECK_EQUAL(0, shorts.uneven);
    CHECK_EQUAL(0, bad_frames);
    CHECK(shorts.count >= 1000u / SHORT_PERIOD_MS * RUN_S - 25u);
    /* The mean step in whole microseconds, to nearest: the first or the last sample may have come a little late. */
    const uint32_t steps = shorts.count - 1u;
    CHECK_EQUAL(SHORT_PERIOD_MS * 1000u, (shorts.time - shorts.first_time + steps) / (2u * steps));
    CHECK_EQUAL(32768, pins.duty[0]);
    quit();
}

static void samples_come_at_the_fastest_period_of_their_kind_without_loss(void) {
    struct shorts samples = {0};
    const struct board_frame *frame;
    if (!start()) {
        return;
    }
    CHECK(host_stream(3, STREAM_SAMPLES));
    host_forget();
    for (unsigned i = 0; i < 400; i++) {
        emulated_step();
        emulated_breathe();
        line_listen();
        while ((frame = host_next(MESSAGE_SAMPLE)) != NULL) {
            take_short(&samples, frame);
        }
    }
    CHECK(samples.count >= 640);
    CHECK_EQUAL(0, samples.gaps);
    quit();
}

static void a_corrupting_line_is_never_obeyed(void) {
    if (!start()) {
        return;
    }
    emulated_command("corrupt-rx 3");
    for (unsigned i = 0; i < 8; i++) {
        CHECK(!host_ask_to_arm());
        CHECK_EQUAL(0, pins.contactor);
    }
    emulated_command("corrupt-rx 0");
    emulated_run_ms(20);
    host_send(MESSAGE_KEEP_ALIVE, NULL, 0);
    CHECK(host_arm());
    CHECK_EQUAL(1, pins.contactor);
    emulated_command("corrupt-tx 5");
    bad_frames = 0;
    emulated_run_ms(5);
    CHECK(host_hello() == NULL);
    CHECK(bad_frames > 0);
    quit();
}

static void unplugging_hangs_up_and_plugging_gives_a_new_line(void) {
    if (!start()) {
        return;
    }
    armed_at_half();
    emulated_command("unplug");
    emulated_run_ms(10);
    CHECK(host_hung_up());
    emulated_run_ms(1000);
    check_outputs_safe();
    emulated_command("plug");
    emulated_run_ms(10);
    host_open();
    CHECK(host_hello() != NULL);
    quit();
}

static void a_host_may_leave_and_come_back_and_need_not_read(void) {
    if (!start()) {
        return;
    }
    CHECK(host_stream(5, STREAM_SAMPLES));
    for (unsigned i = 0; i < 5; i++) {
        host_close();
        emulated_run_ms(1000);
        host_open();
        CHECK(host_hello() != NULL);
    }
    CHECK_EQUAL(0, emulated_terminate());
}

void line_tests(void) {
    RUN(five_hundred_short_samples_a_second_come_without_a_gap_for_a_minute);
    RUN(samples_come_at_the_fastest_period_of_their_kind_without_loss);
    RUN(a_corrupting_line_is_never_obeyed);
    RUN(unplugging_hangs_up_and_plugging_gives_a_new_line);
    RUN(a_host_may_leave_and_come_back_and_need_not_read);
}
