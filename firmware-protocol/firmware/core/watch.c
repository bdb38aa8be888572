#include "watch.h"

#include <string.h>

#include "analog.h"

/* 30 % of fully on, rounded up: below it a pump may take too little to tell a dry one by. */
#define DRY_DUTY_MIN 19661ul
#define NO_CHANNEL 0xFFu

void watch_start(struct watch *watch) {
    memset(watch, 0, sizeof *watch);
}

static uint8_t channel_of(const struct description *board, uint8_t role) {
    for (uint8_t i = 0; i < board->analogs; i++) {
        if (board->roles[i] == role) {
            return i;
        }
    }
    return NO_CHANNEL;
}

static uint8_t role_of(uint8_t rule) {
    switch (rule) {
        case WATCH_AMPS:
        case WATCH_DRY:
            return ROLE_AMPS;
        case WATCH_VOLTS:
            return ROLE_VOLTS;
        default:
            return ROLE_PRESSURE;
    }
}

static bool is_broken(uint8_t rule, const struct watched *at, uint16_t reading) {
    const uint32_t *const limits = at->board->limits;
    switch (rule) {
        case WATCH_AMPS:
            return reading > limits[LIMIT_AMPS];
        case WATCH_PRESSURE:
            return reading > limits[LIMIT_PRESSURE];
        case WATCH_DEAD_HEAD:
            return reading > limits[LIMIT_DEAD_HEAD_PRESSURE] && at->driven;
        case WATCH_DRY:
            return reading < limits[LIMIT_DRY_AMPS] && at->first_applied >= DRY_DUTY_MIN;
        default:
            return reading > limits[LIMIT_VOLTS];
    }
}

static uint32_t allowed_ms(uint8_t rule, const uint32_t *limits) {
    switch (rule) {
        case WATCH_AMPS:
            return limits[LIMIT_AMPS_MS];
        case WATCH_PRESSURE:
            return limits[LIMIT_PRESSURE_MS];
        case WATCH_DEAD_HEAD:
            return limits[LIMIT_DEAD_HEAD_MS];
        case WATCH_DRY:
            return limits[LIMIT_DRY_MS];
        default:
            return limits[LIMIT_VOLTS_MS];
    }
}

static enum safe_reason reason_of(uint8_t rule) {
    switch (rule) {
        case WATCH_AMPS:
            return REASON_OVER_CURRENT;
        case WATCH_PRESSURE:
            return REASON_OVER_PRESSURE;
        case WATCH_DEAD_HEAD:
            return REASON_DEAD_HEAD;
        case WATCH_DRY:
            return REASON_DRY_RUN;
        default:
            return REASON_OVER_VOLTAGE;
    }
}

/* True when the rule has been broken for its time. */
static bool is_over(struct watch *watch, uint8_t rule, const struct watched *at, uint16_t reading) {
    if (!is_broken(rule, at, reading)) {
        watch->rules[rule].holds = false;
        return false;
    }
    if (!watch->rules[rule].holds) {
        watch->rules[rule].holds = true;
        watch->rules[rule].since = at->now;
    }
    return at->now - watch->rules[rule].since >= allowed_ms(rule, at->board->limits) * at->ticks_per_ms;
}

struct verdict watch_readings(struct watch *watch, const struct watched *at, const struct analog_sums *taken) {
    struct verdict verdict = {REASON_NONE, 0};

    if (taken->count == 0) {
        return verdict;
    }
    for (uint8_t rule = 0; rule < WATCH_RULES; rule++) {
        const uint8_t channel = channel_of(at->board, role_of(rule));
        if (channel == NO_CHANNEL) {
            continue;
        }
        const uint16_t reading = analog_mean(taken, channel);
        if (is_over(watch, rule, at, reading)) {
            verdict.reason = reason_of(rule);
            verdict.detail = reading;
            return verdict;
        }
    }
    return verdict;
}

struct verdict watch_run_time(struct watch *watch, const struct watched *at, uint32_t ticks) {
    struct verdict verdict = {REASON_NONE, 0};

    if (!at->driven) {
        return verdict;
    }
    for (watch->run_ticks += ticks; watch->run_ticks >= at->ticks_per_ms; watch->run_ticks -= at->ticks_per_ms) {
        watch->run_ms++;
    }
    if (watch->run_ms > at->board->limits[LIMIT_RUN_MS]) {
        verdict.reason = REASON_RUN_TIME;
    }
    return verdict;
}
