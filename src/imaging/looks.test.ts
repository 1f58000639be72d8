import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { FilmPixels } from "./film-pixels.ts";
import { localContrast } from "./local-contrast.ts";
import { type FilmLook, lookedAt } from "./looked-at.ts";
import { smoothedFilm } from "./smoothed-film.ts";
import { windowToGrey } from "./window-to-grey.ts";

const bits = 12;
const full = 2 ** bits - 1;
function film(columns: number, rows: number, sample: (column: number, row: number) => number): FilmPixels {
  const samples = Uint16Array.from({ length: columns * rows }, (_, index) =>
    sample(index % columns, Math.floor(index / columns)),
  );
  const technical = { sourceFormat: "png", wasColour: false, lossy: false } as const;
  return { columns, rows, bitsStored: bits, samples, photometric: "MONOCHROME2", technical };
}
const look = (more: Partial<FilmLook> = {}): FilmLook => ({
  gamma: 1,
  localContrast: 0,
  sharpening: { amount: 0, radiusPx: 1 },
  ...more,
});
const sharpened = (of: FilmPixels, amount: number, radiusPx: number) =>
  lookedAt(of, look({ sharpening: { amount, radiusPx } }), { smooth: smoothedFilm(of, radiusPx) });
const ramp = film(60, 40, (column, row) => 500 + 20 * column + 30 * row);
const grain = film(90, 70, (column, row) => 900 + ((column * 7919 + row * 104_729 + column * row * 31) % 2000));
const refusal = expect.objectContaining({ code: "input.impossible" });

const known: {
  columns: number;
  rows: number;
  regions: number;
  clip: number;
  radiusPx: number;
  amount: number;
  samples: number[];
  even: number[];
  clipped: number[];
  sharpened: number[];
} = JSON.parse(readFileSync(new URL("../../test/reference/looks/answers.json", import.meta.url), "utf8"));
const knownFilm = film(known.columns, known.rows, (column, row) => known.samples[row * known.columns + column] ?? 0);

