#!/usr/bin/env python3
"""Audits a drawn season on one machine and on Spark, in 1, 2 and 8 parts and on two worker processes of which one is
killed, and holds the reports against each other. Outside the gate; first

  mvn -Pspark -DskipTests test-compile dependency:build-classpath -Dmdep.outputFile=target/spark.classpath
  src/spark/proof.py --flights 1000000 --folder target/proof

Prints for each run the time elapsed and the time of the processor, and what the comparison says.
"""
import argparse
import os
import resource
import subprocess
import sys
import time

HERE = os.path.dirname(os.path.abspath(__file__))
ROOT = os.path.dirname(os.path.dirname(HERE))
QUIET = ["-Dlog4j2.loggerContextFactory=org.apache.logging.log4j.core.impl.Log4jContextFactory",
         "-Dlog4j2.configurationFile=org/steelyard/spark/log4j2-quiet.properties"]


def run(name, command):
    begun, before = time.time(), resource.getrusage(resource.RUSAGE_CHILDREN)
    code = subprocess.run(command, cwd=ROOT, stdout=subprocess.DEVNULL).returncode
    after = resource.getrusage(resource.RUSAGE_CHILDREN)
    processor = after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime
    print(f"{name}: {time.time() - begun:.1f} s elapsed, {processor:.1f} s of processor, exit code {code}", flush=True)
    if code:
        sys.exit(code)


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--flights", type=int, default=1_000_000)
    parser.add_argument("--folder", default=os.path.join(ROOT, "target", "proof"))
    parser.add_argument("--classes", default=os.path.join(ROOT, "target", "classes"))
    parser.add_argument("--test-classes", default=os.path.join(ROOT, "target", "test-classes"))
    parser.add_argument("--classpath", default=os.path.join(ROOT, "target", "spark.classpath"))
    parser.add_argument("--parts", default="1,2,8")
    parser.add_argument("--piece-mb", default="8")
    parser.add_argument("--kill-after", default="20")
    parser.add_argument("--memory", default="1200m")
    parser.add_argument("--compare-memory", default="8g", help="the comparison holds all flights of both")
    args = parser.parse_args()
    with open(args.classpath) as file:
        libraries = file.read().strip()
    java = ["java", "-Xmx" + args.memory]
    season = os.path.join(args.folder, "season.csv")
    bench = os.path.join(args.folder, "bench")
    os.makedirs(bench, exist_ok=True)
    run("compile the drawing of seasons", [
        "javac", "-nowarn", "-proc:none", "-encoding", "UTF-8", "-cp", args.classes + ":" + libraries,
        "-sourcepath", "src/bench/java", "-implicit:class", "-d", bench, "src/bench/java/org/steelyard/bench/Season.java"])
    run(f"draw {args.flights:,} flights", java + [
        "-cp", ":".join([bench, args.classes, libraries]), "org.steelyard.bench.Season", "config", season,
        str(args.flights)])
    one = os.path.join(args.folder, "one")
    run("one machine", java + [
        "-cp", args.classes + ":" + libraries, "org.steelyard.cli.Main", "audit", season, "-o", one, "-q", "-t", "2"])

    def compare(reports):
        subprocess.run(
            ["java", "-Xmx" + args.compare_memory, "-cp", ":".join([args.classes, args.test_classes, libraries]),
                    "org.steelyard.spark.SameAsOneMachine", os.path.join(one, "season"),
                    os.path.join(reports, "season")], cwd=ROOT, check=True)

    for parts in filter(None, args.parts.split(",")):
        reports = os.path.join(args.folder, "spark-" + parts)
        run(f"Spark, {parts} part(s)", java + QUIET + [
            "-Dspark.master=local[2]", "-Dspark.driver.host=127.0.0.1", "-Dspark.driver.bindAddress=127.0.0.1",
            "-cp", args.classes + ":" + libraries, "org.steelyard.spark.SparkAudit", season, "-o", reports,
            "--partitions", parts, "--piece-mb", args.piece_mb])
        compare(reports)
    reports = os.path.join(args.folder, "spark-workers")
    run("Spark, two workers, one killed", [
        sys.executable, os.path.join(HERE, "two_workers.py"), "--classes", args.classes, "--libraries", args.classpath,
        "--season", season, "--reports", reports, "--kill-after", args.kill_after, "--",
        "--partitions", "8", "--piece-mb", args.piece_mb])
    compare(reports)


if __name__ == "__main__":
    main()
