import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type CourseInSpace, courseInSpace } from "./course-in-space.ts";
import type { ToothPlace } from "./seen-from.ts";
import { svgText } from "./svg-text.ts";

/** A canal that turns to buccal alone, by 40 degrees on 5 mm after 8 mm. */
const toBuccal = Array.from({ length: 40 }, (_, at): ToothPlace => {
  const turn = Math.max(0, at * 0.3 - 8) / 5;
  return [0, 5 * (1 - Math.cos(turn)), Math.min(at * 0.3, 8) + 5 * Math.sin(turn)];
});
const straight = { name: "straight", angleDeg: 0, receptor: "turnsWithBeam" } as const;
const drawn = (more: Partial<CourseInSpace> = {}) =>
  courseInSpace({
    ...{ name: "DL", course: toBuccal, films: [straight], pose: { yawDeg: 0, pitchDeg: 0 } },
    ...{ rightIs: "distal", apexIs: "down", theme: "paper", widthPx: 400 },
    ...more,
  });
const textOf = (more: Partial<CourseInSpace> = {}) => svgText(drawn(more));

/** The corners of all paths of a part of the drawing. */
const spotsOf = (text: string, part: string): [number, number][] => {
  const group =
    new RegExp(`<g data-part="${part}">(.*?)</g>`).exec(text)?.[1] ??
    text.match(new RegExp(`<path data-part="${part}"[^>]*>`))?.[0] ??
    "";
  return [...group.matchAll(/ d="([^"]*)"/g)].flatMap(([, d = ""]) =>
    [...d.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]): [number, number] => [Number(x), Number(y)]),
  );
};
const widthOf = (spots: readonly [number, number][]): number =>
  Math.max(...spots.map(([x]) => x)) - Math.min(...spots.map(([x]) => x));

