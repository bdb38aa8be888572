/* Commands on the standard input that make happen what a person or a fault would do at a real board. */
#include <poll.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>
#include <unistd.h>

#include "parts.h"

#define WAIT_NANOSECONDS 250000L
#define LINE_MAX_BYTES 80u

static char line[LINE_MAX_BYTES];
static size_t line_length;

static bool is_auto(const char *word) {
    return strcmp(word, "auto") == 0;
}

static bool read_level(const char *word, int *level) {
    if ((word[0] != '0' && word[0] != '1') || word[1] != '\0') {
        return false;
    }
    *level = word[0] - '0';
    return true;
}

static bool read_number(const char *word, double highest, double *number) {
    char *end;
    *number = strtod(word, &end);
    return end != word && *end == '\0' && *number >= 0 && *number <= highest;
}

static bool force_input(const char *name, const char *word) {
    static const struct {
        const char *name;
        uint8_t bit;
    } inputs[] = {{"estop", INPUT_EMERGENCY_STOP},
                  {"guard", INPUT_GUARD},
                  {"level", INPUT_LEVEL},
                  {"override", INPUT_OVERRIDE}};
    int level;

    for (size_t i = 0; i < sizeof inputs / sizeof *inputs; i++) {
        if (strcmp(inputs[i].name, name) == 0 && read_level(word, &level)) {
            inputs_force(inputs[i].bit, level != 0);
            return true;
        }
    }
    return false;
}

static bool force_feedback(const char *name, const char *word) {
    int level = AS_USUAL;
    if (strcmp(name, "feedback") != 0 || (!is_auto(word) && !read_level(word, &level))) {
        return false;
    }
    inputs_force_feedback(level);
    return true;
}

static bool force_analog(const char *name, const char *word) {
    static const char *const names[] = {"volts-code", "amps-code", "pressure-code"};
    double code = AS_USUAL;

    for (uint8_t i = 0; i < sizeof names / sizeof *names; i++) {
        if (strcmp(names[i], name) == 0 && (is_auto(word) || read_number(word, UINT16_MAX, &code))) {
            analogs_force(i, (long)code);
            return true;
        }
    }
    return false;
}

static bool force_converter(const char *name, const char *word) {
    int level;
    if (strcmp(name, "converter") != 0 || !read_level(word, &level)) {
        return false;
    }
    analogs_run(level != 0);
    return true;
}

static bool force_meter(const char *name, const char *word) {
    double hz = AS_USUAL;
    if (strcmp(name, "meter-hz") != 0 || (!is_auto(word) && !read_number(word, 10000.0, &hz))) {
        return false;
    }
    meters_force(hz);
    return true;
}

static enum provoked obey(void) {
    char name[LINE_MAX_BYTES] = "";
    char word[LINE_MAX_BYTES] = "";
    char more[2];
    const int words = sscanf(line, "%79s %79s %1s", name, word, more);

    if (words == 1 && strcmp(name, "restart") == 0) {
        return PROVOKED_RESTART;
    }
    const bool obeyed = words == 2
                        && (force_input(name, word) || force_feedback(name, word) || force_analog(name, word)
                            || force_converter(name, word) || force_meter(name, word));
    if (!obeyed && words > 0) {
        fprintf(stderr, "stand-pc: not understood: %s\n", line);
    }
    return PROVOKED_NOTHING;
}

static enum provoked take(char byte) {
    if (byte == '\n') {
        line[line_length] = '\0';
        line_length = 0;
        return obey();
    }
    if (line_length < sizeof line - 1u) {
        line[line_length++] = byte;
    }
    return PROVOKED_NOTHING;
}

enum provoked provoke(void) {
    struct pollfd state = {STDIN_FILENO, POLLIN, 0};
    const struct timespec wait = {0, WAIT_NANOSECONDS};
    char byte;

    if (ppoll(&state, 1, &wait, NULL) <= 0) {
        return PROVOKED_NOTHING;
    }
    if (read(STDIN_FILENO, &byte, 1) <= 0) {
        return PROVOKED_END;
    }
    return take(byte);
}
