"""The shaft's equations for many furnaces at once in NumPy, by finite volumes: a peer of ProcessTimes.

All furnaces stand in one array, a row each; one sweep marches the solids down, the gas up, and takes one Newton step for
both temperatures together (two unknowns a cell, eliminated upward). Fully upwind, rates at the states that leave a cell,
bounded so that no degree of reduction passes one and no carbon burns without oxygen. Furnaces at rest leave the array.
Reads the furnaces that ProcessTimes wrote, with its own results on a mesh of 400 as the reference; SI, mol, K.

usage: python3 releng/benchmarks/peers/shaft_batch.py FURNACES.csv CELLS [RICHARDSON]
With RICHARDSON, CELLS and twice as many are solved and extrapolated, which a scheme of first order needs for half a per cent.
"""
import csv
import sys
import time

import numpy as np

R, ATM, T0 = 8.314462618, 101325.0, 298.15
MC, MFE, MO, MH2O, MCO, MCO2, MN2 = 0.012011, 0.055845, 0.015999, 0.018015, 0.028010, 0.044009, 0.028014
CO = (-110527.1, 27.218, 5.5931e-3, 0.0)
CO2 = (-393522.4, 43.904, 1.05835e-2, -9.9322e5)
N2 = (0.0, 26.804, 5.5398e-3, 0.0)
STEAM = (-241826.4, 29.245, 1.18942e-2, 0.0)
OXYGEN = (0.0, 28.1, 6.0e-3, 0.0)
CARBON = (0.0, 15.510, 6.3884e-3, -8.9487e5)
MOST_SWEEPS, STILL, ACCEPTED, RELAX, LONGEST = 400, 1e-6, 1e-4, 0.8, 120.0
RESULTS = ("charcoal", "metal", "inlet_solid", "mouth_gas")


def heat(c, t):
    return c[0] + c[1] * (t - T0) + c[2] * (t * t - T0 * T0) / 2 - c[3] * (1 / t - 1 / T0)


def capacity(c, t):
    return c[1] + c[2] * t + c[3] / (t * t)


def smax(x, e):
    return (x + np.sqrt(x * x + e * e)) / 2


def logistic(x):
    return 1 / (1 + np.exp(-np.clip(x, -60, 60)))