describe("lookedAt", () => {
  it("is the film itself where nothing is asked for", () => {
    expect(lookedAt(grain, look(), {})).toBe(grain.samples);
  });

  it("changes no sample of the film", () => {
    const before = grain.samples.slice();
    sharpened(grain, 2, 1.5);
    lookedAt(grain, look({ localContrast: 1 }), { even: localContrast(grain) });
    expect(grain.samples).toEqual(before);
  });

  it.each([0.5, 1, 3])("leaves an evenly sloping film as it is when it sharpens at radius %d", (radiusPx) => {
    expect(sharpened(ramp, 4, radiusPx)).toEqual(ramp.samples);
  });

  // A pixel of height h on level ground, less its Gaussian: h (1 - g0 g0) added on it, -h g(x) g(y) around it.
  it("sharpens one pixel by its height less its smoothed height", () => {
    const [height, amount] = [800, 2];
    const spot = film(41, 41, (column, row) => 1000 + (column === 20 && row === 20 ? height : 0));
    const weights = Array.from({ length: 9 }, (_, step) => Math.exp(-0.5 * (step / 2) ** 2));
    const sum = weights.reduce((total, weight, step) => total + (step === 0 ? 1 : 2) * weight, 0);
    const at = (column: number, row: number) => sharpened(spot, amount, 2)[row * 41 + column] ?? 0;
    const part = (x: number, y: number) => ((weights[x] ?? 0) * (weights[y] ?? 0)) / sum ** 2;
    expect(at(20, 20)).toBe(Math.round(1000 + height + amount * height * (1 - part(0, 0))));
    expect(at(22, 21)).toBe(Math.round(1000 - amount * height * part(2, 1)));
    expect(at(35, 20)).toBe(1000);
  });

  it("adds in proportion to its amount", () => {
    const [once, thrice] = [1, 3].map((amount) => sharpened(grain, amount, 2));
    grain.samples.forEach((own, at) => {
      const [one, three] = [(once?.[at] ?? 0) - own, (thrice?.[at] ?? 0) - own];
      const isCut = [0, full].includes(thrice?.[at] ?? 0);
      if (!isCut) expect(Math.abs(three - 3 * one)).toBeLessThanOrEqual(2);
    });
  });

  it("goes no further than black and white beside a hard edge", () => {
    const edge = film(40, 20, (column) => (column < 20 ? 100 : full - 50));
    const seen = sharpened(edge, 4, 2);
    expect([Math.min(...seen), Math.max(...seen)]).toEqual([0, full]);
    // Away from the edge, beyond what the Gaussian reaches, nothing rings.
    for (const column of [0, 5, 11, 28, 39]) expect(seen[column]).toBe(edge.samples[column]);
  });

  // scikit-image mirrors at the borders and the film goes on here as it sloped: borders are left out.
  it("agrees with scikit-image's unsharp mask", () => {
    const seen = sharpened(knownFilm, known.amount, known.radiusPx);
    const beside = 4 * known.radiusPx;
    for (let row = beside; row < known.rows - beside; row++)
      for (let column = beside; column < known.columns - beside; column++) {
        const at = row * known.columns + column;
        const wanted = Math.min(1, Math.max(0, known.sharpened[at] ?? 0)) * full;
        // Half a sample of rounding here, and four digits of a share there.
        expect(Math.abs((seen[at] ?? 0) - wanted)).toBeLessThan(0.5 + 0.00005 * full + 1e-9);
      }
  });

  it("goes the asked share of the way to the evened film", () => {
    const even = localContrast(grain);
    const half = lookedAt(grain, look({ localContrast: 0.5 }), { even });
    grain.samples.forEach((own, at) => {
      expect(Math.abs((half[at] ?? 0) - (own + (even[at] ?? 0)) / 2)).toBeLessThanOrEqual(0.51);
    });
  });

  it.each([
    ["a share above 1", look({ localContrast: 1.1 }), {}],
    ["a share below 0", look({ localContrast: -0.1 }), {}],
    ["too much sharpening", look({ sharpening: { amount: 4.1, radiusPx: 1 } }), {}],
    ["local contrast without its plane", look({ localContrast: 0.5 }), {}],
    ["sharpening without its plane", look({ sharpening: { amount: 1, radiusPx: 1 } }), {}],
  ])("refuses %s", (_, wanted, planes) => {
    expect(() => lookedAt(grain, wanted, planes)).toThrow(refusal);
  });
});

describe("smoothedFilm", () => {
  it.each([0.4, 16.1, Number.NaN])("refuses a radius of %d", (radius) => {
    expect(() => smoothedFilm(grain, radius)).toThrow(refusal);
  });
});

