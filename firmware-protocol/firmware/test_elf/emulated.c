/* The emulator as a process, and its plant link. */
#include "emulated.h"

#include <signal.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/wait.h>
#include <time.h>
#include <unistd.h>

#include "emulated_line.h"

struct pins pins;
struct plant plant;
double last_edge_us;
uint32_t edges_sent;

static pid_t process;
static FILE *to_emulator;
static FILE *from_emulator;
static double next_edge_us;

static bool spawn(const char *emulator, const char *elf) {
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
        execl(emulator, emulator, "--elf", elf, "--speed", "0", (char *)NULL);
        _exit(127);
    }
    close(input[0]);
    close(output[1]);
    to_emulator = fdopen(input[1], "w");
    from_emulator = fdopen(output[0], "r");
    return process > 0 && to_emulator != NULL && from_emulator != NULL;
}

/* Reads up to the next `pins` line and takes `port` lines on the way. */
static bool read_pins(void) {
    char line[256];
    char port[200];
    while (fgets(line, sizeof line, from_emulator) != NULL) {
        if (sscanf(line, "port %199s", port) == 1) {
            line_set_port(port);
        } else if (sscanf(line, "pins %llu %lu %*d %d", &pins.us, &pins.duty, &pins.contactor) == 3) {
            return true;
        }
    }
    return false;
}

static void write_edges(void) {
    const double ends = (double)pins.us + EXCHANGE_MS * 1000.0;
    double edges[1024];
    unsigned count = 0;

    if (plant.edge_every_us > 0.0) {
        if (next_edge_us < (double)pins.us) {
            next_edge_us = (double)pins.us + plant.edge_every_us;
        }
        while (next_edge_us < ends && count < sizeof edges / sizeof *edges) {
            edges[count++] = next_edge_us - (double)pins.us;
            last_edge_us = next_edge_us;
            next_edge_us += plant.edge_every_us;
        }
    }
    edges_sent += count;
    fprintf(to_emulator, " %u", count);
    for (unsigned i = 0; i < count; i++) {
        fprintf(to_emulator, " %.3f", edges[i]);
    }
}

static bool exchange(void) {
    line_keep_alive();
    fprintf(to_emulator, "in %u %u %u %u %d %d", plant.millivolts[0], plant.millivolts[1], plant.millivolts[2],
            plant.millivolts[3], plant.emergency_stop, plant.guard);
    write_edges();
    fprintf(to_emulator, " 0\n");
    fflush(to_emulator);
    const bool well = read_pins();
    line_listen();
    return well;
}

void emulated_run_ms(unsigned ms) {
    for (unsigned done = 0; done < ms; done += EXCHANGE_MS) {
        if (!exchange()) {
            printf("the emulator ended by itself\n");
            exit(1);
        }
    }
}

void emulated_breathe(void) {
    const struct timespec millisecond = {0, 1000000};
    nanosleep(&millisecond, NULL);
}

bool emulated_start(const char *emulator, const char *elf) {
    const struct plant first = {{2500, 500, 1000, 1500}, true, true, 0.0};
    plant = first;
    next_edge_us = 0.0;
    edges_sent = 0;
    line_start();
    if (!spawn(emulator, elf) || !read_pins()) {
        printf("cannot start %s\n", emulator);
        return false;
    }
    host_open();
    emulated_run_ms(50);
    return host_hello() != NULL;
}

void emulated_command(const char *line) {
    fprintf(to_emulator, "%s\n", line);
}

static int finish(void) {
    int status = 0;
    host_close();
    fclose(to_emulator);
    fclose(from_emulator);
    waitpid(process, &status, 0);
    return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}

int emulated_quit(void) {
    emulated_command("quit");
    fflush(to_emulator);
    char line[256];
    while (fgets(line, sizeof line, from_emulator) != NULL) {
    }
    return finish();
}

int emulated_terminate(void) {
    kill(process, SIGTERM);
    char line[256];
    while (fgets(line, sizeof line, from_emulator) != NULL) {
    }
    return finish();
}
