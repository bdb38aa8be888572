/* Runs all suites. The one argument is the directory of the frame fixtures. */
#include <stdio.h>

#include "check.h"
#include "suites.h"

const char *fixtures;

int main(int count, char **words) {
    if (count != 2) {
        fputs("usage: firmware-tests FIXTURES-DIRECTORY\n", stderr);
        return 2;
    }
    fixtures = words[1];
    cobs_tests();
    crc16_tests();
    frame_tests();
    golden_tests();
    message_tests();
    command_tests();
    drive_tests();
    safety_tests();
    contactor_tests();
    watch_tests();
    converter_tests();
    tighten_tests();
    stream_tests();
    event_tests();
    pulse_window_tests();
    blob_tests();
    self_test_tests();
    noise_tests();
    command_fuzz_tests();
    return check_summary();
}
