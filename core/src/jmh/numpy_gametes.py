"""Shares of one grandparent in gametes of an F1, all gametes of a batch at once in NumPy.

Eleven chromosomes of a morgan, crossovers at random (Haldane), as GenomeDrop makes them.
Prints the median time of a call in nanoseconds a gamete: one process, and one on each core.
"""

import math
import multiprocessing
import os
import sys
import time

import numpy as np

CHROMOSOMES = 11
GAMETES = 200_000
ROUNDS = 9


def batch(random, gametes):
    """By counts: Poisson many crossovers on each chromosome, their places sorted."""
    strands = gametes * CHROMOSOMES
    counts = random.poisson(1.0, strands)
    most = counts.max()
    places = random.random((most, strands), dtype=np.float32)
    places[np.arange(most)[:, None] >= counts] = 1
    places.sort(axis=0)
    # Of the alternating stretches from 0 to 1 those at odd places are the one strand's.
    signs = np.where(np.arange(most) % 2 == 0, 1.0, -1.0).astype(np.float32)
    length = signs @ places + np.where(most % 2 == 0, 1.0, 0.0)
    swapped = random.integers(0, 2, strands, dtype=np.int8)
    length = np.where(swapped == 1, 1 - length, length)
    return length.reshape(gametes, CHROMOSOMES).mean(axis=1)


def shares(seed, size, gametes=GAMETES):
    random = np.random.Generator(np.random.SFC64(seed))
    return np.concatenate([batch(random, size) for _ in range(gametes // size)])


def timed(job):
    times = []
    for round_ in range(ROUNDS + 2):
        begin = time.perf_counter()
        job(round_)
        times.append(time.perf_counter() - begin)
    return sorted(times[2:])[ROUNDS // 2] * 1e9 / GAMETES


def half(seed):
    shares(seed, BEST, GAMETES // 2)


sample = shares(1, 2000)
expected = CHROMOSOMES * (2 - 1 + math.exp(-2)) / (8 * CHROMOSOMES**2)
if abs(sample.mean() - 0.5) > 5 * math.sqrt(expected / GAMETES):
    sys.exit("the peer's mean share is no half")
if abs(sample.var() / expected - 1) > 5 * math.sqrt(2 / GAMETES):
    sys.exit("the peer's variance is not Hill's")

sizes = {size: timed(lambda seed, size=size: shares(seed, size)) for size in (500, 2000, 10_000)}
BEST = min(sizes, key=sizes.get)
print(f"NumPy {np.__version__}, one process, {BEST} gametes at a time: {sizes[BEST]:.0f} ns a gamete")
with multiprocessing.Pool(2) as pool:
    both = timed(lambda seed: pool.map(half, [2 * seed, 2 * seed + 1]))
print(f"NumPy {np.__version__}, two processes on {os.cpu_count()} cores: {both:.0f} ns a gamete")
