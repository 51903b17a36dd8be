#!/usr/bin/python3
"""Measures the program against named baselines in the same run; see src/bench/README.md.

Every measurement is a process of its own: wall time, processor time (user and system) and peak memory as the kernel
reports them when it ends. Runs of all cases take turns, so that a slow minute of the machine strikes all alike. The
median is told with least and greatest, and the ratio of medians to the baseline of the section.
"""
import argparse
import os
import pathlib
import shlex
import shutil
import statistics
import subprocess
import sys
import tempfile
import time

HERE = pathlib.Path(__file__).resolve().parent
ROOT = HERE.parent.parent


class Case:
    def __init__(self, name, command, jvm=""):
        self.name, self.command, self.runs = name, [str(part) for part in command], []
        self.environment = {**os.environ, **({"JDK_JAVA_OPTIONS": jvm} if jvm else {})}

    def run(self):
        with open(os.devnull, "w") as nothing, tempfile.TemporaryFile() as errors:
            started = time.monotonic()
            process = subprocess.Popen(self.command, stdout=nothing, stderr=errors, cwd=ROOT, env=self.environment)
            _, status, usage = os.wait4(process.pid, 0)
            process.returncode = os.waitstatus_to_exitcode(status)
            wall = time.monotonic() - started
            if process.returncode != 0:
                errors.seek(0)
                sys.exit(f"{self.name} ended with {process.returncode}: {errors.read().decode(errors='replace')[-2000:]}")
        self.runs.append((wall, usage.ru_utime + usage.ru_stime, usage.ru_maxrss / 1024))

    def median(self, figure):
        return statistics.median(run[figure] for run in self.runs)

    def spread(self, figure):
        return f"{min(run[figure] for run in self.runs):.2f}–{max(run[figure] for run in self.runs):.2f}"


def section(title, cases, runs):
    for _ in range(runs):
        for case in cases:
            case.run()
    base = cases[0]
    print(f"\n### {title} (median of {runs})\n")
    print("| what | wall s | least–greatest | processor s | least–greatest | peak MB | wall to baseline | processor to baseline |")
    print("|---|---|---|---|---|---|---|---|")
    for case in cases:
        print(f"| {case.name} | {case.median(0):.2f} | {case.spread(0)} | {case.median(1):.2f} | {case.spread(1)} "
              f"| {max(run[2] for run in case.runs):.0f} | {case.median(0) / base.median(0):.2f} "
              f"| {case.median(1) / base.median(1):.2f} |", flush=True)


