"""The shaft's equations with ore in size classes and a moist blast, solved by SciPy's solve_bvp: where the reference values of
OreClassesTest and MoistBlastTest come from. Equations and constants of shaft.py; hydrogen at the water-gas equilibrium of the
charge's temperature, from the Gibbs energies of the NIST Shomate functions.

usage: python3 releng/benchmarks/peers/shaft_classes.py
"""
import numpy as np
from scipy.integrate import solve_bvp

import shaft as s

H2 = np.array([0, 26.857, 4.2216e-3, 0])
FRONT, PASSES, STEAM_REACTS, STEAM_PASSES, FROZEN, WIDTH = 5, 2, 3, 1.6, 673.15, 50
SHOMATE = {  # pieces of the NIST WebBook: upper end, A to H
    "CO": [(1300, 25.56759, 6.09613, 4.054656, -2.671301, 0.131021, -118.0089, 227.3665), (6000, 35.1507, 1.300095, -0.205921, 0.01355, -3.28278, -127.8375, 231.712)],
    "CO2": [(1200, 24.99735, 55.18696, -33.69137, 7.948387, -0.136638, -403.6075, 228.2431), (6000, 58.16639, 2.720074, -0.492289, 0.038844, -6.447293, -425.9186, 263.6125)],
    "H2": [(1000, 33.066178, -11.363417, 11.432816, -2.772874, -0.158558, -9.980797, 172.707974), (2500, 18.563083, 12.257357, -2.859786, 0.268238, 1.97799, -1.147438, 156.288133)],
    "H2O": [(1700, 30.092, 6.832514, 6.793435, -2.53448, 0.082139, -250.881, 223.3967), (6000, 41.96426, 8.622053, -1.49978, 0.098119, -11.15764, -272.1797, 219.7809)]}


def gibbs(name, temperature):
    a, b, c, d, e, f, g = next(p[1:] for p in SHOMATE[name] if temperature <= p[0])
    t = temperature / 1000
    h = a * t + b * t ** 2 / 2 + c * t ** 3 / 3 + d * t ** 4 / 4 - e / t + f
    return 1000 * h - temperature * (a * np.log(t) + b * t + c * t ** 2 / 2 + d * t ** 3 / 3 - e / (2 * t * t) + g)


TABLE = np.linspace(600, 2400, 361)
LNK = np.array([-(gibbs("CO2", t) + gibbs("H2", t) - gibbs("CO", t) - gibbs("H2O", t)) / (s.R * t) for t in TABLE])
FIT = np.linalg.lstsq(np.stack([1 + 0 * TABLE, 1 / TABLE, np.log(TABLE), TABLE], axis=1), LNK, rcond=None)[0]


def shift(ts):
    """The constant at the charge's temperature, held below 400 °C, and its slope."""
    x = ts - FROZEN
    root = np.sqrt(x * x + WIDTH * WIDTH)
    at = FROZEN + (x + root) / 2
    k = np.exp(FIT[0] + FIT[1] / at + FIT[2] * np.log(at) + FIT[3] * at)
    return k, k * (-FIT[1] / at ** 2 + FIT[2] / at + FIT[3]) * (1 + x / root) / 2


def steam_of(k, carbon, excess, flow):
    b = excess + flow + k * (carbon - excess)
    return 2 * excess * flow / (b + np.sqrt(np.maximum(0, b * b - 4 * (1 - k) * excess * flow)))


