/* The test suites, one file each. */
#ifndef STAND_SUITES_H
#define STAND_SUITES_H

/* Where the fixtures are. */
extern const char *fixtures;

void cobs_tests(void);
void crc16_tests(void);
void frame_tests(void);
void golden_tests(void);
void message_tests(void);
void command_tests(void);
void drive_tests(void);
void safety_tests(void);
void contactor_tests(void);
void watch_tests(void);
void converter_tests(void);
void tighten_tests(void);
void stream_tests(void);
void event_tests(void);
void pulse_window_tests(void);
void blob_tests(void);
void self_test_tests(void);
void noise_tests(void);
void command_fuzz_tests(void);

#endif
