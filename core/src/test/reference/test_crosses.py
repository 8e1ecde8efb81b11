"""Reference values for TestCrossTest of dev.filial.core.inference, which quotes what this prints.

What test-cross seedlings are expected to tell of a plant's genotype: the mutual information of
genotype and counts, in bits, and the chance of naming the wrong genotype afterwards, summed over
every way in which the seedlings can fall into the states. Made with Python 3 and SciPy 1.17.1.
"""

from itertools import product

import numpy as np
from scipy.stats import binom, entropy, multinomial


def expected(what, chances, shows, seedlings):
    chances = np.array(chances)
    states = len(shows[0])
    falls = [c for c in product(range(seedlings + 1), repeat=states) if sum(c) == seedlings]
    joint = np.array(
        [[p * multinomial.pmf(c, seedlings, row) for c in falls] for p, row in zip(chances, shows)]
    )
    bits = (
        entropy(joint.sum(axis=1), base=2)
        + entropy(joint.sum(axis=0), base=2)
        - entropy(joint.ravel(), base=2)
    )
    doubt = 1 - joint.max(axis=0).sum()
    print(f"{what:<12} {seedlings:3d} {bits:.10f} {doubt:.10f}")


for n in (1, 5, 20):
    expected("penetrance", (2 / 3, 1 / 3), ((2 / 5, 3 / 5), (4 / 5, 1 / 5)), n)
# By tttt: of red and plain. TTtt has one gamete in six without T; TTTt and TTTT have none.
for n in (1, 8, 40):
    expected("tetraploid", (0.4, 0.3, 0.3), ((1 / 2, 1 / 2), (5 / 6, 1 / 6), (1, 0)), n)
# With double reduction a: gametes tt come of Tttt with 1/2 + a/4, of TTtt with 1/6 + a/3 and of
# TTTt with a/4.
a = 1 / 7
plain = (1 / 2 + a / 4, 1 / 6 + a / 3, a / 4, 0)
expected("doubling", (0.4, 0.3, 0.2, 0.1), [(1 - p, p) for p in plain], 8)
for n in (1, 6):
    expected(
        "three states",
        (0.25, 0.5, 0.25),
        ((1 / 2, 1 / 2, 0), (1 / 4, 1 / 2, 1 / 4), (0, 1 / 2, 1 / 2)),
        n,
    )


def fewest(what, chances, recessives, best=1.0):
    """The fewest seedlings after which the right one is named so surely, of two states."""
    found = []
    for sure in (0.80, 0.90, 0.95, 0.97, 0.99):
        n = next(
            (
                n
                for n in range(501)
                if best >= sure
                and sum(
                    max(p * binom.pmf(k, n, r) for p, r in zip(chances, recessives))
                    for k in range(n + 1)
                )
                >= sure
            ),
            "-",
        )
        found.append(f"{sure:.2f} {n:>3}")
    print(f"{what:<14} {'  '.join(found)}")


# A dominant seedling of a selfed AAaa: AAAA, AAAa, AAaa, Aaaa. With double reduction 1/7 AAaa's
# gametes AA, Aa, aa are as 3:8:3, without as 1:4:1.
fewest("stated 1/7", [n / 187 for n in (9, 48, 82, 48)], (0, 1 / 28, 3 / 14, 15 / 28))
# What is named is one genotype: of AAAA and AAAa, which both throw none, AAAa.
fewest("none", [n / 35 for n in (8, 18, 8)], (0, 1 / 6, 1 / 2), best=34 / 35)
fewest("none, parted", [n / 35 for n in (9, 18, 8)], (0, 1 / 6, 1 / 2))

# TTTt and TTTT throw none: TTTt, with 0.2, is named for both.
n = 8
right = sum(
    max(p * binom.pmf(k, n, r) for p, r in zip((0.4, 0.3, 0.2), (1 / 2, 1 / 6, 0)))
    for k in range(n + 1)
)
print(f"{'wrong one':<14} {n} {1 - right:.10f}")
