"""How the seedlings of invented pots live on, each followed by itself.

Written apart from Filial, after the handbook's chapter on what came up and what lived: each sowing
is a list of lines as they are typed, and beside it, week by week, how many were under watch, came
up, died and were last seen, and the share that lives on by Kaplan and Meier with those that come up
later at risk from that day, Greenwood's error, and the interval on the scale of log(-log).

    python3 watched.py > watched.txt       (Python 3.11, no other library)
"""

import datetime
import math
import random
from statistics import NormalDist

SOWN = datetime.date(2024, 6, 3)


class Seedling:
    def __init__(self, day):
        self.came, self.seen, self.died = day, day, False


class Pot:
    """What was entered of a pot, to be read as the chapter says."""

    def __init__(self):
        self.entries = []  # day, what, number and more

    def read(self, numbered, last_day):
        """Its seedlings; numbered: by number, the day on which one was gone and whether it died."""
        seedlings, standing = [], []
        up = missed = 0

        def come_up(day, number):
            for _ in range(number):
                standing.append(Seedling(day))
                seedlings.append(standing[-1])

        def go(day, number, died):
            for _ in range(number):
                one = standing.pop(0)
                one.seen, one.died = day, died

        for i, (day, what, number, more) in enumerate(self.entries):
            if what == "count":
                if number is not None and number > up:
                    come_up(day, number - up)
                    up = number
                missed = max(0, len(standing) - more)
                go(day, missed, True)
                up += more - len(standing)
                come_up(day, more - len(standing))
            elif what == "number":
                for of in range(more, more + number):
                    end, died = numbered.get(of, (last_day, False))
                    go(end, 1, died)
            elif what == "died":
                # Not dead twice: as many as the count before missed, if the next finds as many more.
                later = i + 1
                others = 0
                while later < len(self.entries) and self.entries[later][1] == "died":
                    others += self.entries[later][2]
                    later += 1
                known = 0
                if later < len(self.entries) and self.entries[later][1] == "count":
                    _, _, then_up, then = self.entries[later]
                    if then_up is None or then_up <= up:
                        known = min(number, missed, then - (len(standing) - number - others))
                        known = max(0, known)
                missed -= known
                go(day, number - known, True)
            else:
                go(day, number, False)
        for one in standing:
            one.seen = self.entries[-1][0]
        return seedlings


class Sowing:
    def __init__(self, seed):
        dice = random.Random(seed)
        self.sure = dice.choice((80, 90, 95, 99))
        pots = dice.choice((1, 1, 2, 3))
        self.lines = [
            "on 2024-01-01",
            '@p: plant "Echeveria aaa"',
            '@q: plant "Echeveria aaa"',
            "@c: cross @p @q --bagged --date 2024-02-01",
            "harvest @c 400 --date 2024-06-01",
            f"@s: sow @c {pots * 40} --pots {pots} --date {SOWN}",
        ]
        self.pots = [Pot() for _ in range(pots)]
        self.gone = {}  # numbered seedlings, the day, and whether it died
        numbered = []  # number, day
        standing, up = [0] * pots, [0] * pots
        plan = sorted(
            (day, pot) for pot in range(pots) for day in dice.sample(range(10, 150), dice.randint(2, 8))
        )
        for day, pot in plan:
            date = f"--date {SOWN + datetime.timedelta(days=day)}"
            entries = self.pots[pot].entries
            what = dice.choice(("count", "count", "count", "died", "give", "discard", "number", "one"))
            if not entries:
                what = "count"
            here = standing[pot]
            if what == "one":
                here = [number for number, since in numbered if number not in self.gone and since < day]
                if here:
                    number = dice.choice(here)
                    fate = dice.choice(("died", "died", "give", "discard"))
                    self.gone[number] = (day, fate == "died")
                    self.lines.append(f"{fate} 24-003-{number} {date}")
            elif what == "count":
                new = dice.randint(0, 6) if entries else dice.randint(1, 15)
                if up[pot] + new > 40:
                    continue
                said = dice.random() < 0.5
                if said:
                    dead = dice.randint(0, min(3, here + new))
                    up[pot] += new
                    alive = here + new - dead
                else:
                    alive = max(0, here + dice.randint(-4, 4)) if entries else new
                    up[pot] += max(0, alive - here)
                    if up[pot] > 40:
                        up[pot] -= max(0, alive - here)
                        continue
                told = f"--up {up[pot]} " if said else ""
                self.lines.append(f"count @s.{pot + 1} {told}--alive {alive} {date}")
                entries.append((day, "count", up[pot] if said else None, alive))
                standing[pot] = alive
            elif here:
                number = dice.randint(1, min(here, 3) if what == "number" else here)
                if what == "number":
                    self.lines.append(f"number @s.{pot + 1} {number} {date}")
                    first = len(numbered) + 1
                    numbered += [(first + i, day) for i in range(number)]
                    entries.append((day, "number", number, first))
                else:
                    self.lines.append(f"{what} @s.{pot + 1} --count {number} {date}")
                    entries.append((day, what, number, None))
                standing[pot] -= number
        self.pots = [pot for pot in self.pots if pot.entries]
        days = [entry[0] for pot in self.pots for entry in pot.entries]
        self.last_day = max(days + [day for day, _ in self.gone.values()])

    def answer(self):
        """Week by week; None where all had died before others came up."""
        all_of_them = [
            one for pot in self.pots for one in pot.read(self.gone, self.last_day)
        ]
        z = NormalDist().inv_cdf(0.5 + self.sure / 200)

        def week(day):
            return (day + 6) // 7

        living, spread = 1.0, 0.0
        curve = {}
        for day in sorted({one.came for one in all_of_them} | {one.seen for one in all_of_them}):
            dead = sum(one.died and one.seen == day for one in all_of_them)
            watched = sum(one.came <= day <= one.seen for one in all_of_them)
            if dead == watched and dead and day < max(one.seen for one in all_of_them):
                return None
            living *= 1 - dead / watched
            spread += dead / (watched * (watched - dead)) if dead < watched else 0
            curve[week(day)] = (living, spread)
        lines = [f"all {len(all_of_them)} {sum(one.died for one in all_of_them)}"]
        for number, (share, error) in curve.items():
            before = sum(week(one.came) < number <= week(one.seen) for one in all_of_them)
            came = sum(week(one.came) == number for one in all_of_them)
            ended = [one for one in all_of_them if week(one.seen) == number]
            died = sum(one.died for one in ended)
            line = f"week {number} {before} {came} {died} {len(ended) - died} {share:.12f}"
            if 0 < share < 1:
                turn = z * math.sqrt(error) / math.log(share)
                low, high = share ** math.exp(-turn), share ** math.exp(turn)
                line += f" {share * math.sqrt(error):.12f} {low:.12f} {high:.12f}"
            lines.append(line)
        return lines


def main():
    print("# made by watched.py; change that, not this")
    # In sowing 178 some die after a count that missed nobody, which followed one that did.
    made, seed = 0, 120
    while made < 60:
        seed += 1
        sowing = Sowing(seed)
        answer = sowing.answer()
        if answer:
            made += 1
            print(f"sowing {seed} sure {sowing.sure}%")
            for line in sowing.lines:
                print("  " + line)
            print("\n".join(answer))


main()
