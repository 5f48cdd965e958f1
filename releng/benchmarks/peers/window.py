"""How long a window takes to show a document, and the memory it then holds, on a screen of its own.

window.py RUNS TITLE COMMAND… -- TITLE COMMAND…    runs both in turn; TITLE is part of the window's title once the document is open

Needs Xvfb and xdotool. Memory is the sum of proportional set sizes of the process and its children, ten seconds after opening.
"""
import os
import shutil
import signal
import statistics
import subprocess
import sys
import time

SCREEN = "1366x768x24"
PATIENCE = 120


def family(pid):
    children = subprocess.run(["ps", "-o", "pid=", "--ppid", str(pid)], capture_output=True, text=True).stdout.split()
    return [pid] + [p for c in children for p in family(int(c))]


def megabytes(pid):
    total = 0
    for p in family(pid):
        try:
            with open(f"/proc/{p}/smaps_rollup") as lines:
                total += sum(int(line.split()[1]) for line in lines if line.startswith("Pss:"))
        except OSError:
            pass  # it has ended meanwhile
    return total / 1024


def shows(display, title):
    found = subprocess.run(["xdotool", "search", "--onlyvisible", "--name", title], env={**os.environ, "DISPLAY": display}, capture_output=True)
    return found.returncode == 0


def once(number, title, command):
    display = f":{number}"
    screen = subprocess.Popen(["Xvfb", display, "-screen", "0", SCREEN], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    time.sleep(1)
    begin = time.monotonic()
    program = subprocess.Popen(command, env={**os.environ, "DISPLAY": display}, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, start_new_session=True)
    try:
        while not shows(display, title):
            if time.monotonic() - begin > PATIENCE:
                raise SystemExit(f"no window “{title}” within {PATIENCE} s: {' '.join(command)}")
            time.sleep(0.05)
        seconds = time.monotonic() - begin
        time.sleep(10)
        return seconds, megabytes(program.pid)
    finally:
        os.killpg(program.pid, signal.SIGKILL)
        program.wait()
        screen.terminate()
        screen.wait()


def main(arguments):
    if not (shutil.which("Xvfb") and shutil.which("xdotool")):
        raise SystemExit("window.py needs Xvfb and xdotool; on Debian: apt-get install xvfb xdotool")
    runs = int(arguments[0])
    cut = arguments.index("--")
    both = [(a[0], a[1:]) for a in (arguments[1:cut], arguments[cut + 1:])]
    results = [[], []]
    for run in range(runs + 1):
        for which, (title, command) in enumerate(both):
            measured = once(300 + 2 * run + which, title, command)
            if run > 0:  # the first warms the disk for both
                results[which].append(measured)
    for which, (title, command) in enumerate(both):
        seconds, memory = zip(*results[which])
        print(f"{os.path.basename(command[0])} “{title}”: {statistics.median(seconds):.1f} s (worst {max(seconds):.1f}), {statistics.median(memory):.0f} MB")
    print(f"ratio of times {statistics.median(s for s, _ in results[0]) / statistics.median(s for s, _ in results[1]):.2f}, "
          f"of memory {statistics.median(m for _, m in results[0]) / statistics.median(m for _, m in results[1]):.2f} (median of {runs} runs, in turn)")


if __name__ == "__main__":
    main(sys.argv[1:])
