"""Two seasons of crossing by throwing dice, written apart from the library.

Seed parent: 1 in 3 it is AA, 2 in 3 it is Aa (a seedling of Aa x Aa that shows A). Pollen parent: Aa.
Season 1: n1 seedlings are raised; of those that show A the first m are kept. Season 2: each kept plant is
crossed back to the seed parent, n2 seedlings each; wanted is aa.

python3 two_seasons.py    prints n1, m, n2, the share of a million trials that had an aa, its standard error
"""

import random

TRIALS = 1_000_000


def cross(one, other):
    return random.choice(one) + random.choice(other)


def succeeds(n1, m, n2):
    seed = "AA" if random.random() < 1 / 3 else "Aa"
    kept = []
    for _ in range(n1):
        seedling = cross(seed, "Aa")
        if "A" in seedling and len(kept) < m:
            kept.append(seedling)
    for plant in kept:
        for _ in range(n2):
            if cross(plant, seed) == "aa":
                return True
    return False


random.seed(20260301)
for n1, m, n2 in [(3, 1, 10), (5, 2, 8), (4, 4, 6)]:
    share = sum(succeeds(n1, m, n2) for _ in range(TRIALS)) / TRIALS
    error = (share * (1 - share) / TRIALS) ** 0.5
    print(n1, m, n2, f"{share:.5f}", f"{error:.5f}")
