import { describe, expect, it } from "vitest";
import { answer } from "../topic.ts";
import { placesOf, shown, viewsOf } from "./two-view/bent-canal-for-tests.ts";
import { cameraOf } from "./two-view/camera.ts";
import { twoViewTopic } from "./two-view-topic.ts";

const canal = { l1: 8, radius: 5, turnDeg: 40, l2: 3, planeDeg: 60 };
const places = placesOf(canal);
const read = (input: object) => answer(twoViewTopic, input);
const radians = (value: number): number => (value * Math.PI) / 180;
type Pair = readonly [number, number];
const [straight, angled] = [shown(places, 0), shown(places, 25)];
const two = (first: readonly Pair[], second: readonly Pair[], more: object = {}) => ({
  views: [
    { horizontalAngleDeg: 0, points: first },
    { horizontalAngleDeg: 25, points: second },
  ],
  ...more,
});
const withMarks = (
  marks: Record<string, readonly [number, number, number]>,
  receptor: "turnsWithBeam" | "fixed" = "turnsWithBeam",
  anglesDeg = [0, 25],
) =>
  viewsOf(places, anglesDeg, receptor).map((view) => ({
    ...view,
    landmarks: Object.fromEntries(
      Object.entries(marks).map(([name, [x, y, z]]) => [
        name,
        shown([{ x, y, z }], view.horizontalAngleDeg, receptor)[0],
      ]),
    ),
  }));

describe("how films are read (C1)", () => {
  it("u that runs to mesial is turned, film by film", () => {
    const turned = straight.map(([u, v]): Pair => [-u, v]);
    const input = {
      views: [
        { horizontalAngleDeg: 0, uRunsTo: "mesial", points: turned },
        { horizontalAngleDeg: 25, points: angled },
      ],
    };
    expect(read(input).points).toEqual(read(two(straight, angled)).points);
  });

  it("an upper tooth's roots run up the film", () => {
    const up = (points: readonly Pair[]) => points.map(([u, v]): Pair => [u, 40 - v]);
    const found = read(two(up(straight), up(angled)));
    expect(found.side).toBe("buccal");
    expect(found.points?.at(-1)?.[2]).toBeCloseTo(places.at(-1)?.z ?? 0, 6);
  });

  it("points are counted from each film's orifice, or as the input counts them", () => {
    const moved = angled.map(([u, v]): Pair => [u + 3, v - 2]);
    expect(read(two(straight, moved)).side).toBe("buccal");
    expect(read(two(straight, moved)).points?.at(-1)?.[1]).toBeCloseTo(places.at(-1)?.y ?? 0, 6);
    const all = places.map((place) => ({ ...place, x: place.x + 1, y: place.y + 2 }));
    const given = read({ views: viewsOf(all, [0, 25]), countedFrom: "input" });
    expect(given.points?.[0]?.[0]).toBeCloseTo(1, 6);
    expect(given.points?.[0]?.[1]).toBeCloseTo(2, 6);
  });
});

describe("pairing (C6)", () => {
  it("unequal numbers are paired by level, and give the same course", () => {
    const found = read(two(straight, shown(placesOf(canal, 40), 25)));
    expect(found.matched).toBe("byLevel");
    expect(found.curvature?.pruettDeg).toBeCloseTo(40, 1);
    expect(found.lengthMm).toBeCloseTo(8 + 5 * radians(40) + 3, 2);
  });

  it("equal numbers at other heights are paired by level, and it is said", () => {
    const steps = places.length - 1;
    const crowded = placesOf(canal, 400).filter((_, index) => index % 400 === 0 || index > 400 - 10 * steps + 10);
    const other = crowded.filter(
      (_, index) => index === 0 || (crowded.length - 1 - index) % Math.floor(crowded.length / steps) === 0,
    );
    const chosen = [other[0], ...other.slice(-steps)].flatMap((place) => place ?? []);
    expect(chosen).toHaveLength(places.length);
    const found = read(two(straight, shown(chosen, 25)));
    expect(found.matched).toBe("byLevel");
    expect(found.cautions.join()).toContain("paired by level");
    expect(found.curvature?.pruettDeg).toBeCloseTo(40, 0);
  });
});

