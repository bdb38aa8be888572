/*
 * stand-pc as a process, in real time: only what its own pseudo-terminal and its options can get wrong. Waits have
 * generous limits, and none of them is asserted on.
 */
#include <fcntl.h>
#include <poll.h>
#include <signal.h>
#include <stdio.h>
#include <string.h>
#include <sys/wait.h>
#include <time.h>
#include <unistd.h>

#include "bytes.h"
#include "check.h"
#include "message.h"

#define LONGEST_WAIT_MS 5000

static const char *program;
static pid_t process;
static int input;
static int line;
static struct frame_receiver ear;
static uint8_t payload[FRAME_PAYLOAD_MAX];

static bool open_port(int output) {
    char text[200] = "";
    char port[190];
    const ssize_t got = read(output, text, sizeof text - 1);
    close(output);
    if (!CHECK(got > 0) || !CHECK(sscanf(text, "port %189s", port) == 1)) {
        return false;
    }
    line = open(port, O_RDWR | O_NOCTTY | O_CLOEXEC);
    frame_receiver_start(&ear);
    return CHECK(line >= 0);
}

static bool start(const char *option, const char *value) {
    int to_it[2];
    int from_it[2];
    if (!CHECK(pipe(to_it) == 0 && pipe(from_it) == 0)) {
        return false;
    }
    process = fork();
    if (process == 0) {
        dup2(to_it[0], STDIN_FILENO);
        dup2(from_it[1], STDOUT_FILENO);
        close(to_it[0]);
        close(to_it[1]);
        close(from_it[0]);
        close(from_it[1]);
        execl(program, program, option, value, (char *)NULL);
        _exit(127);
    }
    close(to_it[0]);
    close(from_it[1]);
    input = to_it[1];
    return open_port(from_it[0]);
}

static int exit_code(void) {
    int status = 0;
    waitpid(process, &status, 0);
    close(line);
    return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}

static void send(uint8_t type, const uint8_t *bytes, uint8_t length) {
    const struct frame frame = {PROTOCOL_VERSION, type, 0, length, bytes};
    uint8_t wire[1u + FRAME_WIRE_MAX(FRAME_PAYLOAD_MAX)] = {0};
    const struct frame_written written = frame_encode(&frame, wire + 1, sizeof wire - 1u);
    CHECK_EQUAL(written.length + 1u, write(line, wire, written.length + 1u));
}

/* Waits for a frame of the type; `payload` then holds what it carries. Returns its version, -1 without one. */
static int wait_for(uint8_t type) {
    struct pollfd state = {line, POLLIN, 0};
    struct frame frame;
    uint8_t byte;

    while (poll(&state, 1, LONGEST_WAIT_MS) > 0 && read(line, &byte, 1) == 1) {
        if (frame_receive(&ear, byte, &frame) == FRAME_GOOD && frame.type == type) {
            memcpy(payload, frame.payload, frame.length);
            return frame.version;
        }
    }
    return -1;
}

static void say(const char *command) {
    CHECK_EQUAL(strlen(command), write(input, command, strlen(command)));
}

static void say_hello(uint8_t *boot_id) {
    send(MESSAGE_HELLO, NULL, 0);
    CHECK_EQUAL(PROTOCOL_VERSION, wait_for(MESSAGE_IDENTITY));
    memcpy(boot_id, payload + 11, 4);
}

/* Waits for the next event of the kind. */
static void wait_for_event(uint8_t kind) {
    do {
        if (!CHECK(wait_for(MESSAGE_EVENT) == (int)PROTOCOL_VERSION)) {
            return;
        }
    } while (payload[6] != kind);
}

static void say_hello_and_arm(void) {
    uint8_t boot_id[4];
    say_hello(boot_id);
    send(MESSAGE_ARM, boot_id, sizeof boot_id);
    CHECK_EQUAL(PROTOCOL_VERSION, wait_for(MESSAGE_ACKNOWLEDGE));
    wait_for_event(EVENT_ARMED);
}

static void end(void) {
    close(input);
    CHECK_EQUAL(0, exit_code());
}

static void a_host_says_hello_arms_drives_and_is_missed(void) {
    const uint8_t full_slowly[7] = {0, 0, 0, 1, 0, 0, 0};

    if (!start(NULL, NULL)) {
        return;
    }
    say_hello_and_arm();
    send(MESSAGE_DRIVE, full_slowly, sizeof full_slowly);
    CHECK_EQUAL(PROTOCOL_VERSION, wait_for(MESSAGE_ACKNOWLEDGE));
    CHECK_EQUAL(MESSAGE_DRIVE, payload[2]);
    wait_for_event(EVENT_MADE_SAFE);
    CHECK_EQUAL(REASON_LINK_LOST, payload[7]);
    send(MESSAGE_HELLO, NULL, 0);
    CHECK_EQUAL(PROTOCOL_VERSION, wait_for(MESSAGE_IDENTITY));
    CHECK(memcmp(payload + 31, "pc\0\0\0\0\0\0", 8) == 0);
    end();
}

static void a_command_makes_the_board_safe_for_its_reason(const char *command, const char *undo, uint8_t reason) {
    say_hello_and_arm();
    say(command);
    wait_for_event(EVENT_MADE_SAFE);
    CHECK_EQUAL(reason, payload[7]);
    say(undo);
}

