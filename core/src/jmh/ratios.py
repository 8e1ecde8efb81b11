"""Prints medians and ratios from what run-ancestry measured into a directory."""

import csv
import re
import sys

directory = sys.argv[1]

# The median of each sampled benchmark; of single shots, which JMH does not sort, from its log.
medians = {}
for row in csv.DictReader(open(directory + "/jmh.csv")):
    name = row["Benchmark"].split("benchmark.")[1]
    if name.endswith("·p0.50") or name.endswith(":p0.50"):
        medians[re.split("[·:]", name)[0].split(".")[1]] = float(row["Score"])
shots, current = {}, None
for line in open(directory + "/jmh.txt"):
    found = re.match(r"# Benchmark: .*\.ArrayBuilding\.(\w+)", line)
    if found:
        current = shots.setdefault(found.group(1), [])
    elif line.startswith("# Benchmark:"):
        current = None
    elif current is not None and re.match(r"Iteration +\d+: ", line):
        current.append(float(line.split(":")[1].split()[0]))
for name, times in shots.items():
    medians[name] = sorted(times)[len(times) // 2]

peer = {}
for line in open(directory + "/numpy.txt"):
    found = re.match(r"NumPy \S+ (.*): ([\d.]+) ms", line)
    peer.setdefault(found.group(1), []).append(float(found.group(2)))
# Before and after: the better of the two for the peer.
peer = {name: min(times) for name, times in peer.items()}

for name, value in sorted(medians.items()):
    print(f"{name:18} {value:9.1f} ms")
for name, value in sorted(peer.items()):
    print(f"{'NumPy ' + name:18} {value:9.1f} ms")
for form in ("plain", "in place", "lanes"):
    print(f"{'NumPy ' + form + ' / reused':29} {peer[form] / medians['reused']:.2f}")
    print(f"{'NumPy ' + form + ' / one thread':29} {peer[form] / medians['reusedOneThread']:.2f}")
print(f"records / sorting codes       {medians['buildFromRecords'] / medians['sortCodes']:.2f}")
print(f"columns / sorting codes       {medians['buildFromColumns'] / medians['sortCodes']:.2f}")
plants, taxa = 1_000_000, 12
lanes, doubles = plants * taxa * 4, plants * taxa * 8


def speed(what, moved, name):
    print(f"{'bytes moved, ' + what:64} {moved / medians[name] / 1e6:.1f} GB/s")


speed("ancestry (two rows read, one written, of lanes):", 3 * lanes, "reused")
speed("written out (a row of lanes read, one of doubles written):", lanes + doubles, "writtenOut")
speed("plain copy of doubles (one row read, one written):", 2 * doubles, "plainCopy")
