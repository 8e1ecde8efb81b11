"""Expected shares of the benchmark's million plants, level by level in NumPy.

Usage: numpy_ancestry.py DIRECTORY, which holds what the class PeerInput wrote.
Prints the median time of each form in milliseconds, one a line: plain and in place in doubles, and
in place in the lanes that Filial computes in, which shows what is owed to these and what to Java.
The lanes are numerators of 32 bits, two to a number of 64: those of level g are over 2 to the g.
"""

import sys
import time

import numpy as np

TAXA = 12
ROUNDS = 15

directory = sys.argv[1]
lines = open(directory + "/levels.txt").read().split("\n")
start = [int(word) for word in lines[0].split()]
expected = np.array([float(word) for word in lines[1].split()])
parents = np.fromfile(directory + "/parents.bin", dtype="<i4").reshape(-1, 2).astype(np.int64)
seed = np.ascontiguousarray(parents[:, 0])
pollen = np.ascontiguousarray(parents[:, 1])
plants = len(seed)
levels = [slice(a, b) for a, b in zip(start, start[1:])]
widest = max(level.stop - level.start for level in levels)

F = np.empty((plants, TAXA))
spare = np.empty((widest, TAXA))
LANES = np.empty((plants, TAXA // 2), dtype="<u8")
spare_lanes = np.empty((widest, TAXA // 2), dtype="<u8")


def founders():
    F[levels[0]] = 0.0
    F[np.arange(levels[0].stop), seed[levels[0]]] = 1.0


def plain():
    founders()
    for level in levels[1:]:
        F[level] = 0.5 * (F[seed[level]] + F[pollen[level]])


def in_place():
    founders()
    for level in levels[1:]:
        here = F[level]
        other = spare[: level.stop - level.start]
        np.take(F, seed[level], axis=0, out=here, mode="clip")
        np.take(F, pollen[level], axis=0, out=other, mode="clip")
        np.add(here, other, out=here)
        np.multiply(here, 0.5, out=here)


def lanes():
    taxon = seed[levels[0]]
    LANES[levels[0]] = 0
    LANES[np.arange(levels[0].stop), taxon // 2] = np.uint64(1) << (taxon % 2 * 32).astype(np.uint64)
    for level in levels[1:]:
        here = LANES[level]
        other = spare_lanes[: level.stop - level.start]
        np.take(LANES, seed[level], axis=0, out=here, mode="clip")
        np.take(LANES, pollen[level], axis=0, out=other, mode="clip")
        np.add(here, other, out=here)


def doubles():
    return F


def doubles_of_lanes():
    shares = LANES.view("<u4").astype(np.float64)
    for generation, level in enumerate(levels):
        shares[level] *= 0.5**generation
    return shares


def median(form):
    times = []
    for _ in range(ROUNDS + 3):
        begin = time.perf_counter()
        form()
        times.append(time.perf_counter() - begin)
    return sorted(times[3:])[ROUNDS // 2] * 1000


FORMS = (
    ("plain", plain, doubles),
    ("in place", in_place, doubles),
    ("lanes", lanes, doubles_of_lanes),
)

for name, form, shares in FORMS:
    F[:] = np.nan
    LANES[:] = 0
    taken = median(form)
    sums = (shares() * (np.arange(plants) % 7)[:, None]).sum(axis=0)
    if not np.allclose(sums, expected, rtol=1e-9):
        sys.exit("the peer's shares differ from Filial's")
    print(f"NumPy {np.__version__} {name}: {taken:.1f} ms")
