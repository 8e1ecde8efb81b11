"""How the plants of invented benches are related, by the tabular method, and who founded them.

Written apart from Filial, after the handbook's chapter on how closely plants are related: each
bench is a list of lines as they are typed, and beside it the coancestry of every two plants, what
each founder gave, and how many founders of like shares would leave a bench as varied. A plant that
may have come about in several ways is the mean over them, each seed's way being its own; pollen of
plants nobody knows is that of one more founder for each seedling and cross it may have come of.

    python3 relatives.py > relatives.txt       (Python 3.11, no other library)
"""

import random
from collections import defaultdict


class Bench:
    """Every plant has ways: the share of each, how (sex, clone), seed parent, pollen parent."""

    def __init__(self, seed):
        self.dice = random.Random(seed)
        self.lines, self.codes = [], []
        self.ways = {}  # by plant, parents before offspring
        self.same = {}  # an offset, and the plant it was taken from
        self.free = []
        self.say("on 2020-01-01")
        for i in range(self.dice.randint(2, 4)):
            taxon = self.dice.choice(("aaa", "bbb"))
            self.plant(f"f{i}", f'plant "Echeveria {taxon}"', None)
        for number in range(self.dice.randint(2, 5)):
            self.family(number, 2021 + number)
        if self.dice.random() < 0.4:
            one, other = self.dice.sample(list(self.ways), 2)
            weight = self.dice.randint(1, 3)
            found = [(weight / (weight + 1), "clone", one, None), (1 / (weight + 1), "clone", other, None)]
            self.plant("lost", f"found @{one}={weight} @{other} --date 2026-03-01", found)

    def say(self, line):
        self.lines.append(line)
        return len(self.lines)

    def plant(self, name, line, ways):
        self.codes.append((self.say(f"@{name}: {line}"), name))
        self.ways[name] = ways

    def family(self, number, year):
        if self.dice.random() < 0.3:
            of = self.dice.choice(list(self.ways))
            name = f"o{number}"
            self.codes.append((self.say(f"@{name}: offset @{of} --date {year}-01-02"), name))
            self.same[name] = of
        ways = self.cross(number, f"--date {year}-02-01")
        self.say(f"harvest @x{number} 60 --date {year}-06-01")
        lot = f"@x{number}"
        if self.free and self.dice.random() < 0.5:
            other, others = self.free.pop()
            parts = self.dice.choice((1, 3))
            self.say(
                f"@m{number}: mix @x{number}={parts}/4 {other}={4 - parts}/4 --date {year}-06-02"
            )
            lot = f"@m{number}"
            ways = [(share * parts / 4, *way) for share, *way in ways]
            ways += [(share * (4 - parts) / 4, *way) for share, *way in others]
        else:
            self.free.append((lot, ways))
        self.say(f"@s{number}: sow {lot} 20 --date {year}-06-03")
        self.say(f"count @s{number} --up 9 --date {year}-08-01")
        for i in range(self.dice.randint(1, 3)):
            self.plant(f"n{number}x{i}", f"number @s{number} 1 --date {year}-10-01", ways)

    def cross(self, number, day):
        names = list(self.ways) + list(self.same)
        seed = self.dice.choice(names)
        mother = self.same.get(seed, seed)
        others = [name for name in names if self.same.get(name, name) != mother]
        line = f"@x{number}: cross @{seed} {day}"
        how = self.dice.choice(("hand", "hand", "self", "leaky", "mix", "open", "bees"))
        if how == "self":
            self.say(f"{line} --selfed --bagged")
            return [(1, "sex", mother, mother)]
        if how == "bees":
            self.say(f"{line} --open")
            return [(1, "sex", mother, None)]
        if how in ("hand", "leaky"):
            pollen = self.dice.choice(others)
            father = self.same.get(pollen, pollen)
            line = line.replace(f"@{seed} ", f"@{seed} @{pollen} ")
            if how == "hand":
                self.say(f"{line} --bagged --emasculated")
                return [(1, "sex", mother, father)]
            selfs, strays = self.dice.choice((0, 10, 20)), self.dice.choice((0, 5, 30))
            clones = self.dice.choice((0, 5, 40))
            self.say(
                f"{line} --unprotected --selfs {selfs}% --strays {strays}% --apomixis {clones}%"
            )
            ways = [
                (100 - selfs - strays - clones, "sex", mother, father),
                (selfs, "sex", mother, mother),
                (strays, "sex", mother, None),
                (clones, "clone", mother, None),
            ]
            return [(share / 100, *way) for share, *way in ways if share]
        near = self.dice.sample(others, min(2, len(others)))
        weights = [self.dice.randint(1, 3) for _ in near]
        mixed = how == "mix" and len(near) == 2
        unknown = 0 if mixed else self.dice.choice((0, 25, 50))
        word = "--mix" if mixed else "--perhaps"
        named = " ".join(f"{word} @{name}={weight}" for name, weight in zip(near, weights))
        self.say(f"{line} {named} " + ("--bagged" if mixed else f"--open --unknown {unknown}%"))
        ways = [
            ((1 - unknown / 100) * weight / sum(weights), "sex", mother, self.same.get(name, name))
            for name, weight in zip(near, weights)
        ]
        return ways + ([(unknown / 100, "sex", mother, None)] if unknown else [])

    # ---- the answers ----

    def related(self):
        """The coancestry of every two plants, each plant with itself too."""
        table = {}
        done = []
        for name, ways in self.ways.items():
            for other in done:
                of = sum(
                    share
                    * (
                        table[seed, other]
                        if how == "clone"
                        else (table[seed, other] + (table[pollen, other] if pollen else 0)) / 2
                    )
                    for share, how, seed, pollen in ways or []
                )
                table[name, other] = table[other, name] = of
            table[name, name] = 0.5 if ways is None else sum(
                share
                * (
                    table[seed, seed]
                    if how == "clone"
                    else (1 + (table[seed, pollen] if pollen else 0)) / 2
                )
                for share, how, seed, pollen in ways
            )
            done.append(name)
        return table

    def gave(self):
        """By plant, what share of it each founder gave."""
        gave = {}
        for name, ways in self.ways.items():
            gave[name] = defaultdict(float)
            if ways is None:
                gave[name][name] = 1.0
            for i, (share, how, seed, pollen) in enumerate(ways or []):
                half = 1 if how == "clone" else 0.5
                for founder, part in gave[seed].items():
                    gave[name][founder] += share * half * part
                if how == "sex":
                    of = gave[pollen] if pollen else {("unknown", name, i): 1.0}
                    for founder, part in of.items():
                        gave[name][founder] += share * half * part
        return gave


def main():
    print("# made by relatives.py; change that, not this")
    for seed in range(1, 51):
        bench = Bench(seed)
        print(f"bench {seed}")
        for line in bench.lines:
            print("  " + line)
        for line, name in bench.codes:
            print(f"line {line} {name}")
        table = bench.related()
        for i, (_, one) in enumerate(bench.codes):
            for _, other in bench.codes[i:]:
                pair = table[bench.same.get(one, one), bench.same.get(other, other)]
                print(f"pair {one} {other} {pair:.12f}")
        plants = len(bench.ways)
        shares = defaultdict(float)
        for of in bench.gave().values():
            for founder, part in of.items():
                shares[founder] += part / plants
        for founder, share in shares.items():
            if isinstance(founder, str) and share > 0:
                print(f"founder {founder} {share:.12f}")
        unknown = [share for founder, share in shares.items() if not isinstance(founder, str)]
        print(f"unknown {len(unknown)} {sum(unknown):.12f}")
        print(f"effective {1 / sum(share * share for share in shares.values()):.12f}")
        print(f"mean {sum(table.values()) / plants**2:.12f}")


main()
