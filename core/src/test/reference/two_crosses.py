"""Two crosses beside each other and their kept seedlings crossed, by throwing dice, written apart from the library.

P: 1 in 3 it is AA, 2 in 3 Aa. Q and R: Aa. Season 1: P x Q, n1 seedlings, and P x R, n2 seedlings; of those that show
A the first m of each are kept. Season 2: the first kept of the one by the first kept of the other, the second by the
second and so on, as far as there are of both, n3 seedlings of each two; wanted is aa.

python3 two_crosses.py    prints n1, n2, m, n3, the share of a million trials that had an aa, its standard error
"""

import random

TRIALS = 1_000_000


def cross(one, other):
    return random.choice(one) + random.choice(other)


def kept(one, other, raised, m):
    seedlings = [cross(one, other) for _ in range(raised)]
    return [seedling for seedling in seedlings if "A" in seedling][:m]


def succeeds(n1, n2, m, n3):
    shared = "AA" if random.random() < 1 / 3 else "Aa"
    for one, other in zip(kept(shared, "Aa", n1, m), kept(shared, "Aa", n2, m)):
        for _ in range(n3):
            if cross(one, other) == "aa":
                return True
    return False


random.seed(20260302)
for n1, n2, m, n3 in [(3, 2, 1, 10), (5, 4, 2, 8), (4, 6, 4, 6)]:
    share = sum(succeeds(n1, n2, m, n3) for _ in range(TRIALS)) / TRIALS
    error = (share * (1 - share) / TRIALS) ** 0.5
    print(n1, n2, m, n3, f"{share:.5f}", f"{error:.5f}")
