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

static void a_host_says_hello_arms_drives_and_is_missed(void) {
    uint8_t boot_id[4];
    const uint8_t full_slowly[7] = {0, 0, 0, 1, 0, 0, 0};

    if (!start(NULL, NULL)) {
        return;
    }
    send(MESSAGE_HELLO, NULL, 0);
    CHECK_EQUAL(PROTOCOL_VERSION, wait_for(MESSAGE_IDENTITY));
    CHECK(memcmp(payload + 36, "pc\0\0\0\0\0\0", 8) == 0);
    memcpy(boot_id, payload + 11, sizeof boot_id);
    send(MESSAGE_ARM, boot_id, sizeof boot_id);
    CHECK_EQUAL(PROTOCOL_VERSION, wait_for(MESSAGE_ACKNOWLEDGE));
    send(MESSAGE_DRIVE, full_slowly, sizeof full_slowly);
    CHECK_EQUAL(PROTOCOL_VERSION, wait_for(MESSAGE_ACKNOWLEDGE));
    CHECK_EQUAL(MESSAGE_DRIVE, payload[2]);
    do {
        if (!CHECK(wait_for(MESSAGE_EVENT) == (int)PROTOCOL_VERSION)) {
            break;
        }
    } while (payload[6] != EVENT_MADE_SAFE);
    CHECK_EQUAL(REASON_LINK_LOST, payload[7]);
    close(input);
    CHECK_EQUAL(0, exit_code());
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
    RUN(it_can_pose_as_a_board_of_another_version);
    RUN(it_ends_cleanly_on_a_signal);
    RUN(a_host_may_leave_and_another_one_come);
    return check_summary();
}
