"""Runs the program over and over under what can go wrong, and counts: nothing lost, nothing mixed, no fault of its own.

    python3 src/test/python/soak.py --minutes 30 --classpath target/classes:... [--seed 1] [--work FOLDER]
    python3 src/test/python/soak.py --minutes 30 --launcher target/steelyard

Each round draws one kind: plain, killed at any moment, two to four runs at once, a full disk or one without room for
more files, damaged inputs, damaged reports, a reports folder that somebody sends, a comparison with damaged reports.
After each, what stands in the reports folder must be all of one run that was asked for, but where complete files wait
to be moved or the program itself says that some could not be; every row of the input must be accounted for; what lies
outside must be as it was; the exit code must never be 3. Full disks need the right to mount (tmpfs); without it they are
left out, and said. Ends with exit code 1 if anything was lost, mixed, touched or a fault of the program.
"""

import argparse
import collections
import csv
import hashlib
import json
import os
import random
import shutil
import subprocess
import sys
import tempfile
import time
from pathlib import Path

ROOT = Path(__file__).resolve().parents[3]
DEMO = ROOT / "data-in" / "demo"
NAME = "summer"
SENT_LISTS = [
    "move students/x\n",
    "remove students/precious.txt\n",
    "complete files of a run, by Steelyard\nremove students/1.html\nmove students/2.html\nend\n",
    "complete files of a run, by Steelyard\nmove ../precious.txt\nend\n",
    "complete files of a run, by Steelyard\nmove flights.csv\n",
    "\x00\xff\n",
]