class Batch:
    """Furnaces and their states; faces 0 (air inlet) to n (mouth) along the second axis."""

    def __init__(self, furnaces, cells):
        self.f = {k: v.copy() for k, v in furnaces.items()}
        self.n = cells
        self.derive()
        count = len(self.f["diameter"])
        s = np.linspace(0, 1, cells + 1)[None, :] + np.zeros((count, 1))
        z = s * self.c("stack")
        start = 2 * self.no2 / (2 - self.f["zone_co"])
        self.nc = start[:, None] + (.95 * (2 * self.no2 - start))[:, None] * (1 - np.exp(-z / .04))
        core = 1450 - 650 * s
        self.tg = core + 300 * np.exp(-z / .03)
        self.ts = self.c("ambient") + (core - 30 - self.c("ambient")) * (1 - np.exp((s - 1) / .12))
        self.x1, self.x2 = .6 * (1 - s), .3 * (1 - s)
        self.fuel = self.nc[:, -1] * MC / self.f["fixed_carbon"]
        self.w = (self.fuel * self.water)[:, None] * logistic((s - .9) / .02)

    def c(self, name):
        return self.f[name][:, None]

    def derive(self):
        f = self.f
        self.area = np.pi * f["diameter"] ** 2 / 4
        self.no2 = f["air"] * (1 - f["leak"]) * ATM / (R * 293.15) * 0.2095
        self.nn2 = self.no2 * 0.7905 / 0.2095
        self.dz = f["stack"] / self.n
        self.iron = f["ore_ratio"] * f["ore_iron"] / MFE
        self.inert = f["ore_ratio"] * (1 - 1.4297 * f["ore_iron"]) + f["ash"]
        self.water = (f["charcoal_moisture"] / (1 - f["charcoal_moisture"])
                      + f["ore_ratio"] * f["ore_moisture"] / (1 - f["ore_moisture"])) / MH2O
        self.wall = np.pi * f["diameter"] * f["wall_loss"]
        self.surface = 6 * (1 - f["voidage"]) / (f["sphericity"] * f["charcoal_size"])
        self.descend = MC / (f["fixed_carbon"] * f["charcoal_density"] * self.area)

    def keep(self, rows):
        self.f = {k: v[rows] for k, v in self.f.items()}
        for name in ("nc", "tg", "ts", "x1", "x2", "w", "fuel"):
            setattr(self, name, getattr(self, name)[rows])
        self.derive()

    def foot(self):
        """Share of iron to metal, and oxygen that the oxides give off in the hearth, mol/s."""
        f = self.f
        silica = self.fuel * (f["ore_ratio"] * f["ore_silica"] + f["ash"] * f["ash_silica"]) + f["lining"] * f["lining_silica"]
        bound = np.clip(1 - 1.8589 * silica / (self.fuel * f["ore_ratio"] * f["ore_iron"]), 0, 1)
        x1, x2 = self.x1[:, 0], self.x2[:, 0]
        metal = np.minimum((x2 + f["hot_zone"] * (1 - x2)) * (1 - f["reoxidised"]), bound)
        return metal, self.fuel * self.iron * (0.5 * (1 - x1) + metal - x2)

    def gas_oxygen(self, released):
        iron = (self.fuel * self.iron)[:, None]
        reduced = 0.5 * self.x1 + self.x2
        return (2 * self.no2 + released)[:, None] + iron * (reduced[:, :1] - reduced)

    def piece(self, x, rate, pore, balance, c0, y1, y2, film, c):
        """Rate over what is left, 1/s, of a shrinking core."""
        left = np.maximum(1 - x, 0)
        s = np.cbrt(left + 1e-3)
        r0 = self.c("ore_size") / 2
        resistance = 1 / (s * s * rate * (1 + 1 / balance)) + (1 - np.minimum(s, 1)) * r0 / (pore * s) + 1 / film
        drive = smax(y1 - (y1 + y2) / (1 + balance), 1e-4)
        return 3 * self.c("reducibility") / (r0 * c) * c0 * drive / resistance / (left + 1e-3)

    def sweep(self):
        """One round; returns the largest scaled change of each furnace before relaxing."""
        f, dz = self.f, self.dz[:, None]
        metal, released = self.foot()
        oxygen = self.gas_oxygen(released)
        nc, no = self.nc[:, 1:], oxygen[:, 1:]
        x1, x2, ts, tg = self.x1[:, :-1], self.x2[:, :-1], self.ts[:, :-1], self.tg[:, 1:]
        w = self.w[:, 1:]
        co2 = np.maximum(no - nc, 1e-9 * self.no2[:, None])
        co = np.maximum(nc - co2, 0)
        moles = nc + self.nn2[:, None] + w
        y1, y2 = co / moles, co2 / moles
        flux = (co * MCO + co2 * MCO2 + self.nn2[:, None] * MN2 + w * MH2O) / self.area[:, None]
        log = np.log(tg / T0)
        viscosity = 1.8e-5 * np.exp(.7 * (log + np.log(T0 / 293.15)))
        diffusion, lam = 1.6e-5 * np.exp(1.75 * log), 0.026 * np.exp(.8 * log)
        size = self.c("charcoal_size")
        transfer = 1.1 * np.maximum(flux * size / viscosity, 1e-9) ** 0.6
        surface = self.surface[:, None]
        hv = surface / (size / ((2 + transfer * 0.70 ** (1 / 3)) * lam) + size / (10 * self.c("charcoal_conductivity")))
        exchange = hv * self.area[:, None] * dz
        inverse = 1 / ts
        c0 = ATM * inverse / R
        boudouard = np.exp(np.log(10) * np.minimum(30, 9141 * inverse + 2.24e-4 * ts - 9.595))
        chemical = (f["charcoal_density"] * f["fixed_carbon"] / MC * f["reactivity"])[:, None] \
            * np.exp(np.clip(-self.c("activation") / R * (inverse - 1 / 1123.15), -60, 60)) / c0
        film = surface * (2 + transfer * 0.75 ** (1 / 3)) * diffusion / size
        gasified = self.area[:, None] * chemical * film / (chemical + film) * c0 * smax(y2 - y1 * y1 * boudouard, 1e-4)
        ore = self.c("ore_size")
        ore_film = (2 + 0.6 * np.sqrt(flux * ore / viscosity) * 0.75 ** (1 / 3)) * diffusion / ore
        concentration = (f["ore_density"] * f["ore_iron"] / MFE)[:, None]
        k1 = self.piece(x1, np.exp(2.09 - 40e3 / R * inverse) / 100, np.exp(2.77 - 7200 * inverse) / 1e4, np.exp(-3132.5 * inverse + 3.661), c0, y1, y2,
                        ore_film, 0.5 * concentration)
        k2 = self.piece(x2, np.exp(5.42 - 61.4e3 / R * inverse) / 100, np.exp(5.09 - 8800 * inverse) / 1e4, np.exp(2240.6 * inverse - 2.667), c0, y1, y2,
                        ore_film, concentration)
        stay = dz / (self.nc[:, :-1] * self.descend[:, None])
        k1, k2 = k1 * stay, k2 * stay * x1 * logistic((self.c("ore_melts") - ts) / self.c("melting_width"))
        dry = self.c("drying") * logistic((ts - 373.15) / 10) * stay
        self.march(k1, k2, dry, gasified * dz / co2)
        metal, released = self.foot()
        change = np.maximum(self.temperatures(exchange, metal, released), np.abs(self.nc[:, -1] * MC / f["fixed_carbon"] / self.fuel - 1))
        self.fuel = self.fuel + RELAX * (self.nc[:, -1] * MC / f["fixed_carbon"] - self.fuel)
        return change

    def march(self, k1, k2, dry, kb):
        """Solids from the mouth down, then gas carbon from the foot up."""
        x1, x2, w = self.x1, self.x2, self.w
        x1[:, -1], x2[:, -1], w[:, -1] = 0, 0, self.fuel * self.water
        for i in range(self.n - 1, -1, -1):
            x1[:, i] = (x1[:, i + 1] + k1[:, i]) / (1 + k1[:, i])
            x2[:, i] = (x2[:, i + 1] + k2[:, i]) / (1 + k2[:, i])
            w[:, i] = w[:, i + 1] / (1 + dry[:, i])
        _, released = self.foot()
        oxygen = self.gas_oxygen(released)
        self.nc[:, 0] = oxygen[:, 0] / (2 - self.f["zone_co"])
        for i in range(self.n):
            self.nc[:, i + 1] = (self.nc[:, i] + kb[:, i] * oxygen[:, i + 1]) / (1 + kb[:, i])

    def temperatures(self, exchange, metal, released):
        """A Newton step for gas and solids together; returns the largest change in units of 1000 K."""
        f = self.f
        oxygen = self.gas_oxygen(released)
        co2 = oxygen - self.nc
        n = (self.nc - co2, co2, self.nn2[:, None] + 0 * co2, self.w)
        species = (CO, CO2, N2, STEAM)
        iron = (self.fuel * self.iron)[:, None]
        inert = (self.fuel * self.inert)[:, None] * 1000
        tg, ts, ambient = self.tg, self.ts, self.c("ambient")
        h_gas = [heat(c, tg) for c in species]
        wall = (self.wall * self.dz)[:, None]
        into = sum(n[k][:, :-1] * (h_gas[k][:, 1:] - h_gas[k][:, :-1]) for k in range(4))
        gas = into + exchange * (tg[:, 1:] - ts[:, :-1]) + wall * (tg[:, 1:] - ambient)
        cp = [capacity(c, tg) for c in species]
        gas_up = sum(n[k][:, :-1] * cp[k][:, 1:] for k in range(4)) + exchange + wall
        gas_low = -sum(n[k][:, :-1] * cp[k][:, :-1] for k in range(4))
        ore = iron * ((1 - self.x1) * (-406520 + 71.3 * (ts - T0)) + (self.x1 - self.x2) * (-264390 + 56.8 * (ts - T0)) + self.x2 * 37.5 * (ts - T0))
        ore_cp = iron * ((1 - self.x1) * 71.3 + (self.x1 - self.x2) * 56.8 + self.x2 * 37.5)
        solid_h = self.nc * heat(CARBON, ts) + ore + inert * (ts - T0) + self.w * (-285830 + 75.3 * (ts - T0))
        solid_cp = self.nc * capacity(CARBON, ts) + ore_cp + inert + self.w * 75.3
        crossing = sum(h_gas[k][:, 1:] * (n[k][:, 1:] - n[k][:, :-1]) for k in range(4))
        crossing_cp = sum(cp[k][:, 1:] * (n[k][:, 1:] - n[k][:, :-1]) for k in range(4))
        solid = solid_h[:, 1:] - solid_h[:, :-1] - crossing + exchange * (tg[:, 1:] - ts[:, :-1])
        solid_low, solid_up, solid_gas = -solid_cp[:, :-1] - exchange, solid_cp[:, 1:], exchange - crossing_cp
        # the hearth ties the first gas to the first solid
        t = ts[:, 0]
        end = self.fuel * self.iron * ((1 - metal) * (-264390 + 56.8 * (t - T0)) + metal * 37.5 * (t - T0))
        loss = f["wall_loss"] * (np.pi * f["diameter"] * f["hearth"] + self.area)
        out = sum(n[k][:, 0] * h_gas[k][:, 0] for k in range(3)) + self.w[:, 0] * 0
        foot = self.no2 * heat(OXYGEN, f["ambient"]) + self.nn2 * heat(N2, f["ambient"]) + self.nc[:, 0] * heat(CARBON, t) + ore[:, 0] - end \
            - loss * (t - f["ambient"]) - out
        foot_gas = -sum(n[k][:, 0] * cp[k][:, 0] for k in range(3))
        foot_solid = self.nc[:, 0] * capacity(CARBON, t) + ore_cp[:, 0] - self.fuel * self.iron * ((1 - metal) * 56.8 + metal * 37.5) - loss
        return self.eliminate((foot, foot_gas, foot_solid), (gas, gas_low, gas_up, exchange), (solid, solid_low, solid_up, solid_gas))

    def eliminate(self, foot, gas, solid):
        n = self.n
        a, b = np.empty_like(self.tg), np.empty_like(self.tg)
        p, q = np.empty_like(gas[0]), np.empty_like(gas[0])
        a[:, 0], b[:, 0] = -foot[0] / foot[1], -foot[2] / foot[1]
        r_gas, low, up, ex = gas
        r_solid, s_low, s_up, s_gas = solid
        for i in range(n):
            # gas above = g + h * solid below
            g = (-r_gas[:, i] - low[:, i] * a[:, i]) / up[:, i]
            h = (ex[:, i] - low[:, i] * b[:, i]) / up[:, i]
            pivot = s_low[:, i] + s_gas[:, i] * h
            p[:, i] = (-r_solid[:, i] - s_gas[:, i] * g) / pivot
            q[:, i] = -s_up[:, i] / pivot
            a[:, i + 1], b[:, i + 1] = g + h * p[:, i], h * q[:, i]
        ds = np.zeros_like(self.ts)
        for i in range(n - 1, -1, -1):
            ds[:, i] = p[:, i] + q[:, i] * ds[:, i + 1]
        dg = a + b * ds
        most = np.maximum(np.abs(ds).max(axis=1), np.abs(dg).max(axis=1))
        share = (RELAX * np.minimum(1, LONGEST / np.maximum(most, 1e-12)))[:, None]
        self.ts = np.clip(self.ts + share * ds, 250, 3000)
        self.tg = np.clip(self.tg + share * dg, 250, 3000)
        self.ts[:, -1] = self.f["ambient"]
        return most / 1000

    def results(self):
        metal, _ = self.foot()
        return np.column_stack([self.fuel / (1 - self.f["charcoal_moisture"]), metal, self.ts[:, 0], self.tg[:, -1]])


