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
print(f"NumPy plain / reused          {peer['plain'] / medians['reused']:.2f}")
print(f"NumPy in place / reused       {peer['in place'] / medians['reused']:.2f}")
print(f"NumPy plain / one thread      {peer['plain'] / medians['reusedOneThread']:.2f}")
print(f"NumPy in place / one thread   {peer['in place'] / medians['reusedOneThread']:.2f}")
print(f"records / sorting codes       {medians['buildFromRecords'] / medians['sortCodes']:.2f}")
print(f"columns / sorting codes       {medians['buildFromColumns'] / medians['sortCodes']:.2f}")
row = 1_000_000 * 12 * 8
print(f"bytes moved, ancestry (two rows read, one written): {3 * row / medians['reused'] / 1e6:.1f} GB/s")
print(f"bytes moved, plain copy (one read, one written):    {2 * row / medians['plainCopy'] / 1e6:.1f} GB/s")