describe("receptor and rays (C2 to C4)", () => {
  it("an unknown receptor holds both readings and tells a side only where both agree", () => {
    const views = viewsOf(places, [0, 25], "fixed");
    const [turned, fixed, unknown] = ["turnsWithBeam", "fixed", "unknown"].map((receptor) =>
      read({ views, receptor, sigmaMm: 0.05 }),
    );
    for (const name of ["lengthMm", "pruettDeg", "hiddenDeg", "outOfFilmDeg"]) {
      const hull = unknown?.intervals[name];
      expect(hull?.low).toBe(Math.min(turned?.intervals[name]?.low ?? 0, fixed?.intervals[name]?.low ?? 0));
      expect(hull?.high).toBe(Math.max(turned?.intervals[name]?.high ?? 0, fixed?.intervals[name]?.high ?? 0));
    }
    expect(unknown).toMatchObject({ side: "buccal", receptorRead: "turnsWithBeam", lengthMm: turned?.lengthMm });
    // A bend along the film seems to turn to buccal by one formula, and lies in the film's plane by the other.
    const along = viewsOf(placesOf({ ...canal, planeDeg: 0 }), [0, 25], "fixed");
    expect(read({ views: along, receptor: "turnsWithBeam" }).side).toBe("buccal");
    expect(read({ views: along, receptor: "unknown" }).side).toBe("undetermined");
  });

  it.each(["turnsWithBeam", "fixed"] as const)(
    "a near tube, millimetres in the tooth or on the detector, receptor %s",
    (receptor) => {
      for (const units of ["toothPlaneMm", "detectorMm"] as const) {
        const source = { toToothMm: 200, toPlaneMm: units === "detectorMm" ? 12 : 0, centralRayMm: 6 };
        const views = [0, 25].map((horizontalAngleDeg) => {
          const camera = cameraOf({ receptor, angle: radians(horizontalAngleDeg), tilt: radians(5), source });
          const points = places.map((place) => Object.values(camera(place)));
          return { horizontalAngleDeg, verticalAngleDeg: 5, points };
        });
        const geometry = { sourceToToothMm: 200, toothToDetectorMm: 12 };
        const stated = read({
          views,
          receptor,
          units,
          geometry: { ...geometry, centralRayMm: units === "detectorMm" ? 6.36 : 6 },
        });
        expect(stated.curvature?.pruettDeg).toBeCloseTo(40, 0);
        expect(stated.lengthMm).toBeCloseTo(8 + 5 * radians(40) + 3, 1);
        const estimated = read({ views, receptor, units, geometry });
        expect(estimated.curvature?.pruettDeg).toBeCloseTo(40, 0);
      }
    },
  );
});

describe("verdicts (C10)", () => {
  it("under 10 degrees of shift intervals are given, and no side", () => {
    const marks = { cusp: [0, 4, -3] } as const;
    const found = read({ views: withMarks(marks, "turnsWithBeam", [0, 8]), sigmaMm: 0.05 });
    expect(found).toMatchObject({ side: "undetermined", liesSide: "undetermined" });
    expect(found.bendSides).toEqual(["undetermined"]);
    expect(found.cautions.join()).toContain("8.0 degrees apart");
    const usual = read({ views: withMarks(marks), sigmaMm: 0.05 });
    const width = ({ intervals }: typeof usual): number =>
      (intervals.outOfFilmDeg?.high ?? 0) - (intervals.outOfFilmDeg?.low ?? 0);
    expect(width(found)).toBeGreaterThan(2 * width(usual));
  });

  it("a bend under 10 degrees out of the film's plane has no side, at 15 it has", () => {
    const sideAt = (planeDeg: number) => read({ views: viewsOf(placesOf({ ...canal, planeDeg }), [0, 25]) }).side;
    expect([5, 9, -9, 175].map(sideAt)).toEqual(Array(4).fill("undetermined"));
    expect([15, -15, 165].map(sideAt)).toEqual(["buccal", "lingual", "buccal"]);
  });

  it("noise that allows both sides withholds the side", () => {
    const slight = placesOf({ ...canal, turnDeg: 6, planeDeg: 40 });
    const found = read({ views: viewsOf(slight, [0, 12]), sigmaMm: 0.15 });
    expect(found.side).toBe("undetermined");
  });

  it("two bends of over 15 degrees to opposite sides are mixed; a slight second one is not", () => {
    const s = (second: number) => {
      const first = placesOf({ l1: 5, radius: 5, turnDeg: 40, l2: 0, planeDeg: 90 });
      const end = first.at(-1);
      if (end === undefined) throw new Error("places");
      // From a heading of 40 degrees to buccal, straight for 2 mm, then back by `second` degrees on 5 mm.
      const heading = radians(40);
      const more = Array.from({ length: 18 }, (_, index) => {
        const gone = 0.5 * (index + 1);
        const turn = Math.min(Math.max(gone - 2, 0) / 5, radians(second));
        const rest = Math.max(0, gone - 2 - 5 * radians(second));
        const along = Math.min(gone, 2) + 5 * Math.sin(turn) + rest * Math.cos(turn);
        const aside = 5 * (1 - Math.cos(turn)) + rest * Math.sin(turn);
        return {
          x: 0,
          y: end.y + along * Math.sin(heading) - aside * Math.cos(heading),
          z: end.z + along * Math.cos(heading) + aside * Math.sin(heading),
        };
      });
      return read({ views: viewsOf([...first, ...more], [0, 25]), sigmaMm: 0.02 });
    };
    expect(s(30)).toMatchObject({ side: "mixed", bendSides: ["buccal", "lingual"] });
    expect(s(11).side).toBe("buccal");
  });

  it("a straight canal turns to no side and has no plane", () => {
    const found = read({ views: viewsOf(placesOf({ ...canal, turnDeg: 0 }), [0, 25]) });
    expect(found).toMatchObject({ side: "undetermined", apparent: [0, 0], hiddenDeg: 0 });
    expect(found.plane).toBeUndefined();
    expect(found.notComputed.map(({ name }) => name)).toContain("plane");
  });
});