static void what_goes_wrong_can_be_provoked(void) {
    const struct timespec contactor_falls = {0, 100000000};
    static const struct {
        const char *command;
        const char *undo;
        uint8_t reason;
    } rows[] = {
        {"estop 0\n", "estop 1\n", REASON_EMERGENCY_STOP},
        {"guard 0\n", "guard 1\n", REASON_GUARD_OPEN},
        {"level 0\n", "level 1\n", REASON_LEVEL_LOW},
        {"override 0\n", "override 1\n", REASON_OVERRIDE_IN},
        {"feedback 0\n", "feedback auto\n", REASON_CONTACTOR},
        {"amps-code 60000\n", "amps-code auto\n", REASON_OVER_CURRENT},
        {"pressure-code 60000\n", "pressure-code 100\n", REASON_OVER_PRESSURE},
        {"volts-code 60000\n", "volts-code auto\n", REASON_OVER_VOLTAGE},
    };
    if (!start(NULL, NULL)) {
        return;
    }
    for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
        check_context(rows[i].command);
        a_command_makes_the_board_safe_for_its_reason(rows[i].command, rows[i].undo, rows[i].reason);
        nanosleep(&contactor_falls, NULL);
    }
    end();
}

static void a_stalled_converter_locks_until_a_restart(void) {
    if (!start(NULL, NULL)) {
        return;
    }
    say_hello_and_arm();
    say("converter 0\n");
    wait_for_event(EVENT_LOCKED);
    CHECK_EQUAL(REASON_HARDWARE, payload[7]);
    CHECK_EQUAL(TEST_CONVERTER, get_u32(payload + 8));
    say("converter 1\n");
    say("restart\n");
    wait_for_event(EVENT_STARTED);
    say_hello_and_arm();
    end();
}

static void a_restart_is_a_watchdog_reset_with_another_boot_id(void) {
    uint8_t before[4];
    uint8_t after[4];
    if (!start(NULL, NULL)) {
        return;
    }
    say_hello(before);
    say("restart\n");
    wait_for_event(EVENT_STARTED);
    CHECK_EQUAL(RESET_WATCHDOG, payload[8]);
    say_hello(after);
    CHECK(memcmp(before, after, sizeof after) != 0);
    end();
}

static void a_fixed_meter_frequency_shows_in_the_pulse_windows(void) {
    const uint8_t hundred_ms[2] = {100, 0};
    if (!start(NULL, NULL)) {
        return;
    }
    say("meter-hz 1000\n");
    send(MESSAGE_WINDOWS, hundred_ms, sizeof hundred_ms);
    /* This board runs in real time: a window in which the machine was busy elsewhere says less, the next one says it all. */
    unsigned most = 0;
    for (unsigned i = 0; i < 40 && most != 2000; i++) {
        if (!CHECK(wait_for(MESSAGE_PULSE_WINDOW) == (int)PROTOCOL_VERSION)) {
            break;
        }
        const bool whole = payload[0] == 0 && get_u32(payload + 53) != 0 && get_u32(payload + 41) == 2000;
        most = whole ? get_u32(payload + 45) : 0;
    }
    CHECK_EQUAL(2000, most);
    end();
}

static void it_can_pose_as_a_board_of_another_version(void) {
    if (!start("--version-byte", "2")) {
        return;
    }
    send(MESSAGE_HELLO, NULL, 0);
    CHECK_EQUAL(2, wait_for(MESSAGE_IDENTITY));
    close(input);
    CHECK_EQUAL(0, exit_code());
}

static void it_ends_cleanly_on_a_signal(void) {
    if (!start(NULL, NULL)) {
        return;
    }
    kill(process, SIGTERM);
    CHECK_EQUAL(0, exit_code());
    close(input);
}

static void a_host_may_leave_and_another_one_come(void) {
    if (!start(NULL, NULL)) {
        return;
    }
    char name[64];
    CHECK_EQUAL(0, ttyname_r(line, name, sizeof name));
    for (unsigned i = 0; i < 5; i++) {
        close(line);
        line = open(name, O_RDWR | O_NOCTTY | O_CLOEXEC);
        send(MESSAGE_HELLO, NULL, 0);
        CHECK_EQUAL(PROTOCOL_VERSION, wait_for(MESSAGE_IDENTITY));
    }
    close(input);
    CHECK_EQUAL(0, exit_code());
}

int main(int count, char **words) {
    if (count != 2) {
        fputs("usage: pc-tests STAND-PC\n", stderr);
        return 2;
    }
    program = words[1];
    RUN(a_host_says_hello_arms_drives_and_is_missed);
    RUN(what_goes_wrong_can_be_provoked);
    RUN(a_stalled_converter_locks_until_a_restart);
    RUN(a_restart_is_a_watchdog_reset_with_another_boot_id);
    RUN(a_fixed_meter_frequency_shows_in_the_pulse_windows);
    RUN(it_can_pose_as_a_board_of_another_version);
    RUN(it_ends_cleanly_on_a_signal);
    RUN(a_host_may_leave_and_another_one_come);
    return check_summary();
}