def has_pandas():
    return subprocess.run(["/usr/bin/python3", "-c", "import pandas"], capture_output=True).returncode == 0


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--classpath", required=True, help="the program, the bench and their libraries")
    parser.add_argument("--bench-classes", default="", help="where the bench's own classes are, if not on the class path")
    parser.add_argument("--flights", type=int, default=1_000_000)
    parser.add_argument("--xlsx", type=int, default=100_000, help="flights of the workbook that is read")
    parser.add_argument("--growth", default="10000,100000,300000,1000000", help="sizes of the table of growth")
    parser.add_argument("--runs", type=int, default=5)
    parser.add_argument("--work", default=ROOT / "target" / "bench-work", type=pathlib.Path)
    parser.add_argument("--sections", default="start,season,stages,threads,heap,xlsx,growth,core")
    parser.add_argument("more", nargs="*", help="further options in one argument")
    options = parser.parse_args()
    if options.more and options.more[0].strip():
        options = parser.parse_args(["--classpath", options.classpath, "--bench-classes", options.bench_classes]
                                    + shlex.split(options.more[0]))
    wanted, work = options.sections.split(","), options.work
    config = ROOT / "config"
    classpath = os.pathsep.join(part for part in (options.bench_classes, options.classpath) if part)

    def java(main_class, *arguments, jvm=()):
        return ["java", *jvm, "-cp", classpath, main_class, *map(str, arguments)]

    def season(count, ending):
        file = work / f"{count}-{ending}" / f"season-bench.{ending}"
        if not file.exists():
            file.parent.mkdir(parents=True, exist_ok=True)
            part = file.with_name("part." + ending)
            subprocess.run(java("org.steelyard.bench.Season", config, part, count), check=True, cwd=ROOT)
            part.rename(file)
        return file

    launcher = ROOT / "target" / ("steelyard.cmd" if os.name == "nt" else "steelyard")

    jar = ["java", "-jar", ROOT / "target" / "steelyard.jar"]
    flight = ["set", "--type", "jet180", "-f", "5", "-g", "24.5%"]

    def audit(file):
        return ["audit", file.parent, "--config", config, "--reports", work / "reports", "--name", "bench", "--quiet"]

    def launched(name, file, jvm=""):
        return Case(name, [launcher, *audit(file)], jvm)

    work.mkdir(parents=True, exist_ok=True)
    print(f"{os.cpu_count()} processors, load {os.getloadavg()[0]:.1f} before")
    hello = Case("bare Java that prints a word", java("org.steelyard.bench.Baseline", "hello"))
    csv = season(options.flights, "csv")
    loop = Case("Commons CSV loop, one thread, numbers only", java("org.steelyard.bench.Baseline", "csv", csv))
    if "start" in wanted:
        section("Start, one flight",
                [hello, Case("--help by the launcher", [launcher, "--help"]),
                 Case("set --help by the launcher", [launcher, "set", "--help"]),
                 Case("set by the launcher", [launcher, *flight]),
                 Case("set by the plain jar", [*jar, *flight])],
                4 * options.runs)
    if "season" in wanted:
        cases = [loop, hello, launched("audit, all reports", csv)]
        if has_pandas():
            kind = work / "type.json"
            subprocess.run(java("org.steelyard.bench.Season", config, kind), check=True, cwd=ROOT)
            cases.append(Case("pandas script", ["/usr/bin/python3", HERE / "pandas_season.py", csv, kind, work / "pandas.csv"]))
        else:
            print("there is no /usr/bin/python3 with pandas: its comparison is left out")
        section(f"A season of {options.flights:,} flights in CSV", cases, options.runs)
        if has_pandas():
            subprocess.run(["/usr/bin/python3", HERE / "compare.py", work / "reports" / "bench" / "flights.csv", work / "pandas.csv"], check=True)
    if "stages" in wanted:
        names = ("read", "parse", "balance", "check", "flights", "findings", "workbook", "page")
        cases = [Case(f"up to {name}" if name in names[:4] else f"check and {name} alone", java("org.steelyard.bench.Stage", config, csv, name)) for name in names]
        section("Stages, one thread", [Case(loop.name, loop.command), *cases], options.runs)
    if "threads" in wanted:
        section("Threads", [Case("audit on one processor", ["taskset", "-c", "0", launcher, *audit(csv)]),
                            launched("audit on all", csv)], options.runs)
    if "heap" in wanted:
        section("Heap", [launched("audit as the launcher has it", csv),
                         launched("audit by the launcher in -Xmx512m", csv, "-Xmx512m"),
                         Case("audit as Java chooses", [*jar, *audit(csv)])], options.runs)
    if "xlsx" in wanted:
        book = season(options.xlsx, "xlsx")
        section(f"A workbook of {options.xlsx:,} flights",
                [Case("POI's object model, numbers only", java("org.steelyard.bench.Baseline", "poi", book, jvm=["-Xmx6g"])),
                 Case("up to read", java("org.steelyard.bench.Stage", config, book, "read")),
                 Case("up to check", java("org.steelyard.bench.Stage", config, book, "check")),
                 launched("audit, all reports", book)], options.runs)
    if "growth" in wanted:
        for size in map(int, options.growth.split(",")):
            file = season(size, "csv")
            heap = "-Xmx1500m" if size > 1_000_000 else "-Xmx512m"
            section(f"Growth: {size:,} flights, {heap}",
                    [Case(loop.name, java("org.steelyard.bench.Baseline", "csv", file)), launched("audit, all reports", file, heap)],
                    options.runs if size <= 1_000_000 else 1)
    if "core" in wanted:
        print("\n### Core, one flight (JMH)\n", flush=True)
        subprocess.run(java("org.openjdk.jmh.Main", "org.steelyard.bench.Core", "-prof", "gc", "-v", "SILENT", "-rf", "csv",
                            "-rff", work / "core.csv"), check=True, cwd=ROOT, stdout=subprocess.DEVNULL)
        print((work / "core.csv").read_text())
    shutil.rmtree(work / "reports", ignore_errors=True)


if __name__ == "__main__":
    main()
