"""Reference values for TestCrossTest of dev.filial.core.inference, which quotes what this prints.

What test-cross seedlings are expected to tell of a plant's genotype: the mutual information of
genotype and counts, in bits, and the chance of naming the wrong genotype afterwards, summed over
every way in which the seedlings can fall into the states. Made with Python 3 and SciPy 1.17.1.
"""

from itertools import product

import numpy as np
from scipy.stats import entropy, multinomial


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
