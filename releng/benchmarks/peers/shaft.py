"""The shaft's equations solved by SciPy's solve_bvp: a peer of ProcessTimes, for the usual furnace or for furnaces that it wrote.

States along the height: gas carbon, two degrees of reduction, water, gas and solid temperature; three parameters, the dry
charcoal fed and both degrees of reduction at the foot. Units SI, mol, K; the constants are those of ShaftParameter's usual values. Prints seconds a solve and the
charcoal burnt, which must be that of the Java solver.

usage: python3 releng/benchmarks/peers/shaft.py TOLERANCE REPEATS [FURNACES.csv]
"""
import csv
import sys
import time

import numpy as np
from scipy.integrate import solve_bvp

R, ATM, T0, TA = 8.314462618, 101325.0, 298.15, 293.15
MC, MFE, MO, MH2O = 0.012011, 0.055845, 0.015999, 0.018015
MASS = np.array([0.028010, 0.044009, 0.028014, MH2O])  # CO, CO2, N2, H2O
D, H, V, LEAK, PHI = 0.25, 0.50, 700 / 6e4, 0.25, 0.85
RHOB, EPS, DC, PSI, CFIX, ASH = 230.0, 0.46, 0.025, 0.7, 0.80, 0.02
WC, ROC, WO, WFE, WSI, WAL, DO, RHOO = 0.06, 0.9, 0.05, 0.58, 0.09, 0.03, 0.006, 3200.0
KAPPA, KREF, EB, UW, KC, HH, FH, FOX = 1.0, 3e-4, 2e5, 6.0, 0.12, 0.18, 0.15, 0.10
LIN, LINSI, ASHSI, TM, WM, KD = 0.20 / 3600, 0.65, 0.10, 1493.0, 15.0, 0.01
GAS = np.array([[-110527.1, 27.218, 5.5931e-3, 0], [-393522.4, 43.904, 1.05835e-2, -9.9322e5],
                [0, 26.804, 5.5398e-3, 0], [-241826.4, 29.245, 1.18942e-2, 0]])
OXYGEN, CARBON = np.array([0, 28.1, 6.0e-3, 0]), np.array([0, 15.510, 6.3884e-3, -8.9487e5])


def take(**furnace):
    """Takes the numbers of a furnace, by their names in capitals, and what follows from them."""
    g = globals()
    g.update(furnace)
    g["A"] = np.pi * D * D / 4
    g["NO2"] = V * (1 - LEAK) * ATM / (R * 293.15) * 0.2095
    g["NN2"] = g["NO2"] * 0.7905 / 0.2095


take()
NAMES = {"diameter": "D", "stack": "H", "air": "V", "leak": "LEAK", "zone_co": "PHI", "charcoal_density": "RHOB", "voidage": "EPS", "charcoal_size": "DC",
         "sphericity": "PSI", "fixed_carbon": "CFIX", "ash": "ASH", "charcoal_moisture": "WC", "ore_ratio": "ROC", "ore_moisture": "WO", "ore_iron": "WFE",
         "ore_silica": "WSI", "ore_size": "DO", "ore_density": "RHOO", "reducibility": "KAPPA", "reactivity": "KREF", "activation": "EB", "wall_loss": "UW",
         "charcoal_conductivity": "KC", "hearth": "HH", "hot_zone": "FH", "reoxidised": "FOX", "lining": "LIN", "lining_silica": "LINSI",
         "ash_silica": "ASHSI", "ore_melts": "TM", "melting_width": "WM", "drying": "KD", "ambient": "TA"}


def heat(c, t):
    return c[0] + c[1] * (t - T0) + c[2] * (t * t - T0 * T0) / 2 - c[3] * (1 / t - 1 / T0)


def capacity(c, t):
    return c[1] + c[2] * t + c[3] / t ** 2


def smax(x, e):
    return (x + np.sqrt(x * x + e * e)) / 2


def rates(f):
    iron = f * ROC * WFE / MFE
    return iron, f * (ROC * (1 - 1.4297 * WFE) + ASH), f * (WC / (1 - WC) + ROC * WO / (1 - WO)) / MH2O


