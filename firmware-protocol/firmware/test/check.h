/* The tests' own check macros. A failed check is printed with its place; the test goes on. */
#ifndef STAND_CHECK_H
#define STAND_CHECK_H

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

#define CHECK(condition) check_that((condition), #condition, __FILE__, __LINE__)
#define CHECK_EQUAL(expected, actual) \
    check_equal((long long)(expected), (long long)(actual), #actual, __FILE__, __LINE__)
#define CHECK_BYTES(expected, expected_length, actual, actual_length) \
    check_bytes(expected, expected_length, actual, actual_length, #actual, __FILE__, __LINE__)
#define RUN(test) check_run(#test, test)

/* Returns the condition, so that a test can leave off where going on makes no sense. */
bool check_that(bool condition, const char *text, const char *file, int line);
void check_equal(long long expected, long long actual, const char *text, const char *file, int line);
void check_bytes(const uint8_t *expected, size_t expected_length, const uint8_t *actual, size_t actual_length,
                 const char *text, const char *file, int line);

/* What is being checked now, printed with a failure: the row of a fixture, the turn of a loop. */
void check_context(const char *text);

/* Runs a test. One that checks nothing fails. */
void check_run(const char *name, void (*test)(void));

/* Prints `N passed, N failed`. 0 when nothing failed. */
int check_summary(void);

#endif
