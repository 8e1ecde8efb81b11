"""How often kept seedlings set seed with what they are crossed with, by gametophytic self-incompatibility, and what
comes of plans in which some do not: every case gone through one by one in whole numbers, written apart from the
library. No pollen leaks; Sf is an allele that no style refuses.

First the shares of matings that set. Then two plans of sibs, the chance that an rr is raised.

RR S1S2 x rr S3S4, n1 seedlings, all Rr; they are taken two by two in the order they stand, the first pair that sets
gives n2 seedlings, wanted is rr.

Rr S1S2 x Rr S3S4, n1 seedlings; of the red ones (R_) the first pair that sets gives n2 seedlings; of the red ones of
these the first pair that sets gives n3, wanted is rr.

python3 kept_s_alleles.py
"""

from fractions import Fraction
from functools import lru_cache
from itertools import product


def grains(style, pollen):
    return [a for a in pollen if a == "Sf" or a not in style]


def sets(style, pollen):
    return len(grains(style, pollen)) > 0


def seedlings(seed, pollen):
    """Alleles of the seedlings, each as often as it comes."""
    of = {}
    works = grains(seed, pollen)
    for egg, grain in product(seed, works):
        one = tuple(sorted((egg, grain)))
        of[one] = of.get(one, 0) + Fraction(1, 2 * len(works))
    return of


def share(ones, others):
    return sum(p * q for (a, p), (b, q) in product(ones.items(), others.items()) if sets(a, b))


def alone(plant):
    return {plant: Fraction(1)}


S12, S13, S34, S35, S1f = ("S1", "S2"), ("S1", "S3"), ("S3", "S4"), ("S3", "S5"), ("S1", "Sf")
far, near = seedlings(S12, S34), seedlings(S12, S13)
print("sibs, no allele in common", share(far, far))
print("sibs, one allele in common", share(near, near))
print("by the seed parent, one in common", share(near, alone(S12)))
print("by the pollen parent, one in common", share(near, alone(S13)))
print("by another plant S1S3, none in common", share(far, alone(S13)))
print("of S1S2 x S3S4 by of S1S2 x S3S5", share(far, seedlings(S12, S35)))
self_fertile = seedlings(S1f, ("S2", "S3"))
print("selfed, of S1Sf x S2S3", sum(p for a, p in self_fertile.items() if sets(a, a)))
self_fertile = seedlings(S12, S1f)
print("selfed, of S1S2 x S1Sf", sum(p for a, p in self_fertile.items() if sets(a, a)))
again = {}
for (a, p), (b, q) in product(far.items(), far.items()):
    if sets(a, b):
        again[a, b] = p * q / share(far, far)
second = sum(w * share(seedlings(a, b), seedlings(a, b)) for (a, b), w in again.items())
print("sibs of sibs that set, S1S2 x S3S4", second)
turned = {}
for a, p in near.items():
    if sets(a, S13):
        turned[a] = p / share(near, alone(S13))
print("sibs after the pollen parent, one in common",
      sum(w * share(seedlings(a, S13), seedlings(a, S13)) for a, w in turned.items()))



def two_seasons(n1, n2):
    found = Fraction(0)
    for plants in product(far.items(), repeat=n1):
        chance = Fraction(1)
        for _, p in plants:
            chance *= p
        if any(sets(plants[i][0], plants[i + 1][0]) for i in range(0, n1 - 1, 2)):
            found += chance * (1 - Fraction(3, 4) ** n2)
    return found


def coloured(one, other):
    """Colour of a seedling of two red ones."""
    of = {}
    for a, b in product(one, other):
        pair = "".join(sorted(a + b))
        of[pair] = of.get(pair, 0) + Fraction(1, 4)
    return of


def first_pair(seed, pollen, n):
    """The first two red seedlings that set on each other, two by two, and how likely it is they."""
    kinds = [((s, c), p * q) for s, p in seedlings(seed[0], pollen[0]).items()
             for c, q in coloured(seed[1], pollen[1]).items()]
    found = {}
    for plants in product(kinds, repeat=n):
        chance = Fraction(1)
        for _, p in plants:
            chance *= p
        red = [plant for plant, _ in plants if "R" in plant[1]]
        for i in range(0, len(red) - 1, 2):
            if sets(red[i][0], red[i + 1][0]):
                found[red[i], red[i + 1]] = found.get((red[i], red[i + 1]), 0) + chance
                break
    return found


def three_seasons(n1, n2, n3):
    @lru_cache(maxsize=None)
    def onwards(one, other):
        wanted = Fraction(0)
        for (a, b), chance in first_pair(one, other, n2).items():
            rr = coloured(a[1], b[1]).get("rr", Fraction(0))
            wanted += chance * (1 - (1 - rr) ** n3)
        return wanted

    return sum(chance * onwards(a, b) for (a, b), chance in first_pair((S12, "Rr"), (S34, "Rr"), n1).items())


for n1, n2 in [(2, 5), (4, 5), (6, 10)]:
    print("two seasons", n1, n2, f"{float(two_seasons(n1, n2)):.10f}")
for n1, n2, n3 in [(2, 2, 5), (3, 4, 6), (4, 3, 4)]:
    print("three seasons", n1, n2, n3, f"{float(three_seasons(n1, n2, n3)):.10f}")