class Soak:
    def __init__(self, options):
        self.random = random.Random(options.seed)
        self.command = options.command
        self.work = options.work
        self.outside = self.work / "outside"
        self.rounds = collections.Counter()
        self.met = collections.Counter()
        self.wrong = collections.Counter(
            {"lost rows": 0, "mixed folders": 0, "exit code 3": 0, "touched outside": 0, "left beside": 0, "other": 0})
        self.told = []
        self.runs = 0
        self.kinds = [self.plain, self.killed, self.killed, self.together, self.together, self.damaged_input,
                      self.damaged_reports, self.sent, self.compared]

    # ---- seasons

    def prepare(self):
        for folder in ("in", "outside"):
            (self.work / folder).mkdir(parents=True)
        (self.outside / "precious.txt").write_text("mine")
        (self.outside / "1.html").write_text("mine")
        (self.outside / "2.html").write_text("mine")
        self.seasons = [self.season("one", "season-2026-04.csv", 1, 150, []),
                        self.season("two", "season-2026-05.csv", 40, 180, ["--room"])]
        self.whole = []
        start = time.time()
        for season in self.seasons:
            code, said = self.run(self.audit(season, self.work / "clean"))
            assert code == 0, said
            self.whole.append(seen(self.work / "clean" / NAME))
            self.rows_kept(season, self.work / "clean")
        self.usual = (time.time() - start) / len(self.seasons)
        self.disk = self.work / "disk"
        self.disk.mkdir()
        if mount(self.disk):
            self.kinds += [self.full_disk, self.full_disk]
        else:
            print("SKIPPED: full disks, for nothing can be mounted here", flush=True)

    def season(self, name, demo, first, rows, options):
        folder = self.work / "in" / name
        folder.mkdir()
        lines = (DEMO / demo).read_text(encoding="utf-8").splitlines(keepends=True)
        (folder / "season.csv").write_text("".join([lines[0]] + lines[first:first + rows]), encoding="utf-8")
        return folder, options

    def audit(self, season, reports):
        return ["audit", str(season[0]), "-n", NAME, "-q", "-o", str(reports)] + season[1]

    def start(self, arguments):
        self.runs += 1
        return subprocess.Popen(self.command + arguments, stdout=subprocess.PIPE, stderr=subprocess.STDOUT,
                                cwd=ROOT, text=True, encoding="utf-8", errors="replace")

    def run(self, arguments):
        return self.ended(self.start(arguments), arguments)

    def ended(self, process, arguments):
        said = process.communicate()[0]
        if process.returncode == 3 or "fault of the program" in said:
            self.fault("exit code 3", " ".join(arguments) + "\n" + said)
        elif process.returncode not in (0, 2, -9):
            self.fault("other", f"exit code {process.returncode}: {' '.join(arguments)}\n{said}")
        if process.returncode == 2 and "Exception" in said:
            self.fault("other", f"an exception is shown: {said}")
        return process.returncode, said

    def fault(self, kind, what):
        self.wrong[kind] += 1
        self.told.append(f"{kind} in round {sum(self.rounds.values())}: {what}")
        print(self.told[-1][:3000], flush=True)

    # ---- what must hold

    def is_whole(self, folder, also=()):
        now = seen(folder)
        return not now or now in self.whole or now in also

    def require_whole(self, folder, what, also=()):
        if not self.is_whole(folder, also):
            self.fault("mixed folders", what + ": " + ", ".join(sorted(seen(folder))))

    def next_is_whole(self, reports, what):
        which = self.random.randrange(2)
        code, said = self.run(self.audit(self.seasons[which], reports))
        if code != 0 or seen(reports / NAME) != self.whole[which]:
            self.fault("mixed folders", f"after {what}: exit code {code}, {said}")
        left = [name for name in every(reports) if "/." in "/" + name]
        if left:
            self.fault("left beside", f"after {what}: {left}")

    def untouched(self, what):
        now = {path.name: path.read_text() for path in self.outside.iterdir()}
        if now != {"precious.txt": "mine", "1.html": "mine", "2.html": "mine"}:
            self.fault("touched outside", f"{what}: {now}")
            for path in self.outside.iterdir():
                path.unlink()
            for name in ("precious.txt", "1.html", "2.html"):
                (self.outside / name).write_text("mine")

    def rows_kept(self, season, reports):
        """Every row of the input is seen, and every row seen stands somewhere."""
        folder = reports / NAME
        facts = json.loads((folder / "run.json").read_text(encoding="utf-8"))
        counts = {name: rows(folder / f"{name}.csv") for name in ("flights", "rejected", "skipped")}
        for one in facts["inputs"]:
            if one["rows_seen"] != one["accepted"] + one["rejected"] + one["blank"] + one["skipped"]:
                self.fault("lost rows", f"the account of {one}")
        told = {name: sum(one[key] for one in facts["inputs"]) for name, key in
                (("flights", "accepted"), ("rejected", "rejected"), ("skipped", "skipped"))}
        if counts != told:
            self.fault("lost rows", f"{told} said, {counts} written of {season[0]}")
        return sum(one["rows_seen"] for one in facts["inputs"])

    def fresh(self, place=None):
        """A reports folder in any state that a user might have: none, one of either season."""
        reports = (place or self.work) / "reports"
        shutil.rmtree(reports, ignore_errors=True)
        state = self.random.randrange(3)
        if state < 2:
            shutil.copytree(self.kept(state), reports / NAME)
        return reports

    def kept(self, which):
        kept = self.work / f"kept{which}"
        if not kept.exists():
            self.run(self.audit(self.seasons[which], self.work / "clean"))
            shutil.copytree(self.work / "clean" / NAME, kept)
        return kept

    # ---- kinds of rounds

    def plain(self):
        reports = self.fresh()
        self.next_is_whole(reports, "nothing")
        self.met["plain"] += 1

    def killed(self):
        reports = self.fresh()
        process = self.start(self.audit(self.random.choice(self.seasons), reports))
        moving = self.random.random() < 0.3
        until = time.time() + self.random.random() * 1.2 * self.usual
        list_ = reports / NAME / ".writing" / "complete"
        while process.poll() is None and (not list_.exists() if moving else time.time() < until):
            time.sleep(0 if moving else 0.002)
        ended = process.poll() is not None
        process.kill()
        process.communicate()
        waits = list_.exists()
        self.met["had ended" if ended else "killed while files were moved" if waits else "killed"] += 1
        if not waits:
            self.require_whole(reports / NAME, "killed")
        self.next_is_whole(reports, "a kill")

    def together(self):
        reports = self.fresh()
        processes = []
        for _ in range(self.random.randint(2, 4)):
            arguments = self.audit(self.random.choice(self.seasons), reports)
            processes.append((self.start(arguments), arguments))
            time.sleep(self.random.choice((0, 0, self.random.random() * self.usual)))
        ended = [self.ended(*one) for one in processes]
        through = sum(1 for code, _ in ended if code == 0)
        self.met[f"{len(ended)} at once, {through} through"] += 1
        if through == 0:
            self.fault("other", f"none of {len(ended)} went through: {ended}")
        for code, said in ended:
            if code == 2 and "another run is writing into it" not in said:
                self.fault("other", f"one of {len(ended)}: {said}")
        if not seen(reports / NAME) or not self.is_whole(reports / NAME):
            self.fault("mixed folders", f"{len(ended)} at once")
        self.next_is_whole(reports, "runs at once")

    def full_disk(self):
        reports = self.fresh(self.disk)
        before = seen(reports / NAME)
        files = self.random.random() < 0.3
        ballast = self.disk / "ballast"
        ballast.mkdir()
        left = self.random.choice((0, 1, 2, 3, 5, 8, 13)) if files else int(2 ** self.random.uniform(0, 21))
        fill_names(ballast, left) if files else fill(ballast, left)
        code, said = self.run(self.audit(self.random.choice(self.seasons), reports))
        self.met[f"disk with {'few files' if files else 'few bytes'} left: exit code {code}"] += 1
        if code == 2 and "some files in" not in said and seen(reports / NAME) != before:
            self.fault("mixed folders", f"{left} left: {said}")
        shutil.rmtree(ballast)
        if code == 0:
            self.require_whole(reports / NAME, f"{left} left on the disk")
        self.next_is_whole(reports, f"a full disk with {left} left")

    def damaged_input(self):
        season = (self.work / "damaged", [])
        shutil.rmtree(season[0], ignore_errors=True)
        season[0].mkdir()
        source = self.random.choice((self.seasons[0][0] / "season.csv", DEMO / "club-2026.csv",
                                     DEMO / "ledger-2026-08.xlsx"))
        (season[0] / source.name).write_bytes(self.damage(source.read_bytes()))
        shutil.copy(self.seasons[1][0] / "season.csv", season[0] / "z-good.csv")
        reports = self.work / "reports"
        shutil.rmtree(reports, ignore_errors=True)
        code, said = self.run(self.audit(season, reports))
        self.met[f"damaged {source.suffix[1:]}: exit code {code}"] += 1
        if code != 0:
            self.fault("other", f"one damaged file keeps a season from being read: {said}")
            return
        self.rows_kept(season, reports)
        good = sum(1 for row in table(reports / NAME / "flights.csv") if row["file"] == "z-good.csv")
        bad = sum(1 for row in table(reports / NAME / "rejected.csv") if row["steelyard_file"] == "z-good.csv")
        skipped = sum(1 for row in table(reports / NAME / "skipped.csv") if row["file"] == "z-good.csv")
        if good + bad + skipped != rows(season[0] / "z-good.csv"):
            self.fault("lost rows", f"of a whole file beside a damaged {source.name}: {good} + {bad} + {skipped}")

    def damage(self, data):
        how = self.random.randrange(6)
        data = bytearray(data)
        if how == 0:
            return bytes(data[:self.random.randrange(len(data))])
        if how == 1:
            return bytes(data + data[self.random.randrange(len(data)):])
        if how == 2:
            at = self.random.randrange(len(data))
            del data[at:at + self.random.randint(1, 5000)]
        elif how == 3:
            data[self.random.randrange(len(data))] ^= 1 << self.random.randrange(8)
        elif how == 4:
            for _ in range(self.random.randint(1, 200)):
                data[self.random.randrange(len(data))] = self.random.randrange(256)
        else:
            at = self.random.randrange(len(data))
            data[at:at] = bytes(self.random.choice(b'",;\n\r\0x') for _ in range(self.random.randint(1, 300)))
        return bytes(data)

    def damaged_folder(self, which):
        reports = self.work / "reports"
        shutil.rmtree(reports, ignore_errors=True)
        shutil.copytree(self.kept(which), reports / NAME)
        for _ in range(self.random.randint(1, 3)):
            file = self.random.choice(sorted(reports.joinpath(NAME).iterdir()))
            self.random.choice((lambda: file.unlink(), lambda: file.write_bytes(b""),
                                lambda: file.write_bytes(self.damage(file.read_bytes() or b"x")),
                                lambda: file.write_bytes(2 * file.read_bytes())))()
            if not any(reports.joinpath(NAME).iterdir()):
                break
        return reports

    def damaged_reports(self):
        reports = self.damaged_folder(self.random.randrange(2))
        self.accepted_or_removed(reports, "damaged reports")

    def accepted_or_removed(self, reports, what):
        """A folder may be refused, with a word; then it is taken away, as that word asks for."""
        which = self.random.randrange(2)
        for attempt in ("first", "second", "after it was moved away"):
            code, said = self.run(self.audit(self.seasons[which], reports))
            if code == 0:
                break
            if attempt == "second":
                shutil.rmtree(reports)
        self.met[f"{what}: {attempt}"] += 1
        visible = {name: sum_ for name, sum_ in seen(reports / NAME).items() if not name.startswith("set-aside")}
        if code != 0 or visible != self.whole[which]:
            self.fault("mixed folders", f"after {what}: exit code {code}, {said}")

    def sent(self):
        """A folder of reports as somebody might send it, with links and lists that lead out of it."""
        reports = self.fresh()
        folder = reports / NAME
        folder.mkdir(parents=True, exist_ok=True)
        how = self.random.randrange(5)
        if how == 0:
            (folder / ".writing").symlink_to(self.outside)
        else:
            (folder / ".writing").mkdir()
        if how == 1:
            (folder / ".writing" / "lock").symlink_to(self.outside / "precious.txt")
        if how == 2:
            os.link(self.outside / "precious.txt", folder / ".writing" / "lock")
        if how >= 3:
            (folder / "students").symlink_to(self.outside)
            (folder / ".writing" / "complete").write_text(self.random.choice(SENT_LISTS), encoding="utf-8")
            if how == 4:
                (folder / ".writing" / "students").symlink_to(self.outside)
        if self.random.random() < 0.3:
            link = folder / self.random.choice(("flights.csv", "report.html"))
            link.unlink(missing_ok=True)
            link.symlink_to(self.outside / "precious.txt")
        which = self.random.randrange(2)
        code, said = self.run(self.audit(self.seasons[which], reports))
        self.untouched(f"a folder sent, {how}")
        self.met[f"a folder sent: exit code {code}"] += 1
        if code == 2 and "was not written by this program" not in said:
            self.met["a folder sent is refused"] += 1
        (folder / "students").unlink(missing_ok=True)
        shutil.rmtree(folder / "students", ignore_errors=True)
        self.accepted_or_removed(reports, "a folder sent")
        self.untouched(f"a folder sent, {how}")

    def compared(self):
        reports = self.damaged_folder(1)
        code, _ = self.run([self.comparison(), str(reports / NAME), str(self.kept(0)), "-o", str(self.work / "changes")])
        self.met[f"comparison with damaged reports: exit code {code}"] += 1
        shutil.rmtree(self.work / "changes", ignore_errors=True)

    def comparison(self):
        if not hasattr(self, "word"):
            said = subprocess.run(self.command + ["--help"], cwd=ROOT, capture_output=True, text=True).stdout
            self.word = next(word for word in ("compare", "against") if f"  {word} " in said)
        return self.word

    # ----

    def soak(self, minutes):
        end = time.time() + 60 * minutes
        said = 0
        while time.time() < end:
            kind = self.random.choice(self.kinds)
            self.rounds[kind.__name__.replace("_", " ")] += 1
            try:
                kind()
            except Exception as e:  # noqa: BLE001 - one odd round is told, and the others go on
                self.fault("other", f"{kind.__name__}: {type(e).__name__} {e}")
                shutil.rmtree(self.disk / "ballast", ignore_errors=True)
            if time.time() - said > 60:
                said = time.time()
                print(self.account(), flush=True)

    def account(self):
        return json.dumps({"runs": self.runs, "rounds": dict(sorted(self.rounds.items())),
                           "met": dict(sorted(self.met.items())), "wrong": self.wrong}, indent=1)


