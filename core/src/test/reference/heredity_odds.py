"""Odds of two middle-sized crosses by going through every pair of gametes in exact fractions.

An independent check of dev.filial.core.heredity: nothing of Filial is used. Written for and run
with Python 3.11.7, its standard library alone (fractions, itertools). Takes a second or so.

Usage: python3 heredity_odds.py > heredity_odds.txt

First cross: a plant heterozygous at eight unlinked genes A to H, selfed. Read in a seedling:
  flower  A_ B_ C_ purple, else C_ pink, else white
  leaf    cc plain, else D_ spotted, else E_ striped, else plain
  spine   F_ or G_ long, else short; long shows only 9 times in 10, else short
  life    hh dies; of the others aa lives 2 times in 3

Second cross: ABCD/abcd by AbCd/aBcD on one chromosome, recombination 1/10, 1/4, 1/3 between
neighbours, no interference.
  flower  A_ C_ purple, else white
  leaf    B_ D_ spotted, bb dd plain, else striped
"""

from collections import defaultdict
from fractions import Fraction
from itertools import product

HALF = Fraction(1, 2)


def has(alleles, allele):
    return allele in alleles


def report(name, classes):
    living = sum(classes.values())
    for states in sorted(classes):
        print(name, *states, classes[states] / living, sep="\t")
    print(name, "lost", 1 - living, sep="\t")


def unlinked():
    gametes = list(product(*[(letter, letter.lower()) for letter in "ABCDEFGH"]))
    genotypes = defaultdict(int)
    for egg in gametes:
        for grain in gametes:
            genotypes[tuple("".join(sorted(pair)) for pair in zip(egg, grain))] += 1
    classes = defaultdict(Fraction)
    for genotype, count in genotypes.items():
        a, b, c, d, e, f, g, h = genotype
        chance = Fraction(count, len(gametes) ** 2)
        if h == "hh":
            continue
        if a == "aa":
            chance *= Fraction(2, 3)
        flower = (
            "purple"
            if has(a, "A") and has(b, "B") and has(c, "C")
            else "pink" if has(c, "C") else "white"
        )
        leaf = (
            "plain"
            if c == "cc"
            else "spotted" if has(d, "D") else "striped" if has(e, "E") else "plain"
        )
        if has(f, "F") or has(g, "G"):
            classes[flower, leaf, "long"] += chance * Fraction(9, 10)
            classes[flower, leaf, "short"] += chance * Fraction(1, 10)
        else:
            classes[flower, leaf, "short"] += chance
    report("unlinked", classes)


def strands(one, other, recombination):
    gametes = defaultdict(Fraction)
    for start in (0, 1):
        for exchanges in product((False, True), repeat=len(recombination)):
            strand, chance, alleles = start, HALF, (one, other)[start][0]
            for place, (exchanged, r) in enumerate(zip(exchanges, recombination), 1):
                strand ^= exchanged
                chance *= r if exchanged else 1 - r
                alleles += (one, other)[strand][place]
            gametes[alleles] += chance
    return gametes


def linked():
    recombination = [Fraction(1, 10), Fraction(1, 4), Fraction(1, 3)]
    classes = defaultdict(Fraction)
    for egg, eggs in strands("ABCD", "abcd", recombination).items():
        for grain, grains in strands("AbCd", "aBcD", recombination).items():
            a, b, c, d = zip(egg, grain)
            flower = "purple" if "A" in a and "C" in c else "white"
            leaf = (
                "spotted"
                if "B" in b and "D" in d
                else "plain" if "B" not in b and "D" not in d else "striped"
            )
            classes[flower, leaf] += eggs * grains
    report("linked", classes)


unlinked()
linked()
