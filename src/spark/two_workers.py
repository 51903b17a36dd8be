#!/usr/bin/env python3
"""Audits a season on two worker processes on this machine, on loopback only, and kills one of them on the way.

  two_workers.py --classes DIR[:DIR] --libraries FILE --season SEASON --reports FOLDER [--kill-after SECONDS]

FILE holds a class path: Spark's jars and those that the program needs. The master, the workers and their executors are
processes of this script, bound to 127.0.0.1, and are gone when it ends. The exit code is that of the audit.
"""
import argparse
import os
import re
import signal
import subprocess
import sys
import tempfile
import time

HOST = "127.0.0.1"


def children(pid):
    """Processes whose parent is the one given."""
    found = []
    for entry in filter(str.isdigit, os.listdir("/proc")):
        try:
            with open(f"/proc/{entry}/stat") as stat:
                parent = int(stat.read().rsplit(")", 1)[1].split()[1])
        except (OSError, IndexError):
            continue
        if parent == pid:
            found.append(int(entry))
    return found


def wait_for(path, pattern, seconds):
    """The first match of a pattern in a log that is being written."""
    until = time.time() + seconds
    while time.time() < until:
        with open(path, errors="replace") as log:
            match = re.search(pattern, log.read())
        if match:
            return match
        time.sleep(0.5)
    raise SystemExit(f"{os.path.basename(path)}: no {pattern} within {seconds} s")


class Cluster:
    def __init__(self, folder, jars, memory):
        self.folder = folder
        self.memory = memory
        self.started = []
        home = os.path.join(folder, "home")
        os.makedirs(os.path.join(home, "jars"))
        for jar in jars:
            os.symlink(os.path.abspath(jar), os.path.join(home, "jars", os.path.basename(jar)))
        self.jars = os.path.join(home, "jars", "*")
        self.environment = dict(os.environ, SPARK_HOME=home, SPARK_LOCAL_IP=HOST, SPARK_SCALA_VERSION="2.13")
        # started processes tell at which address they listen
        with open(os.path.join(folder, "log4j2.properties"), "w") as settings:
            settings.write("rootLogger.level = info\nrootLogger.appenderRef.out.ref = out\n"
                           "appender.out.type = Console\nappender.out.name = out\n"
                           "appender.out.layout.type = PatternLayout\nappender.out.layout.pattern = %m%n\n")

    def start(self, name, main, *args):
        log = os.path.join(self.folder, name + ".log")
        with open(log, "w") as out:
            process = subprocess.Popen(
                ["java", "-Xmx256m", "-Dlog4j2.configurationFile=" + os.path.join(self.folder, "log4j2.properties"),
                 "-cp", self.jars, main, "--host", HOST, *args],
                stdout=out, stderr=subprocess.STDOUT, env=self.environment)
        self.started.append(process)
        return process, log

    def open(self):
        _, log = self.start("master", "org.apache.spark.deploy.master.Master", "--port", "0", "--webui-port", "0")
        master = wait_for(log, r"Starting Spark master at (spark://\S+)", 120).group(1)
        workers = []
        for number in (1, 2):
            worker, log = self.start(
                f"worker-{number}", "org.apache.spark.deploy.worker.Worker", "--port", "0", "--webui-port", "0",
                "--cores", "1", "--memory", self.memory, "--work-dir", os.path.join(self.folder, f"work-{number}"),
                master)
            wait_for(log, r"Successfully registered with master", 120)
            workers.append(worker)
        return master, workers

    def close(self):
        for process in reversed(self.started):
            for child in children(process.pid):
                kill(child)
            process.kill()
            process.wait()


def kill(pid):
    try:
        os.kill(pid, signal.SIGKILL)
    except ProcessLookupError:
        pass


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--classes", required=True)
    parser.add_argument("--libraries", required=True)
    parser.add_argument("--season", required=True)
    parser.add_argument("--reports", required=True)
    parser.add_argument("--memory", default="900m")
    parser.add_argument("--kill-after", type=float, default=0, help="seconds of work after which a worker is killed")
    parser.add_argument("rest", nargs="*", help="further arguments of the audit, after --")
    args = parser.parse_args()
    with open(args.libraries) as file:
        jars = [jar for jar in file.read().strip().split(":") if jar.endswith(".jar")]
    classes = [os.path.abspath(one) for one in args.classes.split(":")]
    with tempfile.TemporaryDirectory(prefix="steelyard-") as folder:
        cluster = Cluster(folder, jars, args.memory)
        try:
            master, workers = cluster.open()
            begun = time.time()
            audit = subprocess.Popen(
                ["java", "-Xmx1200m", f"-Dspark.master={master}", f"-Dspark.driver.host={HOST}",
                 f"-Dspark.driver.bindAddress={HOST}", f"-Dspark.executor.memory={args.memory}",
                 "-Dspark.executor.extraClassPath=" + ":".join(classes),
                 "-cp", ":".join(classes + [cluster.jars]), "org.steelyard.spark.SparkAudit",
                 os.path.abspath(args.season), "-o", os.path.abspath(args.reports), *args.rest],
                env=cluster.environment)
            cluster.started.append(audit)
            if args.kill_after > 0:
                while audit.poll() is None and not children(workers[0].pid):
                    time.sleep(0.2)
                time.sleep(args.kill_after)
                executors = children(workers[0].pid)
                at_work = audit.poll() is None
                workers[0].kill()
                for executor in executors:
                    kill(executor)
                print(f"killed a worker and {len(executors)} executor(s)"
                      + (" in the middle of the work" if at_work else ", but the work was done"), flush=True)
            code = audit.wait()
            print(f"{time.time() - begun:.1f} s elapsed, exit code {code}")
            return code
        finally:
            cluster.close()


if __name__ == "__main__":
    sys.exit(main())