def every(folder):
    if not folder.exists():
        return []
    return [str(path.relative_to(folder)) for path in folder.rglob("*") if not path.is_dir()]


def seen(folder):
    """The files that a user sees, each with the checksum of its bytes."""
    return {name: hashlib.sha256((folder / name).read_bytes()).hexdigest()
            for name in every(folder) if "/." not in "/" + name}


def table(file):
    csv.field_size_limit(1 << 30)
    with open(file, encoding="utf-8-sig", newline="") as lines:
        return list(csv.DictReader(lines))


def rows(file):
    return len(table(file))


def mount(folder):
    return subprocess.run(["mount", "-t", "tmpfs", "-o", "size=8m,nr_inodes=120", "tmpfs", str(folder)],
                          capture_output=True).returncode == 0


def fill(ballast, left):
    try:
        with open(ballast / "bytes", "wb") as out:
            while room(ballast) > left:
                out.write(b"x" * min(65536, max(1, room(ballast) - left)))
                out.flush()
    except OSError:
        pass


def room(folder):
    disk = os.statvfs(folder)
    return disk.f_bavail * disk.f_frsize


def fill_names(ballast, left):
    try:
        for i in range(max(0, os.statvfs(ballast).f_favail - left)):
            (ballast / f"f{i}").touch()
    except OSError:
        pass


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--minutes", type=float, default=30)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--work", type=Path, help="an empty folder to work in (one made for it)")
    parser.add_argument("--java", default="java")
    program = parser.add_mutually_exclusive_group(required=True)
    program.add_argument("--classpath")
    program.add_argument("--launcher")
    options = parser.parse_args()
    options.command = [str(Path(options.launcher).resolve())] if options.launcher else [
        options.java, "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xshare:auto", "-Xmx400m", "-cp",
        options.classpath, "org.steelyard.cli.Main"]
    made = options.work is None
    options.work = (options.work or Path(tempfile.mkdtemp(prefix="soak"))).resolve()
    soak = Soak(options)
    try:
        soak.prepare()
        soak.soak(options.minutes)
    finally:
        if soak.work.joinpath("disk").is_mount():
            subprocess.run(["umount", str(soak.work / "disk")], check=False)
        if made:
            shutil.rmtree(options.work, ignore_errors=True)
    print(soak.account())
    return 1 if any(soak.wrong.values()) else 0


if __name__ == "__main__":
    sys.exit(main())