describe("landmarks (C10, C12 to C14)", () => {
  it("where the canal lies beside one, whatever side it bends to", () => {
    // A lingual canal that bends to buccal: its middle lies 4 mm and a little to lingual of the cusp.
    const found = read({ views: withMarks({ cusp: [1, 5, -6] }), sigmaMm: 0.05 });
    expect(found).toMatchObject({ side: "buccal", liesSide: "lingual" });
    const middle =
      Array.from({ length: 11 }, (_, index) => placesOf(canal, 10)[index]?.y ?? 0).reduce((a, b) => a + b) / 11;
    expect(found.liesBuccallyMm).toBeCloseTo(middle - 5, 2);
    expect(read({ views: withMarks({ cusp: [1, -3, -6] }), sigmaMm: 0.05 }).liesSide).toBe("buccal");
  });

  it("the reference is the one named", () => {
    const views = withMarks({ far: [1, 5, -6], near: [0, -4, -6] });
    expect(read({ views }).liesSide).toBe("lingual");
    expect(read({ views, reference: "near" }).liesSide).toBe("buccal");
  });

  it("scale and turn of a film are found from heights, and taken out", () => {
    const marks = { a: [3, 4, -6], b: [-3, -3, -5], c: [4, 0, 5] } as const;
    const [first, second] = withMarks(marks);
    const [scale, turn] = [1.02, radians(1.5)];
    const off = ([u = 0, v = 0]: readonly number[]): Pair => [scale * (u - turn * v), scale * (v + turn * u)];
    const askew = {
      ...second,
      points: second?.points.map(off),
      landmarks: Object.fromEntries(Object.entries(second?.landmarks ?? {}).map(([name, at]) => [name, off(at ?? [])])),
    };
    const raw = read({ views: [first, { ...askew, landmarks: {} }], sigmaMm: 0.01 });
    const found = read({ views: [first, askew], sigmaMm: 0.01 });
    expect(Math.abs((found.curvature?.pruettDeg ?? 0) - 40)).toBeLessThan(0.5);
    const end = places.at(-1);
    expect(Math.abs((found.points?.at(-1)?.[1] ?? 0) - (end?.y ?? 0))).toBeLessThan(0.1);
    expect(Math.abs((raw.points?.at(-1)?.[1] ?? 0) - (end?.y ?? 0))).toBeGreaterThan(0.3);
    expect(found.cautions.join()).toMatch(/made 2\.\d % larger, turned by 1\.\d degrees/);
  });

  it("an unknown angle is solved from two landmarks of known separation", () => {
    const marks = { a: [1, -3, -5], b: [3, 4, -6] } as const;
    const [first, second] = withMarks(marks);
    const views = [first, { points: second?.points, landmarks: second?.landmarks, tubeMovedTo: "mesial" }];
    const knownSeparation = { landmarks: ["a", "b"], buccolingualMm: 7 };
    const found = read({ views, knownSeparation });
    expect(found.anglesDeg?.[1]).toBeCloseTo(25, 6);
    expect(found.curvature?.pruettDeg).toBeCloseTo(40, 1);
    expect(found.cautions.join()).toContain("was solved from the landmarks: 25.0 degrees");
    const none = read({ views: [{ points: first?.points, landmarks: first?.landmarks }, views[1]], knownSeparation });
    expect(none.cautions.join()).toContain("taken as straight on");
  });

  it("where nothing fixes the angle only sides are told, by the movement against the tube (Clark)", () => {
    const [first, second] = withMarks({ cusp: [1, 5, -6] });
    const told = (tubeMovedTo: string) =>
      read({ views: [first, { points: second?.points, landmarks: second?.landmarks, tubeMovedTo }] });
    expect(told("mesial")).toMatchObject({ side: "buccal", liesSide: "lingual" });
    expect(told("distal")).toMatchObject({ side: "lingual", liesSide: "buccal" });
    const found = told("mesial");
    expect(found.lengthMm).toBeUndefined();
    expect(found.notComputed.map(({ name }) => name)).toEqual(
      expect.arrayContaining(["points", "lengthMm", "curvature", "hiddenDeg"]),
    );
    // The films' own angles: atan(tan 40 cos 60) on the straight one.
    expect(found.apparent[0]).toBeCloseTo(
      (Math.atan(Math.tan(radians(40)) * Math.cos(radians(60))) * 180) / Math.PI,
      0,
    );
    expect(
      read({ views: [{ points: first?.points }, { points: second?.points, tubeMovedTo: "mesial" }] }).liesSide,
    ).toBeUndefined();
  });

  it("the other kind of receptor is noticed by a known separation, and by a third film", () => {
    const knownSeparation = { landmarks: ["a", "b"], buccolingualMm: 7 };
    const known = withMarks({ a: [-4, -3, -5], b: [6, 4, -6] }, "fixed");
    expect(read({ views: known, knownSeparation, receptor: "turnsWithBeam" }).cautions.join()).toContain(
      "speaks for a receptor that stays in place",
    );
    expect(read({ views: known, knownSeparation, receptor: "fixed" }).cautions.join()).not.toContain("check how");
    const three = withMarks({ a: [-4, -3, -5], b: [6, 4, -6] }, "turnsWithBeam", [-25, 0, 25]);
    expect(read({ views: three, receptor: "fixed", sigmaMm: 0.05 }).cautions.join()).toContain(
      "agree better for a receptor that turns",
    );
    expect(read({ views: three, sigmaMm: 0.05 }).cautions.join()).not.toContain("agree better");
    const turned = withMarks({ a: [-4, -3, -5], b: [6, 4, -6] }, "turnsWithBeam");
    expect(read({ views: turned, knownSeparation, receptor: "fixed" }).cautions.join()).toContain(
      "speaks for a receptor that turns with the beam",
    );
    const left = withMarks({ a: [-4, -3, -5], b: [6, 4, -6] }, "fixed", [-25, 0, 25]);
    expect(read({ views: left, sigmaMm: 0.05 }).cautions.join()).toContain("agree better for a receptor that stays");
  });
});

