"""What crosses of invented registers throw, by going through every pair of gametes.

Written apart from Filial, after the handbook's chapter on what a cross will throw: each register
is a list of lines as they are typed, and each question beside it has the odds of every class of
seedling, found by letting every egg meet every grain of pollen. Genes lie on one chromosome or on
several, with or without a map; some gametes count more than others; a style may refuse pollen by
its S alleles; states may not always show, and kinds may die. Plants have two, three or four sets
and form their gametes in any way that can be stated, and lines are selfed on with or without a
choice before each selfing.

    python3 crosses.py > crosses.txt       (Python 3.11, no other library)
"""

import itertools
import math
import random
from collections import defaultdict

STATES = ("x", "y", "z")


def scaled(chances):
    total = sum(chances.values())
    return {key: chance / total for key, chance in chances.items() if chance > 0}


def seeds_needed(at_least, chance, sure, counted=None):
    """How many are enough; counted: (came up, sown), the rate then being uncertain by a flat prior."""

    def shown(m):
        """The chance that of m seedlings enough are wanted."""
        return 1 - sum(
            math.comb(m, i) * chance**i * (1 - chance) ** (m - i) for i in range(min(at_least, m + 1))
        )

    def enough(n):
        if counted is None:
            return shown(n) if n >= at_least else 0.0
        some, of = counted
        a, b = some + 1, of - some + 1
        beta = math.lgamma(a + b) - math.lgamma(a) - math.lgamma(b)
        return sum(
            math.comb(n, m)
            * math.exp(
                beta + math.lgamma(a + m) + math.lgamma(b + n - m) - math.lgamma(a + b + n)
            )
            * shown(m)
            for m in range(at_least, n + 1)
        )

    low, high = at_least - 1, at_least
    while enough(high) < sure:
        low, high = high, high * 2
        if high > 900:
            return None
    while high - low > 1:
        middle = (low + high) // 2
        if enough(middle) >= sure:
            high = middle
        else:
            low = middle
    return high