def foot(x1, x2, f):
    iron, _, _ = rates(f)
    silica = f * ROC * WSI + f * ASH * ASHSI + LIN * LINSI
    bound = np.clip(1 - 1.8589 * silica / (f * ROC * WFE), 0, 1)
    metal = np.minimum((x2 + FH * (1 - x2)) * (1 - FOX), bound)
    return metal, iron * (0.5 * (1 - x1) + metal - x2)


def reduction(x, k, deff, kk, c, c0, y1, y2, kg):
    u = np.maximum(1 - x, 0)
    s = np.cbrt(u + 1e-3)
    r0 = DO / 2
    resist = 1 / (s * s * k * (1 + 1 / kk)) + (1 - np.minimum(s, 1)) * r0 / (deff * s) + 1 / kg
    return 3 * KAPPA / (r0 * c) * c0 * smax(y1 - (y1 + y2) / (1 + kk), 1e-4) / resist * u / (u + 1e-3)


def slopes(z, y, p):
    f = p[0] * 1e-3
    nc, x1, x2, w, tg, ts = y[0] * 0.1, y[1], y[2], y[3] * 0.01, y[4] * 1000, y[5] * 1000
    tg, ts = np.clip(tg, 250, 3000), np.clip(ts, 250, 3000)
    iron, inert, _ = rates(f)
    _, oh = foot(p[1], p[2], f)
    no = 2 * NO2 + oh + iron * ((0.5 * p[1] + p[2]) - (0.5 * x1 + x2))
    n = np.array([2 * nc - no, no - nc, np.full_like(nc, NN2), w])
    total = n.sum(axis=0)
    y1, y2 = n[0] / total, n[1] / total
    g = (n * MASS[:, None]).sum(axis=0) / A
    mu, dg, lam = 1.8e-5 * (tg / 293.15) ** 0.7, 1.6e-5 * (tg / T0) ** 1.75, 0.026 * (tg / T0) ** 0.8
    re = np.maximum(g * DC / mu, 1e-9)
    nu, sh = 2 + 1.1 * re ** 0.6 * 0.70 ** (1 / 3), 2 + 1.1 * re ** 0.6 * 0.75 ** (1 / 3)
    ac = 6 * (1 - EPS) / (PSI * DC)
    hv = ac / (DC / (nu * lam) + DC / (10 * KC))
    c0 = ATM / (R * ts)
    k = 10 ** np.minimum(30, 9141 / ts + 2.24e-4 * ts - 9.595)
    kch = RHOB * CFIX / MC * KREF * np.exp(np.clip(-EB / R * (1 / ts - 1 / 1123.15), -60, 60)) / c0
    kmt = ac * sh * dg / DC
    rb = A * kch * kmt / (kch + kmt) * c0 * smax(y2 - y1 * y1 * k, 1e-4)
    kg = (2 + 0.6 * np.sqrt(np.maximum(g * DO / mu, 0)) * 0.75 ** (1 / 3)) * dg / DO
    rt = R * ts / 1000
    cfe = RHOO * WFE / MFE
    r1 = reduction(x1, np.exp(2.09 - 40 / rt) / 100, np.exp(2.77 - 7200 / ts) / 1e4, np.exp(-3132.5 / ts + 3.661), 0.5 * cfe, c0, y1, y2, kg)
    r2 = reduction(x2, np.exp(5.42 - 61.4 / rt) / 100, np.exp(5.09 - 8800 / ts) / 1e4, np.exp(2240.6 / ts - 2.667), cfe, c0, y1, y2, kg)
    r2 = r2 * x1 / (1 + np.exp(np.clip((ts - TM) / WM, -60, 60)))
    rd = KD / (1 + np.exp(np.clip(-(ts - 373.15) / 10, -60, 60)))
    v = nc * MC / (CFIX * RHOB * A)
    dx1, dx2, dw = -r1 / v, -r2 / v, rd * w / v
    dno = -iron * (0.5 * dx1 + dx2)
    dn = [2 * rb - dno, dno - rb, 0 * rb, dw]
    cg = sum(n[i] * capacity(GAS[i], tg) for i in range(4))
    dtg = (-hv * A * (tg - ts) - np.pi * D * UW * (tg - TA)) / cg
    hem, feo, met = -406520 + 71.3 * (ts - T0), -264390 + 56.8 * (ts - T0), 37.5 * (ts - T0)
    liquid = -285830 + 75.3 * (ts - T0)
    cs = nc * capacity(CARBON, ts) + iron * ((1 - x1) * 71.3 + (x1 - x2) * 56.8 + x2 * 37.5) + inert * 1000 + w * 75.3
    gain = sum(heat(GAS[i], tg) * dn[i] for i in range(4))
    used = heat(CARBON, ts) * rb + iron * (-dx1 * hem + (dx1 - dx2) * feo + dx2 * met) + liquid * dw
    dts = (gain - used - hv * A * (tg - ts)) / cs
    return np.array([rb / 0.1, dx1, dx2, dw / 0.01, dtg / 1000, dts / 1000])


