#!/usr/bin/env python3
"""Writes the table of ExportTimes with a library of Python and prints the seconds that the writing took.

export.py openpyxl|xlsxwriter|csv ROWS COLUMNS FILE     one run
export.py compare RUNS ROWS COLUMNS COMMAND...          all in turn, medians and peak memory; COMMAND runs ExportTimes
"""
import csv
import os
import statistics
import subprocess
import sys
import tempfile
import time


def cell(r, c):
    return "trial %d" % ((r * 31 + c) % 997) if c % 10 == 0 else (r * 7919 + c * 104729) % 1000003 / 1000.0


def write(how, rows, columns, file):
    data = [[cell(r, c) for c in range(columns)] for r in range(rows)]
    start = time.perf_counter()
    if how == "openpyxl":
        import openpyxl
        book = openpyxl.Workbook(write_only=True)
        sheet = book.create_sheet("Trials")
        sheet.append(["Column %d" % c for c in range(columns)])
        for row in data:
            sheet.append(row)
        book.save(file)
    elif how == "xlsxwriter":
        import xlsxwriter
        book = xlsxwriter.Workbook(file, {"constant_memory": True})
        sheet = book.add_worksheet("Trials")
        number = book.add_format({"num_format": "0.000"})
        sheet.write_row(0, 0, ["Column %d" % c for c in range(columns)])
        for r, row in enumerate(data):
            for c, value in enumerate(row):
                if c % 10 == 0:
                    sheet.write_string(r + 1, c, value)
                else:
                    sheet.write_number(r + 1, c, value, number)
        book.close()
    else:
        with open(file, "w", newline="") as out:
            writer = csv.writer(out)
            writer.writerow(["c%d" % c for c in range(columns)])
            writer.writerows(data)
    print(time.perf_counter() - start)


def once(command):
    """Seconds that the command prints, and its peak memory in MB."""
    process = subprocess.Popen(command, stdout=subprocess.PIPE, text=True)
    out = process.stdout.read()
    _, status, usage = os.wait4(process.pid, 0)
    if status:
        return None
    return float(out.split()[-1]), usage.ru_maxrss / 1024


def compare(runs, rows, columns, java):
    here = os.path.dirname(os.path.abspath(__file__))
    with tempfile.TemporaryDirectory() as folder:
        shape = [str(rows), str(columns)]
        commands = {"Daubline XLSX": java + ["xlsx"] + shape + [folder + "/a.xlsx"], "Daubline CSV": java + ["csv"] + shape + [folder + "/a.csv"]}
        for how in ("xlsxwriter", "openpyxl", "csv"):
            commands["Python " + how] = [sys.executable, os.path.abspath(__file__), how] + shape + [folder + "/b." + how]
        for how in ("writexl", "csv"):
            commands["R " + how] = ["Rscript", here + "/export.R", how] + shape + [folder + "/c." + how]
        results = {name: [] for name in commands}
        for _ in range(runs):
            for name, command in commands.items():
                result = once(command)
                if result:
                    results[name].append(result)
        for name, values in results.items():
            if values:
                print("%-20s %6.2f s, peak %5.0f MB (median of %d)" % (name, statistics.median(v[0] for v in values), statistics.median(v[1] for v in values), len(values)))
            else:
                print("%-20s not installed" % name)
    print("load %s" % " ".join("%.1f" % l for l in os.getloadavg()))


if sys.argv[1] == "compare":
    compare(int(sys.argv[2]), int(sys.argv[3]), int(sys.argv[4]), sys.argv[5:])
else:
    write(sys.argv[1], int(sys.argv[2]), int(sys.argv[3]), sys.argv[4])
