/*
 * Roof by tank surface under yield after spillage, in doubles: what the Java kernel is measured against.
 *
 *   surface DATA RESULT METHOD REPEATS
 *
 * DATA holds numbers apart by blanks: days, roofs, tanks; m3 a mm for each roof; capacity of each tank [m3]; then for
 * each day its rain [mm] and its demand [m3]. RESULT gets one line for each design, roof by roof: supplied [m3] and
 * days met in full. METHOD is "blocked", day by day with the tanks in blocks that stay in registers, or "spell", the
 * same with each dry spell taken in one step, for the same demand every day. Prints the median processor time of one
 * surface over the repeats, in nanoseconds.
 *
 * gcc -O3 -march=native -ffast-math -o surface surface.c -lm
 */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

/* Tanks in a block: 32 was the fastest of 16, 32 and 64 for the day by day loop, 64 for the other. */
enum { BLOCK = 32, SPELL_BLOCK = 64 };

/* A volume often equals the demand to the digit; a microlitre less than all is all, or noise decides. */
static const double NOISE = 1e-9;
#define MIN(a, b) ((a) < (b) ? (a) : (b))

static int days, roofs, tanks;
static double *m3_per_mm, *capacity, *rain, *demand, *supplied, *full;

/* The record as spells: dry days before each wet day, and after the last. */
static int wet_days;
static double *wet_rain, *dry_before;

static void blocked(double per_mm, const double *size, double *given, double *met)
{
    double volume[BLOCK] = {0}, sum[BLOCK] = {0}, cap[BLOCK];
    long long count[BLOCK] = {0};
    memcpy(cap, size, sizeof cap);
    for (int day = 0; day < days; day++) {
        double in = rain[day] * per_mm, asked = demand[day], enough = asked - NOISE;
        long long some = asked > 0;
        for (int i = 0; i < BLOCK; i++) {
            double out = MIN(volume[i], asked);
            count[i] += (volume[i] >= enough) & some;
            volume[i] = MIN(volume[i] + in, cap[i]) - out;
            sum[i] += out;
        }
    }
    for (int i = 0; i < BLOCK; i++) {
        given[i] = sum[i];
        met[i] = (double) count[i];
    }
}

static void spell(double per_mm, const double *size, double *given, double *met)
{
    double volume[SPELL_BLOCK] = {0}, sum[SPELL_BLOCK] = {0}, count[SPELL_BLOCK] = {0}, cap[SPELL_BLOCK];
    double asked = demand[0], enough = asked - NOISE, inverse = 1 / asked, more = NOISE * inverse;
    memcpy(cap, size, sizeof cap);
    for (int wet = 0; wet <= wet_days; wet++) {
        double dry = dry_before[wet], total = dry * asked;
        if (dry > 0) {
            for (int i = 0; i < SPELL_BLOCK; i++) {
                double out = MIN(volume[i], total), whole = floor(volume[i] * inverse + more);
                count[i] += MIN(whole, dry);
                volume[i] -= out;
                sum[i] += out;
            }
        }
        if (wet == wet_days) {
            break;
        }
        double in = wet_rain[wet] * per_mm;
        for (int i = 0; i < SPELL_BLOCK; i++) {
            double out = MIN(volume[i], asked);
            count[i] += volume[i] >= enough ? 1.0 : 0.0;
            volume[i] = MIN(volume[i] + in, cap[i]) - out;
            sum[i] += out;
        }
    }
    memcpy(given, sum, sizeof sum);
    memcpy(met, count, sizeof count);
}

static double *read_numbers(FILE *file, int count)
{
    double *numbers = malloc(sizeof(double) * (size_t) count);
    for (int i = 0; i < count; i++) {
        if (fscanf(file, "%lf", &numbers[i]) != 1) {
            fprintf(stderr, "the data end early\n");
            exit(1);
        }
    }
    return numbers;
}

static void find_spells(void)
{
    wet_rain = malloc(sizeof(double) * (size_t) days);
    dry_before = calloc((size_t) days + 1, sizeof(double));
    for (int day = 0; day < days; day++) {
        if (rain[day] > 0) {
            wet_rain[wet_days++] = rain[day];
        } else {
            dry_before[wet_days]++;
        }
    }
}

static int ascending(const void *a, const void *b)
{
    double x = *(const double *) a, y = *(const double *) b;
    return (x > y) - (x < y);
}

int main(int count, char **args)
{
    if (count != 5) {
        fprintf(stderr, "usage: surface DATA RESULT blocked|spell REPEATS\n");
        return 2;
    }
    FILE *file = fopen(args[1], "r");
    if (!file || fscanf(file, "%d %d %d", &days, &roofs, &tanks) != 3 || tanks % SPELL_BLOCK != 0) {
        fprintf(stderr, "the data cannot be read, or the tanks are no multiple of %d\n", SPELL_BLOCK);
        return 1;
    }
    m3_per_mm = read_numbers(file, roofs);
    capacity = read_numbers(file, tanks);
    double *both = read_numbers(file, 2 * days);
    fclose(file);
    rain = malloc(sizeof(double) * (size_t) days);
    demand = malloc(sizeof(double) * (size_t) days);
    for (int day = 0; day < days; day++) {
        rain[day] = both[2 * day];
        demand[day] = both[2 * day + 1];
    }
    supplied = malloc(sizeof(double) * (size_t) (roofs * tanks));
    full = malloc(sizeof(double) * (size_t) (roofs * tanks));
    find_spells();
    int by_spell = strcmp(args[3], "spell") == 0, step = by_spell ? SPELL_BLOCK : BLOCK;
    int repeats = atoi(args[4]);
    double *times = malloc(sizeof(double) * (size_t) repeats);
    for (int repeat = 0; repeat < repeats; repeat++) {
        struct timespec from, to;
        clock_gettime(CLOCK_THREAD_CPUTIME_ID, &from);
        for (int roof = 0; roof < roofs; roof++) {
            for (int tank = 0; tank < tanks; tank += step) {
                int at = roof * tanks + tank;
                (by_spell ? spell : blocked)(m3_per_mm[roof], capacity + tank, supplied + at, full + at);
            }
        }
        clock_gettime(CLOCK_THREAD_CPUTIME_ID, &to);
        times[repeat] = (double) (to.tv_sec - from.tv_sec) * 1e9 + (double) (to.tv_nsec - from.tv_nsec);
    }
    file = fopen(args[2], "w");
    for (int i = 0; i < roofs * tanks; i++) {
        fprintf(file, "%.17g %.0f\n", supplied[i], full[i]);
    }
    fclose(file);
    qsort(times, (size_t) repeats, sizeof(double), ascending);
    printf("%.0f\n", times[repeats / 2]);
    return 0;
}