def solve(furnaces, cells):
    """Results by furnace, NaN where it did not come to rest, and the rounds of the slowest."""
    count = len(furnaces["diameter"])
    found = np.full((count, len(RESULTS)), np.nan)
    batch, rows = Batch(furnaces, cells), np.arange(count)
    sweeps = 0
    while len(rows) and sweeps < MOST_SWEEPS:
        change = batch.sweep()
        sweeps += 1
        rest = (change < (STILL if sweeps < MOST_SWEEPS else ACCEPTED)) & np.isfinite(change)
        lost = ~np.isfinite(change)
        if rest.any():
            found[rows[rest]] = batch.results()[rest]
        if rest.any() or lost.any():
            going = ~(rest | lost)
            batch.keep(going)
            rows = rows[going]
    return found, sweeps


def read(path):
    with open(path, newline="", encoding="utf-8") as file:
        rows = list(csv.DictReader(file))
    names = [n for n in rows[0] if not n.startswith("result_")]
    furnaces = {n: np.array([float(r[n]) for r in rows]) for n in names}
    return furnaces, np.array([[float(r["result_" + n]) for n in RESULTS] for r in rows])


def main():
    furnaces, reference = read(sys.argv[1])
    cells, extrapolate = int(sys.argv[2]), len(sys.argv) > 3
    np.seterr(all="ignore")
    solve({k: v[:20] for k, v in furnaces.items()}, cells)
    begin = time.process_time()
    found, sweeps = solve(furnaces, cells)
    if extrapolate:
        finer, more = solve(furnaces, 2 * cells)
        found, sweeps = 2 * finer - found, sweeps + more
    spent = time.process_time() - begin
    count = len(found)
    rest = np.isfinite(found).all(axis=1)
    both = rest & np.isfinite(reference).all(axis=1)
    off = np.abs(found[both] - reference[both])
    off[:, 0] /= reference[both, 0]
    worst = np.column_stack([off[:, 0] * 100, off[:, 1] * 100, off[:, 2], off[:, 3]])
    print(f"batched NumPy, {count} furnaces of {cells}{'+' + str(2 * cells) if extrapolate else ''} cells: {1000 * spent / count:.3f} ms of processor each, "
          f"{sweeps} rounds, {100 * rest.mean():.2f} % at rest; off by, middle and nineteen in twenty: "
          + ", ".join(f"{n} {np.median(worst[:, i]):.2g} and {np.quantile(worst[:, i], .95):.2g} {u}"
                      for i, (n, u) in enumerate(zip(RESULTS, ("%", "points", "K", "K")))))


if __name__ == "__main__":
    main()