describe("noise and more films (C8, C11)", () => {
  it("a third film makes depth surer", () => {
    const width = (anglesDeg: number[]): number => {
      const { intervals } = read({ views: viewsOf(places, anglesDeg), sigmaMm: 0.05 });
      return (intervals.outOfFilmDeg?.high ?? 0) - (intervals.outOfFilmDeg?.low ?? 0);
    };
    expect(width([-25, 0, 25])).toBeLessThan(width([0, 25]));
  });

  it("a less sure angle and a less sure scale widen, a surer one does not", () => {
    const width = (name: string, more: object): number => {
      const { intervals } = read(two(straight, angled, { sigmaMm: 0.02, ...more }));
      return (intervals[name]?.high ?? 0) - (intervals[name]?.low ?? 0);
    };
    expect(width("outOfFilmDeg", { angleSigmaDeg: 4 })).toBeGreaterThan(
      1.5 * width("outOfFilmDeg", { angleSigmaDeg: 0 }),
    );
    expect(width("lengthMm", { scaleRelativeSigma: 0.03 })).toBeGreaterThan(2 * width("lengthMm", {}));
  });

  it("points that scatter more than stated widen the intervals, and it is said", () => {
    const rough = (points: readonly Pair[]) =>
      points.map(([u, v], index): Pair => [u + (index % 2 === 0 ? 0.2 : -0.2), v]);
    const found = read(two(rough(straight), rough(angled), { sigmaMm: 0.02 }));
    expect(found.cautions.join()).toContain("more than stated");
    expect(found.curvature?.fitQuality.sigmaMm).toBeGreaterThan(0.1);
  });

  it("a course of no family is said to fit none", () => {
    const wave = Array.from({ length: 60 }, (_, index) => ({
      x: 1.2 * Math.sin(index / 5),
      y: 1.2 * Math.cos(index / 5),
      z: 0.3 * index,
    }));
    const found = read({ views: viewsOf(wave, [0, 25]) });
    expect(found.curvature?.fitQuality.fits).toBe(false);
    expect(found.cautions.join()).toContain("No family of courses fits");
  });

  it("long traces are thinned evenly and keep their ends", () => {
    const fine = placesOf(canal, 900);
    const found = read({ views: viewsOf(fine, [0, 25]) });
    expect(found.points).toHaveLength(60);
    expect(found.points?.at(-1)?.[2]).toBeCloseTo(fine.at(-1)?.z ?? 0, 6);
  });
});
