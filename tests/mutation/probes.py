#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Mutation probes: one line of the source is made wrong at a time, and a test has to notice.

probes.py BUILD_FOLDER: for each probe below, changes the line, builds the one test program that has to fail, runs it, and
puts the line back.  Ends non-zero where a program still passes, or where a line is no longer there to be changed.
A probe is chosen where a slip would change figures by little, everywhere and plausibly.
"""
import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]

# File, the text as it is, what it becomes, the test program, the tests of it that have to notice.
PROBES = [
    ("core/base/display.cpp", "leading < 1.95", "leading < 2.95", "core_base_test", "Display.*"),
    ("core/base/display.cpp", "std::round(std::abs(time_s) * scale) / scale", "std::abs(time_s) * scale / scale",
     "core_base_test", "Display.*"),
    ("core/math/statistics.cpp", "(n - 1.0) / (n - 3.0)", "(n - 1.0) / (n - 1.0)", "core_math_test",
     "StandardUncertainty.*"),
    ("core/lap/find_laps.cpp", "math::standard_uncertainty(times)", "math::standard_deviation(times)", "core_lap_test",
     "FindLaps.*"),
    ("core/lap/find_laps.cpp", "own = !laps.empty() && laps.front().kind != LapKind::flying ? 0 : 1", "own = 1",
     "core_lap_test", "FindLaps.*"),
    ("core/lap/warp.cpp", "constexpr double start_sd_m = 20.0;", "constexpr double start_sd_m = 40.0;", "core_lap_test",
     "Warp.*"),
    ("core/track/find_segments.cpp", "const double middle = 0.5 * (turns[i].start_m + turns[i - 1].end_m);",
     "const double middle = turns[i].start_m;", "core_track_test", "Segments.*"),
    ("core/comparison/compare_laps.cpp", "base::half_width_95(trace.sd_s.back())", "trace.sd_s.back()",
     "core_comparison_test", "CompareLaps.*"),
    ("core/comparison/compare_laps.cpp", "trace.sd_s.push_back(math::standard_uncertainty(values));",
     "trace.sd_s.push_back(math::standard_deviation(values));", "core_comparison_test", "CompareLaps.*"),
]


def passes(folder, target, tests):
    built = subprocess.run(["cmake", "--build", folder, "--target", target], capture_output=True, text=True, check=False)
    if built.returncode:
        raise SystemExit(f"{target} does not build\n{built.stdout[-2000:]}")
    program = next(Path(folder).glob(f"tests/**/{target}"))
    return subprocess.run([program, f"--gtest_filter={tests}"], capture_output=True, check=False).returncode == 0


def noticed(folder, file, before, after, target, tests):
    """Whether the tests fail while the line is wrong; the line is put back whatever happens."""
    source = ROOT / file
    whole = source.read_text()
    if whole.count(before) != 1:
        raise SystemExit(f"{file}: \"{before}\" is there {whole.count(before)} times, not once: choose the probe anew")
    try:
        source.write_text(whole.replace(before, after))
        return not passes(folder, target, tests)
    finally:
        source.write_text(whole)


def main():
    folder = sys.argv[1]
    failures = 0
    for file, before, after, target, tests in PROBES:
        seen = noticed(folder, file, before, after, target, tests)
        failures += not seen
        print(f"{'noticed ' if seen else 'SURVIVED'}  {file}: {before}  ->  {after}", flush=True)
    for target, tests in sorted({probe[3:] for probe in PROBES}):
        if not passes(folder, target, tests):  # the source is as it was: what fails now notices nothing
            failures += 1
            print(f"{target} {tests} fails without any line made wrong")
    return 1 if failures else 0


if __name__ == "__main__":
    sys.exit(main())