describe("courseInSpace", () => {
  it("hides a bend to buccal from the front, and shows it from mesial", () => {
    const front = spotsOf(textOf(), "course");
    expect(front.length).toBeGreaterThan(60);
    expect(widthOf(front)).toBeLessThan(0.02);
    const side = spotsOf(textOf({ pose: { yawDeg: 90, pitchDeg: 0 } }), "course");
    const [x] = side.at(-1) ?? [0];
    const [x0, y0] = side[0] ?? [0, 0];
    const [, y] = side.at(-1) ?? [0, 0];
    // At one scale: 3.7 s of 0.3 mm after the bend's start, so 5 (1 - cos 0.74) to buccal and 8 + 5 sin 0.74 down.
    expect((x - x0) / (y - y0)).toBeCloseTo((5 * (1 - Math.cos(0.74))) / (8 + 5 * Math.sin(0.74)), 2);
  });

  it("draws the image of a straight film under the course when it is seen straight on", () => {
    const text = textOf({ course: toBuccal.map(([x, y, z]) => [x + y, y, z]) });
    const [course, image] = [spotsOf(text, "course"), spotsOf(text, "image")];
    expect(widthOf(course)).toBeGreaterThan(10);
    expect(widthOf(image)).toBeCloseTo(widthOf(course), 1);
    expect(image[0]?.[0]).toBeCloseTo(course[0]?.[0] ?? 0, 1);
    expect(image.at(-1)?.[1]).toBeCloseTo(course.at(-1)?.[1] ?? 0, 1);
  });

  it("stands as the tooth stands: right and apex where they are said to be", () => {
    const slant = toBuccal.map(([, , z]): ToothPlace => [z, 0, z]);
    const ends = (more: Partial<CourseInSpace>) => {
      const spots = spotsOf(textOf({ course: slant, ...more }), "course");
      const [[x0, y0], [x1, y1]] = [spots[0] ?? [0, 0], spots.at(-1) ?? [0, 0]];
      return [Math.sign(x1 - x0), Math.sign(y1 - y0)];
    };
    expect(ends({})).toEqual([1, 1]);
    expect(ends({ rightIs: "mesial" })).toEqual([-1, 1]);
    expect(ends({ apexIs: "up" })).toEqual([1, -1]);
  });

  it("names the axes that can be seen, and calls the inner side as the jaw does", () => {
    const front = textOf();
    for (const name of ["mesial", "distal", "apical"]) expect(front).toContain(`>${name}</text>`);
    for (const name of ["buccal", "lingual"]) expect(front).not.toContain(`>${name}</text>`);
    const under = textOf({ pose: { yawDeg: 0, pitchDeg: 90 }, innerSide: "palatal" });
    for (const name of ["mesial", "distal", "buccal", "palatal"]) expect(under).toContain(`>${name}</text>`);
    expect(under).not.toContain(">apical</text>");
  });

  it("keeps what is shown small below the names of its films", () => {
    const films = ["straight", "20° from mesial", "16° from distal"].map((name, at) => ({
      ...straight,
      name,
      angleDeg: 20 * at,
    }));
    const text = textOf({ films, letters: 1.5, apexIs: "up", pose: { yawDeg: 38, pitchDeg: 16 } });
    const heights = [...text.matchAll(/ y="([\d.]+)"[^>]*>([^<]+)<\/text>/g)].map(
      ([, y, name]) => [name, Number(y)] as const,
    );
    const lowest = Math.max(...heights.flatMap(([name, y]) => (films.some((film) => film.name === name) ? [y] : [])));
    const axes = heights.filter(([name = ""]) => /distal$|mesial$|buccal|apical/.test(name) && !/°/.test(name));
    expect(axes.length).toBeGreaterThan(2);
    for (const [, y] of axes) expect(y).toBeGreaterThanOrEqual(lowest + 11.5);
    for (const [, y] of spotsOf(text, "course")) expect(y).toBeGreaterThan(lowest);
  });

  it("draws the band of 95 % as wide as 1.96 standard deviations to each side", () => {
    const spread = toBuccal.map((): ToothPlace => [0.5, 0, 0]);
    const text = textOf({ spread, films: [] });
    const band = spotsOf(text, "band");
    const course = spotsOf(text, "course");
    const perMm = ((course.at(-1)?.[1] ?? 0) - (course[0]?.[1] ?? 0)) / (8 + 5 * Math.sin(0.74));
    expect(widthOf(band) / perMm).toBeCloseTo(2 * 1.96 * 0.5, 1);
    // Seen from mesial the canal's spread to mesial and distal lies along the sight.
    expect(
      widthOf(
        spotsOf(
          textOf({
            spread,
            films: [],
            course: toBuccal.map(([, , z]) => [0, 0, z]),
            pose: { yawDeg: 90, pitchDeg: 0 },
          }),
          "band",
        ),
      ),
    ).toBeLessThan(0.1);
    expect(textOf()).not.toContain('data-part="band"');
  });

  it("marks a place on the course and on each film's image", () => {
    const films = [straight, { ...straight, name: "25° from mesial", angleDeg: 25 }];
    const accents = (text: string) => text.match(/fill="#a6401b"/g)?.length ?? 0;
    expect(accents(textOf({ films }))).toBe(0);
    expect(accents(textOf({ films, place: 0.5 }))).toBe(2);
    expect(textOf({ films, place: 0.5 })).toContain('data-part="place"');
  });

  it("says in words where the foramen lies and what is seen", () => {
    const { alternative } = drawn({ pose: { yawDeg: 25, pitchDeg: 0 } });
    // 5 (1 - cos 0.74) = 1.31 and 8 + 5 sin 0.74 = 11.37.
    expect(alternative).toBe(
      "Canal DL in space, seen from 25° mesial of buccal. Its foramen lies 0.0 mm to distal, 1.3 mm to buccal and 11.4 mm apical of its orifice; it comes as far as 1.3 mm to buccal. Behind it its image on straight.",
    );
  });

  it("keeps every course inside the drawing from every side, and writes no number that is none", () => {
    const coordinate = fc.double({ min: -12, max: 12, noNaN: true });
    const courses = fc.array(fc.tuple(coordinate, coordinate, coordinate), { minLength: 2, maxLength: 12 });
    fc.assert(
      fc.property(
        courses,
        fc.integer({ min: -180, max: 180 }),
        fc.integer({ min: -90, max: 90 }),
        (course, yawDeg, pitchDeg) => {
          const films = [straight, { ...straight, angleDeg: -35, receptor: "fixed" as const }];
          const text = textOf({ course, films, pose: { yawDeg, pitchDeg } });
          expect(text).not.toMatch(/NaN|Infinity|undefined/);
          for (const [x, y] of spotsOf(text, "course")) expect(x >= 0 && x <= 400 && y >= 0 && y <= 310).toBe(true);
        },
      ),
      { numRuns: 60 },
    );
  });
});
