"""What a logger's file costs to read: writes six hours of eight channels, a row a second, and times whole processes in turn.

Usage: logger.py write FILE | read FILE | compare RUNS FILE STUDY TRIAL COMMAND...
The file has the difficulties of real ones: a comma as decimal sign, an hour without rows, open and saturated sensors, and one
spike of one second. The peers are Python's csv and R's read.table (which takes the columns with words as text).
"""
import csv
import os
import random
import resource
import shutil
import subprocess
import sys
import time

ROWS = 6 * 3600
CHANNELS = 8


def write(name):
    noise = random.Random(37)
    with open(name, "w", encoding="utf-8") as out:
        out.write("Time;" + ";".join("temperature %d (°C)" % (c + 1) for c in range(CHANNELS)) + "\n")
        for row in range(ROWS):
            second = row if row < 7200 else row + 3600
            cells = [value(row, c, noise) for c in range(CHANNELS)]
            out.write("2031-06-07 %02d:%02d:%02d;%s\n" % (9 + second // 3600, second // 60 % 60, second % 60, ";".join(cells)))


def value(row, channel, noise):
    if channel == 6 and 9000 <= row < 10500:
        return "open"
    if channel == 7 and row > 20000:
        return "saturated"
    if channel == 2 and row == 12345:
        return "1500,0"
    return ("%.1f" % (200 + 120 * channel + min(row, 5400) / 60 + noise.gauss(0, 3))).replace(".", ",")


def read(name):
    columns = [[] for _ in range(CHANNELS)]
    with open(name, encoding="utf-8", newline="") as rows:
        reader = csv.reader(rows, delimiter=";")
        next(reader)
        for row in reader:
            for channel in range(CHANNELS):
                text = row[channel + 1]
                columns[channel].append(float("nan") if text[0] in "os" else float(text.replace(",", ".")))
    print(sum(len(c) for c in columns), "values")


def timed(command):
    start = time.perf_counter()
    subprocess.run(command, check=True, stdout=subprocess.DEVNULL)
    return time.perf_counter() - start


def compare(runs, name, study, trial, command):
    if not os.path.exists(name):
        write(name)
    peers = {"Python csv": [sys.executable, __file__, "read", name]}
    if shutil.which("Rscript"):
        peers["R read.table"] = ["Rscript", "-e", "d <- read.table('%s', sep=';', dec=',', header=TRUE, fileEncoding='UTF-8')" % name]
    times = {who: [] for who in ["Daubline"] + list(peers)}
    for run in range(runs):
        copy = "%s-%d" % (name, run)
        shutil.copytree(study, copy)
        times["Daubline"].append(timed(command + ["logger", copy, name, "--trial", trial, "--apply"]))
        shutil.rmtree(copy)
        for who, peer in peers.items():
            times[who].append(timed(peer))
    ours = sorted(times["Daubline"])[runs // 2]
    print("%d values, %.1f MB; load %.1f" % (ROWS * CHANNELS, os.path.getsize(name) / 1e6, os.getloadavg()[0]))
    for who, seconds in times.items():
        middle = sorted(seconds)[runs // 2]
        print("%-13s %5.2f s, worst of %d %5.2f s, ratio %.1f" % (who, middle, runs, max(seconds), ours / middle))
    print("peak memory of any of them %d MB" % (resource.getrusage(resource.RUSAGE_CHILDREN).ru_maxrss // 1024))


if sys.argv[1] == "write":
    write(sys.argv[2])
elif sys.argv[1] == "read":
    read(sys.argv[2])
else:
    compare(int(sys.argv[2]), sys.argv[3], sys.argv[4], sys.argv[5], sys.argv[6:])
