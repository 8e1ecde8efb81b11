"""What the plants of invented benches carry, by going through everything that can be.

Written apart from Filial, after the handbook's chapter on what a plant carries: each bench is a
list of lines as they are typed, and beside it the odds of every plant's genotype at one locus,
found by adding up the chance of what was seen over all genotypes and all appearances of all plants
together. There is no elimination in it and no pedigree: only meiosis, and Bayes.

    python3 benches.py > benches.txt       (Python 3.11, no other library)
"""

import random

GENOTYPES = ("TT", "Tt", "tt")
GAMETE = {"TT": 1.0, "Tt": 0.5, "tt": 0.0}  # the chance that a gamete carries T
STATES = ("red", "plain")


def zygotes(egg, grain):
    """The chance of each genotype, of the chance that either gamete carries T."""
    return {
        "TT": egg * grain,
        "Tt": egg * (1 - grain) + (1 - egg) * grain,
        "tt": (1 - egg) * (1 - grain),
    }


class Bench:
    def __init__(self, seed):
        self.dice = random.Random(seed)
        self.lines = []
        self.plants = []  # genotypes, parents before offspring
        self.families = []
        self.codes = []  # the line that gave a plant its code, and its genotype's name
        self.lost = None
        self.misread = self.dice.choice((0, 0, 2, 10))
        self.shows = self.dice.choice((100, 80, 60))
        self.frequency = {
            "aaa": self.dice.choice((25, 50, 75)) / 100,
            "bbb": self.dice.choice((0, 20, 40)) / 100,
        }
        self.strangers = self.dice.choice(("aaa", "bbb"))
        self.begin()
        for number in range(self.dice.randint(1, 3)):
            self.family(number, 2021 + number)
        self.look_at_old_plants()
        self.lose_a_tag()

    def say(self, line):
        self.lines.append(line)
        return len(self.lines)

    def begin(self):
        self.say("on 2020-01-01")
        self.say("gene tips T t")
        self.say("trait tips --states red,plain")
        often = f":{self.shows}%,plain" if self.shows < 100 else ""
        self.say(f"model tips T_=red{often} tt=plain")
        for taxon, share in self.frequency.items():
            allele = f"T:{share:.0%},t" if share > 0 else "t"
            self.say(f'profile "Echeveria {taxon}" tips={allele}')
        for i in range(self.dice.randint(2, 3)):
            taxon = self.dice.choice(("aaa", "bbb"))
            line = self.say(f'@f{i}: plant "Echeveria {taxon}"')
            self.plants.append({"name": f"f{i}", "taxon": taxon, "seen": []})
            self.codes.append((line, f"f{i}"))
        if self.dice.random() < 0.6:
            of = self.dice.choice(self.plants)["name"]
            line = self.say(f"@ramet: offset @{of} --date 2020-02-01")
            self.codes.append((line, of))
            self.ramet = of
        else:
            self.ramet = None

    def label(self, name):
        """A plant, or the offset of it."""
        return "ramet" if name == self.ramet and self.dice.random() < 0.5 else name

    def family(self, number, year):
        seed = self.dice.choice(self.plants)["name"]
        others = [plant["name"] for plant in self.plants if plant["name"] != seed]
        day = f"--date {year}-02-01"
        cross = f"@x{number}: cross @{self.label(seed)}"
        how = self.dice.choice(("hand", "hand", "self", "leaky", "mix", "open"))
        if how == "self":
            self.say(f"{cross} --selfed {day} --bagged --emasculated")
            sires = [(1, seed)]
        elif how == "hand" or (how == "mix" and len(others) < 2):
            pollen = self.dice.choice(others)
            self.say(f"{cross} @{self.label(pollen)} {day} --bagged --emasculated")
            sires = [(1, pollen)]
        elif how == "leaky":
            pollen = self.dice.choice(others)
            selfs, strays = self.dice.choice((0, 10)), self.dice.choice((5, 10))
            self.say(
                f"{cross} @{self.label(pollen)} {day} --unprotected --selfs {selfs}%"
                f" --strays {strays}%"
            )
            sires = [(1 - (selfs + strays) / 100, pollen), (selfs / 100, seed), (strays / 100, None)]
        else:
            near = self.dice.sample(others, min(2, len(others)))
            weights = [self.dice.randint(1, 3) for _ in near]
            unknown = 0 if how == "mix" else self.dice.choice((0, 25, 50))
            word = "--mix" if how == "mix" else "--perhaps"
            named = " ".join(f"{word} @{name}={weight}" for name, weight in zip(near, weights))
            self.say(
                f"{cross} {day} {named} --bagged"
                if how == "mix"
                else f"{cross} --open {day} {named} --unknown {unknown}%"
            )
            sires = [
                ((1 - unknown / 100) * weight / sum(weights), name)
                for name, weight in zip(near, weights)
            ] + [(unknown / 100, None)]
        self.say(f"harvest @x{number} 60 --date {year}-06-01")
        kinds = [(1, seed, sires)]
        lot = f"@x{number}"
        left = [family for family in self.families if not family["used"]]
        if left and self.dice.random() < 0.5:
            other = self.dice.choice(left)
            parts = self.dice.choice((1, 3))
            self.say(
                f"@m{number}: mix @x{number}=1/{parts + 1} @{other['name']}={parts}/{parts + 1}"
                f" --date {year}-06-02"
            )
            kinds = [
                (1 / (parts + 1), seed, sires),
                (parts / (parts + 1),) + other["kinds"][0][1:],
            ]
            other["used"] = True
            lot = f"@m{number}"
        family = {
            "name": f"x{number}",
            "kinds": kinds,
            "used": lot.startswith("@m"),
            "counted": [],
        }
        self.families.append(family)
        self.say(f"@s{number}: sow {lot} 20 --pots 2 --date {year}-06-03")
        for pot in (1, 2):
            self.pot(family, number, pot, year)

    def pot(self, family, number, pot, year):
        code = f"@s{number}.{pot}"
        self.say(f"count {code} --up 9 --alive 9 --date {year}-08-01")
        mode = self.dice.choice(("tally", "nothing", "picked", "tally and picked", "one of it"))
        counts = None
        if mode.startswith("tally"):
            counts = {state: self.dice.randint(1, 4) for state in STATES}
            self.say(
                f"tally {code} tips red={counts['red']} plain={counts['plain']} --date {year}-09-01"
            )
            family["counted"].append(counts)
        if mode == "one of it":
            state = self.dice.choice(STATES)
            self.say(f"observe {code} tips {state} --date {year}-09-01")
            family["counted"].append({state: 1})
        if pot == 2 and self.dice.random() < 0.4:
            return
        picked = mode.endswith("picked")
        name = f"n{number}p{pot}"
        line = self.say(
            f"@{name}: number {code} 1 --date {year}-10-01" + (" --picked-for tips" if picked else "")
        )
        plant = {"name": name, "family": family, "seen": [], "picked": picked and not counts}
        if picked or self.dice.random() < 0.8:
            state = self.dice.choice(STATES)
            if counts:
                counts[state] -= 1  # it is one of those that were counted
            plant["seen"].append(state)
            self.say(f"observe @{name} tips {state} --date {year}-11-01")
        self.plants.append(plant)
        self.codes.append((line, name))

    def look_at_old_plants(self):
        for plant in self.plants:
            if "taxon" in plant:
                labels = [plant["name"]] + (["ramet"] if plant["name"] == self.ramet else [])
                for label in labels:
                    if self.dice.random() < 0.6:
                        state = self.dice.choice(STATES)
                        plant["seen"].append(state)
                        self.say(f"observe @{label} tips {state} --date 2026-01-01")

    def lose_a_tag(self):
        if self.dice.random() < 0.5 and len(self.plants) > 1:
            one, other = (plant["name"] for plant in self.dice.sample(self.plants, 2))
            weight = self.dice.randint(1, 3)
            line = self.say(f"@lost: found @{one}={weight} @{other} --date 2026-02-01")
            state = self.dice.choice(STATES)
            self.say(f"observe @lost tips {state} --date 2026-02-02")
            self.lost = ([(weight / (weight + 1), one), (1 / (weight + 1), other)], state)
            self.codes.append((line, "lost"))

    # ---- the odds ----

    def appears(self, state, genotype):
        red = 0 if genotype == "tt" else self.shows / 100
        return red if state == "red" else 1 - red

    def read(self, state, appearance):
        wrong = self.misread / 100
        return 1 - wrong if state == appearance else wrong

    def seedling(self, family, of):
        """The chance of each genotype of one seedling of a family, its parents being these."""
        chance = dict.fromkeys(GENOTYPES, 0.0)
        for share, seed, sires in family["kinds"]:
            for weight, pollen in sires:
                grain = self.frequency[self.strangers] if pollen is None else GAMETE[of[pollen]]
                for genotype, part in zygotes(GAMETE[of[seed]], grain).items():
                    chance[genotype] += share * weight * part
        return chance

    def odds(self):
        """By plant, the chance of each genotype; None if what was seen is impossible."""
        sums = {plant["name"]: dict.fromkeys(GENOTYPES, 0.0) for plant in self.plants}
        sums["lost"] = dict.fromkeys(GENOTYPES, 0.0)
        self.add(0, {}, {}, 1.0, sums)
        total = sum(sums[self.plants[0]["name"]].values())
        if total == 0:
            return None
        return {name: {g: part / total for g, part in of.items()} for name, of in sums.items()}

    def add(self, at, of, look, weight, sums):
        if weight == 0:
            return
        if at == len(self.plants):
            for family in self.families:
                chance = self.seedling(family, of)
                for counts in family["counted"]:
                    for state, count in counts.items():
                        weight *= (
                            sum(
                                chance[g] * self.appears(a, g) * self.read(state, a)
                                for g in GENOTYPES
                                for a in STATES
                            )
                            ** count
                        )
            if self.lost:
                candidates, state = self.lost
                parts = [
                    (weight * share * self.read(state, look[name]), of[name])
                    for share, name in candidates
                ]
                for part, genotype in parts:
                    sums["lost"][genotype] += part
                weight = sum(part for part, _ in parts)
            for name, genotype in of.items():
                sums[name][genotype] += weight
            return
        plant = self.plants[at]
        if "taxon" in plant:
            share = self.frequency[plant["taxon"]]
            chance = zygotes(share, share)
        else:
            chance = self.seedling(plant["family"], of)
        ways = []
        for genotype in GENOTYPES:
            for appearance in STATES:
                part = chance[genotype] * self.appears(appearance, genotype)
                for state in plant["seen"]:
                    part *= self.read(state, appearance)
                ways.append((genotype, appearance, part))
        whole = 1.0
        if plant.get("picked") and plant["seen"]:
            # It was looked for until it was found: of its parents that tells nothing.
            whole = sum(part for _, _, part in ways)
            if whole == 0:
                return
        for genotype, appearance, part in ways:
            of[plant["name"]], look[plant["name"]] = genotype, appearance
            self.add(at + 1, of, look, weight * part / whole, sums)
        del of[plant["name"]], look[plant["name"]]


def main():
    print("# made by benches.py; change that, not this")
    made = 0
    seed = 0
    while made < 60:
        seed += 1
        bench = Bench(seed)
        odds = bench.odds()
        if odds is None:
            continue
        made += 1
        print(f"bench {seed} misread {bench.misread} strangers {bench.strangers}")
        for line in bench.lines:
            print("  " + line)
        for line, name in bench.codes:
            print(f"line {line}", *(f"{g} {odds[name][g]:.9f}" for g in GENOTYPES))


main()
