#!/usr/bin/env python3
"""The same switch operator with NumPy and SciPy (SuperLU), to time against; used by the benchmark table only.

Biquadratic elements on a graded tensor mesh, the reference switch on a half core P14 x 8 at 200 kHz (see
eddyreach.field.ReferenceSwitch), 24 wavenumbers and the coil as right-hand sides. Prints one line:
unknowns, seconds for factorisation and solves, inductance in uH, loss in ohm. Needs numpy and scipy.
"""
import time

import numpy as np
import scipy.sparse as sp
import scipy.sparse.linalg as sla
from scipy.special import jv

MM = 1e-3
MU0 = 4e-7 * np.pi
OMEGA = 2 * np.pi * 200e3
FERRITE = 1500 - 20j
# inner radius, outer radius, lower end, upper end, permeability, conductivity
PARTS = [
    (0, 7, -4.8, -3.4, FERRITE, 0),
    (0, 3, -3.4, -0.6, FERRITE, 0),
    (5.8, 7, -3.4, -0.6, FERRITE, 0),
    (8, 9, -40, 0, 1, 16e6),
]
COIL = (3.3, 5.5, -3.1, -0.8)
TURNS = 80
FAR = 60.0
FINE = 0.4


def axis(marks, low, high):
    """Vertices from low to high: small next to the marked coordinates, growing by 1.7 away from them."""
    points = sorted(set(marks) | {low, high})
    out = [points[0]]
    for a, b in zip(points[:-1], points[1:]):
        limit = 0.44 + 0.15 * max(0.0, min(abs(a), abs(b)) - 5.5)
        up, down = (min(marks.get(x, limit), limit) for x in (a, b))
        left, right = [], []
        lo, hi = a, b
        while hi - lo > 1e-9:
            if up <= down:
                lo = min(hi, lo + up)
                left.append(lo)
                up = min(1.7 * up, limit)
            else:
                hi = max(lo, hi - down)
                right.append(hi)
                down = min(1.7 * down, limit)
        out += [x for x in sorted(set(left + right + [b])) if x > out[-1] + 1e-6]
    return np.array(out) * MM


def mesh():
    r, z = {}, {0.0: FINE / 2}
    for r0, r1, z0, z1, mu, sigma in PARTS + [(*COIL, 1, 0)]:
        size = min(FINE, np.sqrt(2 / (OMEGA * MU0 * sigma)) / MM / 2) if sigma else FINE
        for x in (r0, r1):
            r[x] = min(size, r.get(x, size))
        for x in (z0, z1):
            z[x] = min(size, z.get(x, size))
    r.pop(0)
    return axis(r, 0.0, FAR), axis(z, -FAR, FAR)


def assemble(r, z, parts, coil):
    """Matrix and coil load on the tensor mesh with vertices r and z, all nodes."""
    nr, nz = len(r) - 1, len(z) - 1
    rm, zm = (r[1:] + r[:-1]) / 2, (z[1:] + z[:-1]) / 2
    nu, sigma, turns = np.full((nz, nr), 1 / MU0, complex), np.zeros((nz, nr)), np.zeros((nz, nr))

    def cells(q):
        return np.ix_((zm > q[2] * MM) & (zm < q[3] * MM), (rm > q[0] * MM) & (rm < q[1] * MM))

    for q in parts:
        nu[cells(q)], sigma[cells(q)] = 1 / (MU0 * q[4]), q[5]
    if coil:
        turns[cells(coil)] = TURNS / ((coil[1] - coil[0]) * (coil[3] - coil[2]) * MM * MM)
    g, w = np.polynomial.legendre.leggauss(4)
    n = np.array([g * (g - 1) / 2, 1 - g * g, g * (g + 1) / 2])
    d = np.array([g - 0.5, -2 * g, g + 0.5])
    hr, hz = np.diff(r), np.diff(z)
    x = rm[:, None] + g * hr[:, None] / 2
    wr = w * hr[:, None] / 2
    curl = d[None] * (2 / hr)[:, None, None] * x[:, None, :] + n[None]
    mass_r = np.einsum('iq,jq,eq->eij', n, n, wr * x)
    curl_r = np.einsum('eiq,ejq,eq->eij', curl, curl, wr / x)
    load_r = np.einsum('iq,eq->ei', n, wr * x)
    mass_z = np.einsum('iq,jq,q,e->eij', n, n, w, hz / 2)
    slope_z = np.einsum('iq,jq,q,e->eij', d, d, w, 2 / hz)
    load_z = np.einsum('iq,q,e->ei', n, w, hz / 2)
    ez, er = np.divmod(np.arange(nr * nz), nr)

    def product(factor, a, b):
        return np.einsum('e,eab,ecd->eacbd', factor.ravel(), a[ez], b[er])

    k = product(nu, slope_z, mass_r) + product(nu, mass_z, curl_r) + product(1j * OMEGA * sigma, mass_z, mass_r)
    row = 2 * nr + 1
    at = ((2 * ez[:, None] + np.arange(3))[:, :, None] * row + (2 * er[:, None] + np.arange(3))[:, None, :]).reshape(-1, 9)
    size = row * (2 * nz + 1)
    k = sp.csc_matrix((k.ravel(), (np.repeat(at, 9, axis=1).ravel(), np.tile(at, (1, 9)).ravel())), shape=(size, size))
    f = np.zeros(size)
    np.add.at(f, at.ravel(), np.einsum('e,ea,eb->eab', turns.ravel(), load_z[ez], load_r[er]).ravel())
    i = np.arange(size)
    inner = i[(i % row > 0) & (i % row < row - 1) & (i // row > 0) & (i // row < 2 * nz)]
    return k, f, inner


def nodes(x):
    out = np.empty(2 * len(x) - 1)
    out[::2], out[1::2] = x, (x[1:] + x[:-1]) / 2
    return out


def main():
    r, z = mesh()
    k, f, inner = assemble(r, z, PARTS, COIL)
    air, _, _ = assemble(r, z, [], None)
    start = time.perf_counter()
    t, _ = np.polynomial.legendre.leggauss(24)
    waves = 2500 * ((t + 1) / 2) ** 1.5
    u = np.array([np.outer(np.exp(q * np.minimum(nodes(z), 0)), jv(1, q * nodes(r))).ravel() for q in waves]).T
    dk = (k - air).tocsr()
    lu = sla.splu(k[inner][:, inner].tocsc(), permc_spec='MMD_AT_PLUS_A', options=dict(SymmetricMode=True), diag_pivot_thresh=0.001)
    total = u.astype(complex)
    total[inner] += lu.solve(np.ascontiguousarray(-(dk @ u)[inner]))
    response = -(MU0 / 2) * (u.T @ (dk @ total))
    impedance = 2j * np.pi * OMEGA * np.dot(f[inner], lu.solve(f[inner].astype(complex)))
    seconds = time.perf_counter() - start
    assert np.allclose(response, response.T, rtol=1e-6)
    print(f'{inner.size} {seconds:.4f} {impedance.imag / OMEGA * 1e6:.4f} {impedance.real:.5f}')


if __name__ == '__main__':
    main()
