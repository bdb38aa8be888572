#include "check.h"

#include <stdio.h>
#include <string.h>

static unsigned passed_tests;
static unsigned failed_tests;
static unsigned checks;
static unsigned failures;
static char context[160];

static void fail(const char *file, int line) {
    failures++;
    printf("%s:%d: %s%s", file, line, context, context[0] == '\0' ? "" : ": ");
}

bool check_that(bool condition, const char *text, const char *file, int line) {
    checks++;
    if (!condition) {
        fail(file, line);
        printf("not so: %s\n", text);
    }
    return condition;
}

void check_equal(long long expected, long long actual, const char *text, const char *file, int line) {
    checks++;
    if (expected != actual) {
        fail(file, line);
        printf("%s is %lld, not %lld\n", text, actual, expected);
    }
}

static void print_bytes(const char *name, const uint8_t *bytes, size_t length) {
    printf("  %s:", name);
    for (size_t i = 0; i < length; i++) {
        printf(" %02x", bytes[i]);
    }
    printf("\n");
}

void check_bytes(const uint8_t *expected, size_t expected_length, const uint8_t *actual, size_t actual_length,
                 const char *text, const char *file, int line) {
    checks++;
    if (expected_length != actual_length || memcmp(expected, actual, actual_length) != 0) {
        fail(file, line);
        printf("%s differs\n", text);
        print_bytes("expected", expected, expected_length);
        print_bytes("actual  ", actual, actual_length);
    }
}

void check_context(const char *text) {
    snprintf(context, sizeof context, "%s", text);
}

void check_run(const char *name, void (*test)(void)) {
    checks = 0;
    failures = 0;
    context[0] = '\0';
    test();
    context[0] = '\0';
    if (checks == 0) {
        printf("%s checks nothing\n", name);
        failures = 1;
    }
    if (failures == 0) {
        passed_tests++;
    } else {
        failed_tests++;
        printf("FAILED %s\n", name);
    }
}

int check_summary(void) {
    printf("%u passed, %u failed\n", passed_tests, failed_tests);
    return failed_tests == 0 && passed_tests > 0 ? 0 : 1;
}
