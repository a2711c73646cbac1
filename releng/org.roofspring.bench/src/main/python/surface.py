"""Roof by tank surface under yield after spillage, day by day over all designs at once with NumPy.

surface.py DATA RESULT REPEATS; data and result as in surface.c. Prints the median processor time of one surface
in nanoseconds.
"""
import sys
import time

import numpy

# A volume often equals the demand to the digit; a microlitre less than all is all, or noise decides.
NOISE = 1e-9


def surface(m3_per_mm, capacity, rain, demand):
    cap = numpy.tile(capacity, len(m3_per_mm))
    per_mm = numpy.repeat(m3_per_mm, len(capacity))
    volume = numpy.zeros_like(cap)
    supplied = numpy.zeros_like(cap)
    full = numpy.zeros(len(cap), dtype=numpy.int64)
    given = numpy.empty_like(cap)
    inflow = numpy.empty_like(cap)
    for depth, asked in zip(rain.tolist(), demand.tolist()):
        numpy.minimum(volume, asked, out=given)
        if asked > 0:
            full += volume >= asked - NOISE
        if depth > 0:
            numpy.multiply(per_mm, depth, out=inflow)
            volume += inflow
            numpy.minimum(volume, cap, out=volume)
        volume -= given
        supplied += given
    return supplied, full


def main(data, result, repeats):
    with open(data) as file:
        numbers = numpy.array(file.read().split(), dtype=float)
    days, roofs, tanks = (int(n) for n in numbers[:3])
    m3_per_mm = numbers[3:3 + roofs]
    capacity = numbers[3 + roofs:3 + roofs + tanks]
    record = numbers[3 + roofs + tanks:].reshape(days, 2)
    rain, demand = record[:, 0].copy(), record[:, 1].copy()
    times = []
    for _ in range(int(repeats)):
        begin = time.thread_time_ns()
        supplied, full = surface(m3_per_mm, capacity, rain, demand)
        times.append(time.thread_time_ns() - begin)
    with open(result, "w") as file:
        for one, days_met in zip(supplied, full):
            file.write(f"{one:.17g} {days_met}\n")
    print(sorted(times)[len(times) // 2])


main(*sys.argv[1:])
