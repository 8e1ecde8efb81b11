"""Scores of all crosses among the benchmark's 1000 plants, all pairs at once in NumPy.

Usage: numpy_scores.py DIRECTORY, which holds what the class HeredityPeerInput wrote.
Prints the median time of each form, in nanoseconds a pair.
"""

import sys
import time

import numpy as np

ROUNDS = 15

directory = sys.argv[1]
kinds = np.fromfile(directory + "/kinds.bin", dtype="<i4").reshape(-1, 3).astype(np.int64)
expected = [float(line) for line in open(directory + "/sums.txt")]
plants = len(kinds)

# By the small letters of seed parent, pollen parent and seedling.
gamete = np.array([[1, 0], [0.5, 0.5], [0, 1]])
seedling = np.zeros((3, 3, 3))
for seed in range(3):
    for pollen in range(3):
        for egg in range(2):
            for grain in range(2):
                seedling[seed, pollen, egg + grain] += gamete[seed, egg] * gamete[pollen, grain]

dominant = np.array([1.0, 1.0, 0.0])
recessive = 1 - dominant
# White with C; else purple with A and B; and the third gene hidden.
wish = np.einsum("i,j,k->ijk", dominant, dominant, recessive)


def three_gathers():
    score = None
    for gene, wanted in enumerate((dominant, recessive, recessive)):
        here = (seedling @ wanted)[kinds[:, None, gene], kinds[None, :, gene]]
        score = here if score is None else np.multiply(score, here, out=score)
    return score


def joint_sum():
    of = [seedling[kinds[:, None, gene], kinds[None, :, gene]] for gene in range(3)]
    return np.einsum("abi,abj,abk,ijk->ab", *of, wish, optimize=True)


def whole_genotypes():
    table = np.einsum("adi,bej,cfk,ijk->abcdef", seedling, seedling, seedling, wish, optimize=True)
    whole = kinds @ np.array([9, 3, 1])
    return table.reshape(27, 27)[whole[:, None], whole[None, :]]


def median(form):
    times = []
    for _ in range(ROUNDS + 3):
        begin = time.perf_counter()
        form()
        times.append(time.perf_counter() - begin)
    return sorted(times[3:])[ROUNDS // 2] * 1e9 / plants**2


weights = 1 + np.arange(plants) % 7
for name, form, total in (
    ("three traits, a gather each", three_gathers, expected[0]),
    ("table of three genes, summed", joint_sum, expected[1]),
    ("table of three genes, by whole genotypes", whole_genotypes, expected[1]),
):
    if not np.isclose((form().sum(axis=1) * weights).sum(), total, rtol=1e-9):
        sys.exit("the peer's scores differ from Filial's")
    print(f"NumPy {np.__version__} {name}: {median(form):.1f} ns a pair")
