/* The emulator as a process, and its plant link. */
#include "emulated.h"

#include <signal.h>
#include <stdio.h>
#include <stdlib.h>
#include <sys/wait.h>
#include <time.h>
#include <unistd.h>

#include "emulated_line.h"

#define EDGES_MAX 1024u
#define START_MS 100u
#define NEVER_US 1e15
#define LATE_US 100.0

struct pins pins;
struct plant plant;
struct given given[METERS_MAX];

static const char *emulator_path;
static const char *elf_path;
static unsigned exchange_ms;
static pid_t process;
static FILE *to_emulator;
static FILE *from_emulator;
static double next_edge_us[METERS_MAX];

void emulated_use(const char *emulator, const char *elf) {
    emulator_path = emulator;
    elf_path = elf;
}

static void become_emulator(const char *eeprom) {
    char exchange_us[16];
    snprintf(exchange_us, sizeof exchange_us, "%u", exchange_ms * 1000u);
    /* Without an EEPROM file the list ends early. */
    execl(emulator_path, emulator_path, "--elf", elf_path, "--speed", "0", "--exchange-us", exchange_us,
          eeprom == NULL ? (char *)NULL : "--eeprom", eeprom, (char *)NULL);
    _exit(127);
}

static bool spawn(const char *eeprom) {
    int input[2];
    int output[2];
    if (pipe(input) != 0 || pipe(output) != 0) {
        return false;
    }
    process = fork();
    if (process == 0) {
        dup2(input[0], STDIN_FILENO);
        dup2(output[1], STDOUT_FILENO);
        close(input[0]);
        close(input[1]);
        close(output[0]);
        close(output[1]);
        become_emulator(eeprom);
    }
    close(input[0]);
    close(output[1]);
    to_emulator = fdopen(input[1], "w");
    from_emulator = fdopen(output[0], "r");
    return process > 0 && to_emulator != NULL && from_emulator != NULL;
}

/* Reads up to the next `pins` line and takes `port` lines on the way. */
static bool read_pins(void) {
    char text[256];
    char port[200];
    while (fgets(text, sizeof text, from_emulator) != NULL) {
        if (sscanf(text, "port %199s", port) == 1) {
            line_set_port(port);
        } else if (sscanf(text, "pins %llu %lu %lu %d", &pins.us, &pins.duty[0], &pins.duty[1], &pins.contactor) == 4) {
            return true;
        }
    }
    return false;
}

/* The emulator may end an exchange some instructions late; an edge of that moment is given before it. */
static void write_edges(unsigned meter) {
    const double begins = (double)pins.us;
    const double ends = begins + exchange_ms * 1000.0 + LATE_US;
    const double every = plant.edge_every_us[meter];
    double edges[EDGES_MAX];
    unsigned count = 0;

    if (every > 0.0) {
        if (next_edge_us[meter] < begins) {
            next_edge_us[meter] = begins + every;
        }
        while (next_edge_us[meter] < ends && count < EDGES_MAX) {
            edges[count++] = next_edge_us[meter] - begins;
            given[meter].last_us = next_edge_us[meter];
            next_edge_us[meter] += every;
        }
    }
    given[meter].edges += count;
    fprintf(to_emulator, " %u", count);
    for (unsigned i = 0; i < count; i++) {
        fprintf(to_emulator, " %.3f", edges[i]);
    }
}

void emulated_edge_at(unsigned meter, double us) {
    next_edge_us[meter] = us;
    plant.edge_every_us[meter] = NEVER_US;
}

static bool exchange(void) {
    line_keep_alive();
    fprintf(to_emulator, "in %u %u %u %u %u", plant.millivolts[0], plant.millivolts[1], plant.millivolts[2],
            plant.millivolts[3], plant.closed);
    for (unsigned i = 0; i < METERS_MAX; i++) {
        write_edges(i);
    }
    fputc('\n', to_emulator);
    fflush(to_emulator);
    const bool well = read_pins();
    line_listen();
    return well;
}

void emulated_step(void) {
    if (!exchange()) {
        printf("the emulator ended by itself\n");
        exit(1);
    }
}

void emulated_run_ms(unsigned ms) {
    for (unsigned done = 0; done < ms; done += exchange_ms) {
        emulated_step();
    }
}

void emulated_breathe(void) {
    const struct timespec millisecond = {0, 1000000};
    nanosleep(&millisecond, NULL);
}

unsigned emulated_exchange_ms(void) {
    return exchange_ms;
}

static void forget_plant(void) {
    const struct plant quiet = {{2500, 500, 1000, 1500}, INPUTS_WATCHED, {0.0, 0.0}};
    plant = quiet;
    for (unsigned i = 0; i < METERS_MAX; i++) {
        next_edge_us[i] = 0.0;
        given[i].edges = 0;
        given[i].last_us = 0.0;
    }
}

bool emulated_start(const char *eeprom, unsigned new_exchange_ms) {
    exchange_ms = new_exchange_ms;
    forget_plant();
    line_start();
    if (!spawn(eeprom) || !read_pins()) {
        printf("cannot start %s\n", emulator_path);
        return false;
    }
    host_open();
    emulated_run_ms(START_MS);
    return host_hello() != NULL;
}

void emulated_command(const char *text) {
    fprintf(to_emulator, "%s\n", text);
}

/* Reads to the end first, so that the emulator can write its last lines. */
static int finish(void) {
    int status = 0;
    char text[256];
    fflush(to_emulator);
    while (fgets(text, sizeof text, from_emulator) != NULL) {
    }
    host_close();
    fclose(to_emulator);
    fclose(from_emulator);
    waitpid(process, &status, 0);
    return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}

int emulated_quit(void) {
    emulated_command("quit");
    return finish();
}

int emulated_terminate(void) {
    kill(process, SIGTERM);
    return finish();
}

int emulated_kill(void) {
    kill(process, SIGKILL);
    return finish();
}