describe("localContrast", () => {
  // scikit-image tells 252 steps of grey apart and none within one; a step is up to 4 % high on the film's dark line. With a
  // clip it also deals out up to twice what it cut off.
  it.each([
    ["even", 1, { most: 0.03, mean: 0.006 }],
    ["clipped", known.clip, { most: 0.06, mean: 0.01 }],
  ] as const)("agrees with scikit-image's adaptive equalisation, %s at %d", (which, clip, within) => {
    const even = localContrast(knownFilm, { regions: known.regions, clip });
    const [low, high] = [Math.min(...known.samples), Math.max(...known.samples)];
    const off = known[which].map((wanted, at) => ((even[at] ?? 0) - low) / (high - low) - wanted);
    const sum = (of: (one: number) => number) => off.reduce((total, one) => total + of(one), 0) / off.length;
    expect(Math.max(...off.map(Math.abs))).toBeLessThan(within.most);
    expect(sum(Math.abs)).toBeLessThan(within.mean);
    expect(Math.abs(sum((one) => one))).toBeLessThan(0.003);
  });

  it("leaves a level film as it is", () => {
    expect([...localContrast(film(30, 20, () => 700))]).toEqual(Array.from({ length: 600 }, () => 700));
  });

  it("stays between the film's lowest and highest", () => {
    const even = localContrast(grain);
    const [low, high] = [Math.min(...grain.samples), Math.max(...grain.samples)];
    expect(even.every((value) => value >= low && value <= high)).toBe(true);
  });

  // One region and no clip: the share of pixels below, which for grey spread evenly is the grey itself.
  it("leaves evenly spread grey as it is", () => {
    const spread = film(64, 64, (column, row) => row * 64 + column);
    const even = localContrast(spread, { regions: 1, clip: 1 });
    spread.samples.forEach((own, at) => {
      expect(Math.abs((even[at] ?? 0) - own)).toBeLessThan(full / 256);
    });
  });

  it("never turns a larger sample of a region into a smaller one", () => {
    const even = localContrast(grain, { regions: 1 });
    const order = [...grain.samples.keys()].sort((a, b) => (grain.samples[a] ?? 0) - (grain.samples[b] ?? 0));
    for (let at = 1; at < order.length; at++)
      expect((even[order[at] ?? 0] ?? 0) - (even[order[at - 1] ?? 0] ?? 0)).toBeGreaterThanOrEqual(-1e-3);
  });

  it("brings out what is faint in the dark, and less of it with a lower clip", () => {
    const faint = film(128, 128, (column) => (column < 64 ? 100 + (column % 8 < 4 ? 0 : 20) : 3900));
    const contrast = (clip: number) => {
      const even = localContrast(faint, { clip });
      return (even[64 * 128 + 12] ?? 0) - (even[64 * 128 + 9] ?? 0);
    };
    expect(contrast(0.05)).toBeGreaterThan(40);
    expect(contrast(0.01)).toBeLessThan(contrast(0.05));
  });

  it("turns with the film", () => {
    const turned = film(70, 90, (column, row) => grain.samples[column * 90 + row] ?? 0);
    const [upright, other] = [localContrast(grain), localContrast(turned)];
    upright.forEach((value, at) => {
      expect(other[(at % 90) * 70 + Math.floor(at / 90)]).toBeCloseTo(value, 2);
    });
  });

  it.each([
    [1, 1],
    [3, 200],
    [17, 9],
  ])("takes a film of %d by %d", (columns, rows) => {
    const even = localContrast(film(columns, rows, (column, row) => (column * 13 + row * 7) % 900));
    expect(even.every(Number.isFinite)).toBe(true);
  });

  it.each([{ regions: 0 }, { regions: 1.5 }, { clip: 0 }, { clip: 1.1 }, { clip: Number.NaN }])(
    "refuses %j",
    (options) => {
      expect(() => localContrast(grain, options)).toThrow(refusal);
    },
  );
});

describe("gamma", () => {
  const window = { center: 2048, width: 4096, function: "linear" } as const;

  it("of 1 is the window as it is", () => {
    expect(windowToGrey(window, "MONOCHROME2", 1)).toEqual(windowToGrey(window, "MONOCHROME2"));
  });

  it("keeps black black and white white", () => {
    for (const gamma of [0.25, 0.8, 2, 4]) {
      const grey = windowToGrey(window, "MONOCHROME2", gamma);
      expect([grey[0], grey[4095], grey[65_535]]).toEqual([0, 255, 255]);
    }
  });

  // A quarter of the way from black to white is half of it at gamma 2, and a sixteenth at a half.
  it.each([
    [2, 127],
    [0.5, 15],
  ])("of %d shows a quarter as %d", (gamma, shown) => {
    expect(windowToGrey({ ...window, center: 2047.75 }, "MONOCHROME2", gamma)[1024]).toBe(shown);
  });

  it("brightens what is seen, where larger samples are darker too", () => {
    const [dark, bright] = [1, 2].map((gamma) => windowToGrey(window, "MONOCHROME1", gamma));
    expect(bright?.[3000]).toBeGreaterThan(dark?.[3000] ?? 255);
    expect([bright?.[0], bright?.[4095]]).toEqual([255, 0]);
  });

  it.each([0.2, 4.1, Number.NaN])("refuses %d", (gamma) => {
    expect(() => windowToGrey(window, "MONOCHROME2", gamma)).toThrow(refusal);
  });
});