def ends(a, b, p):
    f = p[0] * 1e-3
    iron, _, water = rates(f)
    metal, oh = foot(a[1], a[2], f)
    nc, tg, ts = a[0] * 0.1, a[4] * 1000, a[5] * 1000
    no = 2 * NO2 + oh
    n = [2 * nc - no, no - nc, NN2, a[3] * 0.01]

    def ironheat(x1, x2):
        return iron * ((1 - x1) * (-406520 + 71.3 * (ts - T0)) + (x1 - x2) * (-264390 + 56.8 * (ts - T0)) + x2 * 37.5 * (ts - T0))
    lost = UW * (np.pi * D * HH + A) * (ts - TA)
    into = NO2 * heat(OXYGEN, TA) + NN2 * heat(GAS[2], TA) + nc * heat(CARBON, ts) + ironheat(a[1], a[2]) - ironheat(1, metal) - lost
    out = sum(n[i] * heat(GAS[i], tg) for i in range(4))
    return np.array([nc / 0.1 - (2 * NO2 + oh) / (2 - PHI) / 0.1, (into - out) / 2e4, b[1], b[2], b[3] - water / 0.01,
                     b[5] - TA / 1000, b[0] * 0.1 * MC / CFIX * 1e3 - p[0], a[1] - p[1], a[2] - p[2]])


def solve(tolerance):
    z = np.linspace(0, H, 60)
    s = z / H
    y = np.array([(2.0 + 0.2 * s) * 1.0, 0.6 * (1 - s), 0.3 * (1 - s), 0.9 * np.clip((s - 0.8) / 0.2, 0, 1),
                  1.55 - 0.7 * s, np.where(s < 0.9, 1.45 - 0.7 * s, 0.82 - 5.2 * (s - 0.9))])
    start = NO2 * 2 / (2 - PHI) / 0.1
    y[0] = start * (1 + 0.25 * np.clip(s / 0.3, 0, 1))
    return solve_bvp(slopes, ends, z, y, p=[y[0, -1] * 0.1 * MC / CFIX * 1e3, 0.6, 0.3], tol=tolerance, max_nodes=20000)


def furnaces(path, count):
    """Sets one furnace after the other and gives the reference of its charcoal, kg/h."""
    with open(path, newline="", encoding="utf-8") as file:
        for row, _ in zip(csv.DictReader(file), range(count)):
            take(**{NAMES[k]: float(v) for k, v in row.items() if k in NAMES})
            yield 3600 * float(row["result_charcoal"])


def main():
    tolerance, repeats = float(sys.argv[1]), int(sys.argv[2])
    times, off, solved = [], [], 0
    for reference in furnaces(sys.argv[3], repeats) if len(sys.argv) > 3 else [np.nan] * repeats:
        begin = time.process_time()
        result = solve(tolerance)
        times.append(time.process_time() - begin)
        solved += result.status == 0
        off.append(abs(3.6 * result.p[0] / (1 - WC) / reference - 1))
    of = f"charcoal off by {100 * np.median(off):.1e} % in the middle" if len(sys.argv) > 3 else \
        f"{result.x.size} nodes, charcoal {3.6 * result.p[0] / (1 - WC):.5f} kg/h, mouth {result.y[4, -1] * 1000 - 273.15:.2f} C"
    print(f"solve_bvp tol {tolerance:g}: {sorted(times)[len(times) // 2]:.4f} s of processor a solve, {solved} of {repeats} solved, {of}")


if __name__ == "__main__":
    main()