class Furnace:
    def __init__(self, shares, sizes, vapour):
        self.shares, self.sizes, self.n = np.array(shares), np.array(sizes), len(shares)
        self.o2, self.n2 = s.NO2 / (1 + vapour), s.NN2 / (1 + vapour)
        self.h = (self.o2 + self.n2) * vapour

    def reduction(self, x, k, deff, kk, c, c0, y, kg, size, shifted):
        u = np.maximum(1 - x, 0)
        core = np.cbrt(u + 1e-3)
        r0 = size / 2
        inside = (1 - np.minimum(core, 1)) * r0 / (deff * core) + 1 / kg
        by_co = s.smax(y[0] - (y[0] + y[1]) / (1 + kk), 1e-4) / (1 / (core * core * k * (1 + 1 / kk)) + inside)
        kh = kk / shifted
        both = y[2] + y[3]
        by_h2 = s.smax(y[2] - both / (1 + kh), 1e-4 * both) / (1 / (core * core * FRONT * k * (1 + 1 / kh)) + inside / PASSES) if self.h > 0 else 0
        return 3 * s.KAPPA / (r0 * c) * c0 * (by_co + by_h2) * u / (u + 1e-3)

    def slopes(self, z, y, p):
        n, w8 = self.n, self.shares[:, None]
        f = p[0] * 1e-3
        nc, x1, x2, w, tg, ts = y[0] * 0.1, y[1:1 + n], y[1 + n:1 + 2 * n], y[-3] * 0.01, np.clip(y[-2] * 1000, 250, 3000), np.clip(y[-1] * 1000, 250, 3000)
        m1, m2 = (w8 * x1).sum(axis=0), (w8 * x2).sum(axis=0)
        iron, inert, _ = s.rates(f)
        _, oh = s.foot(p[1], p[2], f)
        no = 2 * self.o2 + self.h + oh + iron * ((0.5 * p[1] + p[2]) - (0.5 * m1 + m2))
        k, dk = shift(ts)
        st = steam_of(k, nc, no - nc, self.h)
        co2 = no - nc - st
        gases = np.array([nc - co2, co2, np.full_like(nc, self.n2), w + st, self.h - st])
        total = gases.sum(axis=0)
        yy = [gases[0] / total, gases[1] / total, gases[4] / total, st / total]
        g = (gases * np.append(s.MASS, 2.016e-3)[:, None]).sum(axis=0) / s.A
        mu, dg, lam = 1.8e-5 * (tg / 293.15) ** 0.7, 1.6e-5 * (tg / s.T0) ** 1.75, 0.026 * (tg / s.T0) ** 0.8
        re = np.maximum(g * s.DC / mu, 1e-9)
        nu, sh = 2 + 1.1 * re ** 0.6 * 0.70 ** (1 / 3), 2 + 1.1 * re ** 0.6 * 0.75 ** (1 / 3)
        ac = 6 * (1 - s.EPS) / (s.PSI * s.DC)
        hv = ac / (s.DC / (nu * lam) + s.DC / (10 * s.KC))
        c0 = s.ATM / (s.R * ts)
        bou = 10 ** np.minimum(30, 9141 / ts + 2.24e-4 * ts - 9.595)
        kch = s.RHOB * s.CFIX / s.MC * s.KREF * np.exp(np.clip(-s.EB / s.R * (1 / ts - 1 / 1123.15), -60, 60)) / c0
        kmt = ac * sh * dg / s.DC
        rb = s.A * kch * kmt / (kch + kmt) * c0 * s.smax(yy[1] - yy[0] ** 2 * bou, 1e-4)
        if self.h > 0:
            ks, km = STEAM_REACTS * kch, STEAM_PASSES * kmt
            rb = rb + s.A * ks * km / (ks + km) * c0 * s.smax(yy[3] - yy[0] * yy[2] * bou / k, 1e-4 * (yy[2] + yy[3]))
        v = nc * s.MC / (s.CFIX * s.RHOB * s.A)
        rt, cfe = s.R * ts / 1000, s.RHOO * s.WFE / s.MFE
        d1, d2 = np.empty_like(x1), np.empty_like(x2)
        for i in range(n):
            size = self.sizes[i]
            kg = (2 + 0.6 * np.sqrt(np.maximum(g * size / mu, 0)) * 0.75 ** (1 / 3)) * dg / size
            r1 = self.reduction(x1[i], np.exp(2.09 - 40 / rt) / 100, np.exp(2.77 - 7200 / ts) / 1e4, np.exp(-3132.5 / ts + 3.661), 0.5 * cfe, c0, yy, kg, size, k)
            r2 = self.reduction(x2[i], np.exp(5.42 - 61.4 / rt) / 100, np.exp(5.09 - 8800 / ts) / 1e4, np.exp(2240.6 / ts - 2.667), cfe, c0, yy, kg, size, k)
            d1[i], d2[i] = -r1 / v, -r2 * x1[i] / (1 + np.exp(np.clip((ts - s.TM) / s.WM, -60, 60))) / v
        e1, e2 = (w8 * d1).sum(axis=0), (w8 * d2).sum(axis=0)
        dw = s.KD / (1 + np.exp(np.clip(-(ts - 373.15) / 10, -60, 60))) * w / v
        dno = -iron * (0.5 * e1 + e2)
        caps = [s.capacity(s.GAS[i], tg) for i in range(4)] + [s.capacity(H2, tg)]
        dtg = (-hv * s.A * (tg - ts) - np.pi * s.D * s.UW * (tg - s.TA)) / sum(gases[i] * caps[i] for i in range(5))
        # how the steam of the blast changes: implicit slope of its equation, by carbon, by excess oxygen and by temperature
        over = no - nc
        steep = self.h - st + over - st + k * (nc - over + 2 * st)
        dst0 = ((self.h - st + k * st) * (dno - rb) - k * st * rb) / steep
        dst1 = -(nc - over + st) * st * dk / steep
        hk = [s.heat(s.GAS[i], tg) for i in range(4)] + [s.heat(H2, tg)]
        swap = hk[0] - hk[1] - hk[4] + hk[3]
        hem, feo, met = -406520 + 71.3 * (ts - s.T0), -264390 + 56.8 * (ts - s.T0), 37.5 * (ts - s.T0)
        cs = nc * s.capacity(s.CARBON, ts) + iron * ((1 - m1) * 71.3 + (m1 - m2) * 56.8 + m2 * 37.5) + inert * 1000 + w * 75.3
        gain = (2 * rb - dno) * hk[0] + (dno - rb) * hk[1] + dw * hk[3] + swap * dst0
        used = s.heat(s.CARBON, ts) * rb + iron * (-e1 * hem + (e1 - e2) * feo + e2 * met) + (-285830 + 75.3 * (ts - s.T0)) * dw
        dts = (gain - used - hv * s.A * (tg - ts)) / (cs - swap * dst1)
        return np.vstack([rb / 0.1, d1, d2, dw / 0.01, dtg / 1000, dts / 1000])

    def ends(self, a, b, p):
        n = self.n
        f = p[0] * 1e-3
        iron, _, water = s.rates(f)
        m1, m2 = self.shares @ a[1:1 + n], self.shares @ a[1 + n:1 + 2 * n]
        metal, oh = s.foot(m1, m2, f)
        nc, tg, ts = a[0] * 0.1, a[-2] * 1000, a[-1] * 1000
        k, _ = shift(ts)
        start = self.h * (1 - s.PHI) / (1 - s.PHI + s.PHI * k)
        no = 2 * self.o2 + self.h + oh
        st = steam_of(k, nc, no - nc, self.h)

        def ore(x1, x2):
            return iron * ((1 - x1) * (-406520 + 71.3 * (ts - s.T0)) + (x1 - x2) * (-264390 + 56.8 * (ts - s.T0)) + x2 * 37.5 * (ts - s.T0))
        lost = s.UW * (np.pi * s.D * s.HH + s.A) * (ts - s.TA)
        into = self.o2 * s.heat(s.OXYGEN, s.TA) + self.n2 * s.heat(s.GAS[2], s.TA) + self.h * s.heat(s.GAS[3], s.TA) + nc * s.heat(s.CARBON, ts) + ore(m1, m2) - ore(1, metal) - lost
        co2 = no - nc - st
        gases = [nc - co2, co2, self.n2, st + a[-3] * 0.01]
        out = sum(gases[i] * s.heat(s.GAS[i], tg) for i in range(4)) + (self.h - st) * s.heat(H2, tg)
        return np.concatenate([[nc / 0.1 - (2 * self.o2 + oh + self.h - start) / (2 - s.PHI) / 0.1, (into - out) / 2e4], b[1:1 + 2 * n],
                               [b[-3] - water / 0.01, b[-1] - s.TA / 1000, b[0] * 0.1 * s.MC / s.CFIX * 1e3 - p[0], m1 - p[1], m2 - p[2]]])

    def solve(self, tolerance):
        first = s.solve(1e-4)
        y = np.vstack([first.y[0]] + [first.y[1]] * self.n + [first.y[2]] * self.n + [first.y[3:]])
        return solve_bvp(self.slopes, self.ends, first.x, y, p=first.p, tol=tolerance, max_nodes=40000)