class Register:
    """Genotypes are tuples, a linkage group each, of haplotypes; these of an allele for each gene."""

    def __init__(self, seed):
        self.dice = random.Random(seed)
        self.polyploid = self.dice.random() < 0.35
        self.genes = "ABCD"[: self.dice.choice((1, 2, 3) if self.polyploid else (1, 2, 2, 3, 4))]
        self.alleles = {gene: [gene, gene.lower()] for gene in self.genes}
        self.groups = [[self.genes[0]]]
        for gene in self.genes[1:]:
            if self.polyploid or self.dice.random() < 0.5:
                self.groups.append([gene])
            else:
                self.groups[-1].append(gene)
        self.refuses = not self.polyploid and self.dice.random() < 0.3
        if not self.polyploid and self.dice.random() < 0.3:
            gene = self.dice.choice(self.genes)
            self.alleles[gene] = [gene, gene.lower() + "1", gene.lower() + "2"]
        if self.refuses:
            self.alleles["S"] = ["S1", "S2", "S3"]
            group = self.dice.choice(self.groups)
            group.insert(self.dice.randint(0, len(group)), "S")
            self.leak = self.dice.choice((2, 10)) / 100
        self.mapped = self.dice.random() < 0.5
        self.function = self.dice.choice(("haldane", "kosambi"))
        self.place, self.parted = {}, {}
        self.counts = {"eggs": {}, "pollen": {}}
        self.lines = ["on 2020-01-01"]
        for number, group in enumerate(self.groups):
            self.declare(number + 1, group)
        self.models = {}
        for trait in ("t",) if self.dice.random() < 0.5 else ("t", "u"):
            self.models[trait] = self.model()
            self.lines.append(f"trait {trait} --states x,y,z")
            rows = " ".join(f'"{self.row(*row)}"' for row in self.models[trait])
            self.lines.append(f"model {trait} {rows}")

    def declare(self, number, group):
        at = 0
        for i, gene in enumerate(group):
            line = f"gene {gene} " + " ".join(self.alleles[gene])
            if self.mapped and len(group) > 1:
                at += self.dice.randint(1, 80) if i else 0
                self.place[gene] = at
                line += f" --chromosome {number} --at {at}"
            elif i:
                share = self.dice.randint(0, 50)
                self.parted[group[i - 1], gene] = share / 100
                line += f" --next-to {group[i - 1]} --recombination {share}%"
            if gene == "S":
                line += f" --self-incompatible --leak {self.leak:.0%}"
            elif self.dice.random() < 0.2:
                for side, counts in self.counts.items():
                    if self.dice.random() < 0.6:
                        counts[gene] = {a: self.dice.randint(1, 4) for a in self.alleles[gene]}
                        said = ",".join(f"{a}={n}" for a, n in counts[gene].items())
                        line += f" --{side} {said}"
            self.lines.append(line)

    # ---- what shows ----

    def shows(self):
        """How often each state shows; None where a kind dies."""
        lot = self.dice.random()
        if lot < 0.2:
            return None
        if lot < 0.7:
            return {self.dice.choice(STATES): 1.0}
        one, other = self.dice.sample(STATES, 2)
        share = self.dice.randint(1, 99)
        return {one: share / 100, other: (100 - share) / 100}

    def model(self):
        """Rows that each hold for some plant, the last for all that are left."""
        while True:
            rows = []
            for _ in range(self.dice.randint(1, 3)):
                kind = {}
                for gene in self.genes:
                    if self.dice.random() < 0.6:
                        one = self.dice.choice(self.alleles[gene])
                        other = one if self.polyploid else self.dice.choice(self.alleles[gene])
                        kind[gene] = (one, None if self.dice.random() < 0.6 else other)
                if kind:
                    rows.append((kind, self.shows()))
            rows.append((None, {self.dice.choice(STATES): 1.0}))
            used = self.named(rows)
            held = set()
            pairs = [itertools.combinations_with_replacement(self.alleles[g], 2) for g in used]
            for plant in itertools.product(*pairs):
                held.add(self.holds(rows, dict(zip(used, plant))))
            rows = [row for i, row in enumerate(rows) if i in held]
            if self.named(rows):
                return rows

    def named(self, rows):
        return [gene for gene in self.genes if any(kind and gene in kind for kind, _ in rows)]

    def row(self, kind, shows):
        def alleles(one, other):
            stroke = "/" if len(one) > 1 or len(other or "") > 1 else ""
            return one + stroke + (other or "_")

        left = "*" if kind is None else " ".join(alleles(*pair) for pair in kind.values())
        if shows is None:
            return left + "=dies"
        return left + "=" + ",".join(
            state if share == 1 else f"{state}:{share:.0%}" for state, share in shows.items()
        )

    @staticmethod
    def holds(rows, plant):
        for i, (kind, _) in enumerate(rows):
            if kind is None or all(
                one in plant[gene] if other is None else set(plant[gene]) == {one, other}
                for gene, (one, other) in kind.items()
            ):
                return i
        raise AssertionError

    # ---- a question ----

    def ask(self):
        """The words of one question; what is reckoned with is kept for the answer."""
        dice = self.dice
        asked = [trait for trait in self.models if dice.random() < 0.7] or ["t"]
        needed = {gene for trait in asked for gene in self.named(self.models[trait])}
        # What dies by another trait is missing here too, if that hangs on the same chromosomes.
        for rows in self.models.values():
            genes = self.named(rows)
            near = any(needed.intersection(group) and set(genes) & set(group) for group in self.groups)
            if near and any(shows is None for _, shows in rows):
                needed.update(genes)
        self.asked_groups = []
        for group in self.groups:
            here = [gene for gene in group if gene in needed]
            if here and "S" in group:
                here = [gene for gene in group if gene in needed or gene == "S"]
            if here:
                self.asked_groups.append(here)
        self.seen = {
            trait: rows
            for trait, rows in self.models.items()
            if trait in asked or needed.issuperset(self.named(rows))
        }
        words = ["odds"]
        seed, self.egg_way, said = self.parent()
        words += ["--seed-genes", self.text(seed)] + (["--eggs-form", said] if said else [])
        if dice.random() < 0.4:
            pollen, self.pollen_way = seed, self.egg_way
            words += ["--selfed"] + (["--pollen-forms", said] if said else [])
        else:
            pollen, self.pollen_way, said = self.parent()
            words += ["--pollen-genes", self.text(pollen)]
            words += ["--pollen-forms", said] if said else []
        words += ["--map", self.function]
        self.want = {}
        for trait in asked:
            if dice.random() < 0.6:
                self.want[trait] = dice.choice(STATES)
                words += ["--want", f"{trait}={self.want[trait]}"]
            else:
                words += ["--trait", trait]
        keeps_sets = self.egg_way == self.pollen_way and self.egg_way[0] in ("halves", "any two")
        self.true, self.selfings, self.keeps = [], 0, False
        if self.want and keeps_sets and dice.random() < 0.3:
            self.true = [dice.choice(list(self.want))]
            words += ["--true-breeding", self.true[0]]
        elif keeps_sets and dice.random() < 0.4:
            self.selfings = dice.randint(1, 4)
            words += ["--selfings", str(self.selfings)]
            self.keeps = bool(self.want) and dice.random() < 0.6
            words += ["--keep-wanted"] if self.keeps else []
        self.germination = None
        self.at_least = dice.choice((1, 1, 2, 5))
        if self.want:
            words += ["--at-least", str(self.at_least)]
            if not self.selfings and dice.random() < 0.6:
                if dice.random() < 0.5:
                    self.germination = dice.randint(10, 99) / 100
                    words += ["--germination", f"{self.germination:.0%}"]
                else:
                    sown = dice.choice((5, 10, 25, 60))
                    self.germination = (dice.randint(sown // 2, sown), sown)
                    words += ["--germination", "{}/{}".format(*self.germination)]
        return words, asked, seed, pollen

    def parent(self):
        """A plant, how it forms gametes, and the words for that if any are needed."""
        dice = self.dice
        sets, way, said = 2, ("halves",), None
        if self.polyploid:
            lot = dice.choice(("2", "unreduced", "3", "4", "4"))
            if lot == "unreduced":
                division, least = dice.choice((("first", 50), ("second", 0)))
                mixed = dice.randint(least, 100) / 100
                way, said = ("all", mixed), f"{division}:{mixed}"
            elif lot == "3":
                way = ("some", dice.choice((1, 2)))
                sets, said = 3, str(way[1])
            elif lot == "4":
                often = dice.choice((0, 7, 6, 10))
                way = ("any two", 1 / often if often else 0.0)
                sets, said = 4, f"tetrasomic:1/{often}" if often else "tetrasomic:0"
        plant = tuple(
            tuple(tuple(dice.choice(self.alleles[g]) for g in group) for _ in range(sets))
            for group in self.asked_groups
        )
        return plant, way, said

    def text(self, plant):
        words = []
        for group, strands in zip(self.asked_groups, plant):
            stroke = len(group) > 1 or any(len(a) > 1 for strand in strands for a in strand)
            words.append(("/" if stroke else "").join("".join(strand) for strand in strands))
        return " ".join(words)

    # ---- the odds ----

    def recombined(self, one, other):
        if self.mapped:
            morgans = (self.place[other] - self.place[one]) / 100
            if self.function == "haldane":
                return (1 - math.exp(-2 * morgans)) / 2
            return math.tanh(2 * morgans) / 2
        group = next(group for group in self.groups if one in group)
        share = 0.0
        for i in range(group.index(one), group.index(other)):
            step = self.parted[group[i], group[i + 1]]
            share = share * (1 - step) + step * (1 - share)
        return share

    def gametes_of_group(self, group, strands, way):
        chances = defaultdict(float)
        if way[0] == "halves":
            for path in itertools.product((0, 1), repeat=len(group)):
                chance = 0.5
                for i in range(1, len(group)):
                    share = self.recombined(group[i - 1], group[i])
                    chance *= share if path[i] != path[i - 1] else 1 - share
                chances[(tuple(strands[s][i] for i, s in enumerate(path)),)] += chance
        elif way[0] == "any two":
            for one in strands:
                chances[one, one] += way[1] / 4
            for pair in itertools.combinations(strands, 2):
                chances[pair] += (1 - way[1]) / 6
        elif way[0] == "some":
            for some in itertools.combinations(strands, way[1]):
                chances[some] += 1 / 3
        else:
            chances[strands] += way[1]
            for one in strands:
                chances[one, one] += (1 - way[1]) / 2
        return chances

    def gametes(self, plant, way, side):
        all_of_it = {(): 1.0}
        for group, strands in zip(self.asked_groups, plant):
            chances = self.gametes_of_group(group, strands, way)
            for gamete in chances:
                for strand in gamete:
                    for gene, allele in zip(group, strand):
                        chances[gamete] *= self.counts[side].get(gene, {}).get(allele, 1)
            all_of_it = {
                before + (gamete,): chance * part
                for before, chance in all_of_it.items()
                for gamete, part in scaled(chances).items()
            }
        return all_of_it

    def carried(self, plant):
        return {
            gene: [strand[i] for strand in strands]
            for group, strands in zip(self.asked_groups, plant)
            for i, gene in enumerate(group)
        }

    def cross(self, seed, pollen):
        grains = self.gametes(pollen, self.pollen_way, "pollen")
        style = self.carried(seed).get("S", [])
        if style:
            grains = scaled(
                {
                    grain: chance * (self.leak if self.carried(grain)["S"][0] in style else 1)
                    for grain, chance in grains.items()
                }
            )
        seedlings = defaultdict(float)
        for egg, chance in self.gametes(seed, self.egg_way, "eggs").items():
            for grain, part in grains.items():
                both = tuple(tuple(sorted(a + b)) for a, b in zip(egg, grain))
                seedlings[both] += chance * part
        return seedlings

    def looks(self, plant):
        """By trait how often each state shows; None of a plant that dies."""
        carried = self.carried(plant)
        looks = {trait: rows[self.holds(rows, carried)][1] for trait, rows in self.seen.items()}
        return None if None in looks.values() else looks

    def wanted(self, looks):
        return math.prod(looks[trait].get(state, 0) for trait, state in self.want.items())

    def breeds_true(self, plant):
        """Whether all that can ever come of it by selfing shows what is wanted."""
        known, left = {plant}, [plant]
        while left:
            one = left.pop()
            looks = self.looks(one)
            if looks is None:
                continue
            if any(looks[trait].get(self.want[trait], 0) < 1 for trait in self.true):
                return False
            for seedling, chance in self.cross(one, one).items():
                if chance > 0 and seedling not in known:
                    known.add(seedling)
                    left.append(seedling)
        return True

    def answer(self, asked, seed, pollen):
        """The answer as lines; None where nothing would live."""
        seedlings = self.cross(seed, pollen)
        for selfing in range(self.selfings + 1):
            looks = {plant: self.looks(plant) for plant in seedlings}
            lost = sum(chance for plant, chance in seedlings.items() if looks[plant] is None)
            living = {plant: c for plant, c in seedlings.items() if looks[plant] is not None}
            if not living:
                return None
            living = scaled(living)
            if selfing == self.selfings:
                break
            kept = {p: c * (self.wanted(looks[p]) if self.keeps else 1) for p, c in living.items()}
            if sum(kept.values()) == 0:
                return None
            seedlings = defaultdict(float)
            for plant, chance in scaled(kept).items():
                for seedling, part in self.cross(plant, plant).items():
                    seedlings[seedling] += chance * part
        classes = defaultdict(float)
        hope = 0.0
        for plant, chance in living.items():
            for states in itertools.product(STATES, repeat=len(asked)):
                part = math.prod(looks[plant][t].get(s, 0) for t, s in zip(asked, states))
                classes[states] += chance * part
            if self.want and (not self.true or self.breeds_true(plant)):
                hope += chance * self.wanted(looks[plant])
        lines = [
            "class " + " ".join(f"{t}={s}" for t, s in zip(asked, states)) + f" {chance:.12f}"
            for states, chance in sorted(classes.items())
            if chance > 0
        ]
        lines.append(f"lost {lost:.12f}")
        if self.want:
            lines.append(f"hope {hope:.12f}")
        if hope > 0.01:
            each = hope * (1 - lost)
            lines.append(f"seedlings {seeds_needed(self.at_least, each, 0.95)}")
            if isinstance(self.germination, float):
                number = seeds_needed(self.at_least, each * self.germination, 0.95)
                lines.append(f"seeds {number}")
            elif self.germination:
                number = seeds_needed(self.at_least, each, 0.95, self.germination)
                lines.append(f"seeds {number}")
        return [line for line in lines if not line.endswith("None")]


def main():
    print("# made by crosses.py; change that, not this")
    for seed in range(1, 81):
        register = Register(seed)
        print(f"register {seed}")
        for line in register.lines:
            print("  " + line)
        for _ in range(4):
            words, asked, parent, pollen = register.ask()
            answer = register.answer(asked, parent, pollen)
            if answer:
                print("ask\t" + "\t".join(words))
                print("\n".join(answer))


main()
