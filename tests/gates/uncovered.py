# SPDX-License-Identifier: GPL-3.0-or-later
# The lines of core that no test runs, against tests/gates/uncovered.txt. A line is known by its file and its text,
# so that the list does not change when lines move.
# usage: uncovered.py LINES.json LIST [print]; LINES.json is what gcovr --json wrote, from the top of the checkout.
# Exit 1 when a line is not in the list, or the list names a line that its file does not have. `print` writes the
# lines that are missing from the list, to be put under a reason.
import json
import sys
from collections import Counter


def listed(path):
    """(file, text) -> how often, and complaints about the list itself."""
    lines, complaints, reason = Counter(), [], False
    for number, line in enumerate(open(path, encoding="utf-8"), 1):
        line = line.rstrip("\n")
        if line.startswith("why: "):
            reason = len(line) > 20
        elif line and not line.startswith("#") and not line.startswith("     "):
            name, _, text = line.partition("|")
            if not reason or not text.strip():
                complaints.append(f"{path}:{number}: a line stands below its reason (why: …), as file | text")
            else:
                lines[name.strip(), text.strip()] += 1
    return lines, complaints


def main():
    measured = json.load(open(sys.argv[1], encoding="utf-8"))
    allowed, complaints = listed(sys.argv[2])
    sources, missing, places, run, all_lines = {}, Counter(), {}, 0, 0
    for file in sorted(measured["files"], key=lambda each: each["file"]):
        name = file["file"]
        text = sources[name] = [line.strip() for line in open(name, encoding="utf-8")]
        counts = Counter()
        for line in file["lines"]:
            if not line.get("gcovr/noncode"):
                counts[line["line_number"]] += line["count"]
        all_lines += len(counts)
        run += sum(1 for count in counts.values() if count > 0)
        for number in sorted(number for number, count in counts.items() if count == 0):
            key = name, text[number - 1]
            missing[key] += 1
            places.setdefault(key, []).append(number)
    new = {key: count for key, count in missing.items() if count > allowed[key]}
    if sys.argv[3:] == ["print"]:
        for name, text in new:
            print(f"{name} | {text}")
        return
    for name, text in new:
        complaints.append(f"{name}:{places[name, text][-1]}: no test runs “{text}”, and {sys.argv[2]} does not say why")
    for (name, text), count in allowed.items():
        there = sources.get(name)
        if there is None or there.count(text) < count:
            complaints.append(f"{sys.argv[2]}: {name} has no line “{text}” any more; take it out")
        elif missing[name, text] < count:
            print(f"{name}: “{text}” is run by now; it may go from {sys.argv[2]}")
    print("\n".join(complaints + [f"core: {run} of {all_lines} lines run by tests, {100 * run / all_lines:.1f} %"]))
    sys.exit(1 if complaints else 0)


main()