def show(name, furnace):
    r = furnace.solve(1e-8)
    n = furnace.n
    f = r.p[0] * 1e-3
    iron, _, _ = s.rates(f)
    _, oh = s.foot(r.p[1], r.p[2], f)
    nc, ts = r.y[0] * 0.1, r.y[-1] * 1000
    no = 2 * furnace.o2 + furnace.h + oh + iron * ((0.5 * r.p[1] + r.p[2]) - (0.5 * furnace.shares @ r.y[1:1 + n] + furnace.shares @ r.y[1 + n:1 + 2 * n]))
    st = steam_of(shift(ts)[0], nc, no - nc, furnace.h)
    total = nc + furnace.n2 + furnace.h + r.y[-3] * 0.01
    print(name, r.status, "charcoal kg/h", f"{f / (1 - s.WC) * 3600:.5f}", "X1", np.round(r.y[1:1 + n, 0], 6), "X2", np.round(r.y[1 + n:1 + 2 * n, 0], 6),
          "Tg0 Ts0 mouth", [round(t - 273.15, 2) for t in (r.y[-2, 0] * 1000, r.y[-1, 0] * 1000, r.y[-2, -1] * 1000)],
          "top CO share", round(2 - (no[-1] - st[-1]) / nc[-1], 6), "H2 foot top", round((furnace.h - st[0]) / total[0], 6), round((furnace.h - st[-1]) / total[-1], 6))


if __name__ == "__main__":
    show("one", Furnace([1], [0.006], 0))
    show("three classes", Furnace([0.3, 0.5, 0.2], [0.002, 0.006, 0.012], 0))
    show("moist 0.02", Furnace([1], [0.006], 0.02))
    show("three, moist 0.02", Furnace([0.3, 0.5, 0.2], [0.002, 0.006, 0.012], 0.02))
