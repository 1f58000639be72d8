import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { placedLabels } from "./film-labels.ts";
import type { FilmMeasure } from "./film-measure.ts";
import { filmMeasures } from "./film-measures.ts";
import { svgText } from "./svg-text.ts";
import { boxesMeet, labelBox } from "./text-label.ts";

const trace: FilmMeasure = {
  kind: "trace",
  points: [
    [10, 10],
    [20, 200],
  ],
  label: "MB1 19.2 mm",
};
const known: FilmMeasure = { kind: "known", from: [300, 10], to: [300, 210], label: "25 mm" };

describe("filmMeasures", () => {
  it("is drawn in the film's pixels, the middle of the first one half a pixel from the corner", () => {
    const text = svgText(filmMeasures({ columns: 480, rows: 360, measures: [trace] }));
    expect(text).toContain('viewBox="0 0 480 360"');
    expect(text).toContain('<g transform="translate(0.5 0.5)">');
    expect(text).toContain('d="M10 10L20 200"');
  });

  it("has lines that grow with the film's width", () => {
    const widths = (columns: number) =>
      [...svgText(filmMeasures({ columns, rows: 100, measures: [known] })).matchAll(/stroke-width="([\d.]+)"/g)].map(
        (match) => Number(match[1]),
      );
    const [narrow, wide] = [widths(480), widths(4800)];
    for (const [at, width] of narrow.entries()) expect((wide[at] ?? 0) / width).toBeCloseTo(10, 1);
  });

  it("tells a second course and every distance apart by a dash as well as by colour, and rims each line", () => {
    const text = svgText(filmMeasures({ columns: 480, rows: 360, measures: [trace, trace, known] }));
    const groups = text.split('data-part="').slice(1);
    expect(groups.map((one) => one.includes("stroke-dasharray"))).toEqual([false, true, true]);
    expect(groups.every((one) => one.includes('stroke="#0b0a0a"'))).toBe(true);
  });

  it("marks both ends of a course by different shapes", () => {
    const text = svgText(
      filmMeasures({
        columns: 480,
        rows: 360,
        measures: [
          {
            kind: "trace",
            points: [
              [10, 10],
              [20, 200],
            ],
          },
        ],
      }),
    );
    expect(text).toMatch(/<circle cx="20" cy="200"[^>]* fill="#b6f2e2"/);
    expect(text).toMatch(/d="M6 10a4 4 0 1 0 8 0/);
  });

  it("says what is drawn", () => {
    const measures: FilmMeasure[] = [
      trace,
      known,
      { kind: "spot", at: [5, 5] },
      { kind: "length", from: [1, 1], to: [2, 2], label: "" },
    ];
    expect(filmMeasures({ columns: 480, rows: 360, measures }).alternative).toBe(
      "Measures drawn on the film: canal course MB1 19.2 mm; known length 25 mm; point; distance.",
    );
    expect(filmMeasures({ columns: 10, rows: 10, measures: [] }).alternative).toBe("Nothing is drawn on this film.");
  });

  it("draws each kind in a shape of its own", () => {
    const measures: FilmMeasure[] = [
      {
        kind: "fragment",
        points: [
          [100, 100],
          [100, 160],
        ],
        label: "fragment 2.1 mm",
      },
      {
        kind: "gap",
        points: [
          [200, 100],
          [200, 130],
          [205, 150],
        ],
        label: "1.2 mm short",
      },
      { kind: "level", at: [300, 100], along: [0, 1], label: "start of bend" },
      { kind: "crownRoot", crown: [50, 10], level: [60, 90], foot: [50, 90], apex: [50, 200] },
      { kind: "wall", from: [400, 100], to: [420, 100], label: "0.9 mm" },
      {
        kind: "construction",
        lines: [
          [
            [10, 10],
            [10, 300],
          ],
        ],
        read: [
          [
            [10, 200],
            [20, 210],
          ],
        ],
        at: [10, 200],
        label: "32°",
      },
    ];
    const figure = filmMeasures({ columns: 480, rows: 480, measures });
    const text = svgText(figure);
    // A fragment is a closed band of 7 units' width about its line, a level a tick of 18 across it.
    expect(text).toMatch(/M96\.5 100L96\.5 160L103\.5 160L103\.5 100Z/);
    expect(text).toMatch(/M309 100L291 100/);
    expect(text).toMatch(/M60 90L50 90/);
    expect(text).toMatch(/stroke-dasharray="2 2.5"/);
    expect(figure.alternative).toBe(
      "Measures drawn on the film: fragment fragment 2.1 mm; filling's end to apex 1.2 mm short; level start of bend; crown and root; wall 0.9 mm; construction 32°.",
    );
    expect(text).not.toMatch(/NaN|Infinity|undefined/);
  });

  it("draws what has no extent, and a course without points, without a number that is none", () => {
    const measures: FilmMeasure[] = [
      { kind: "length", from: [5, 5], to: [5, 5], label: "0 mm" },
      { kind: "trace", points: [], label: "empty" },
      { kind: "fragment", points: [[5, 5]], label: "dot" },
      { kind: "gap", points: [[5, 5]] },
      { kind: "level", at: [5, 5], along: [0, 0] },
      {
        kind: "outline",
        points: [
          [1, 1],
          [5, 1],
          [3, 4],
        ],
      },
    ];
    expect(svgText(filmMeasures({ columns: 40, rows: 30, measures }))).not.toMatch(/NaN|Infinity|undefined/);
  });
});

describe("labels on a film", () => {
  const frame = { width: 600, height: 400, size: 14, halo: "#000000" };
  const spot = fc.record({
    x: fc.double({ min: -50, max: 650, noNaN: true }),
    y: fc.double({ min: -50, max: 450, noNaN: true }),
  });

  it("stay inside the frame and off each other, wherever their spots are", () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(spot, fc.constantFrom("MB1 19.2 mm", "25 mm", "lesion")), { maxLength: 8 }),
        (given) => {
          const wishes = given.map(([near, text]) => ({ near, text, fill: "#ffffff" }));
          const boxes = placedLabels(wishes, [], frame).map(labelBox);
          boxes.forEach((box, at) => {
            expect(box.left).toBeGreaterThanOrEqual(0);
            expect(box.right).toBeLessThanOrEqual(frame.width);
            expect(box.top).toBeGreaterThanOrEqual(0);
            expect(box.bottom).toBeLessThanOrEqual(frame.height);
            for (const other of boxes.slice(at + 1)) expect(boxesMeet(box, other)).toBe(false);
          });
        },
      ),
    );
  });

  it("keep off what is drawn where there is room", () => {
    const near = { x: 100, y: 100 };
    const line = Array.from({ length: 60 }, (_, at) => ({ x: 100 + at * 4, y: 100 }));
    const [label] = placedLabels([{ near, text: "known", fill: "#ffffff" }], line, frame);
    const box = label === undefined ? undefined : labelBox(label);
    expect(
      line.some(({ x, y }) => box !== undefined && x > box.left && x < box.right && y > box.top && y < box.bottom),
    ).toBe(false);
  });

  it("are cut where they are wider than the film", () => {
    const [label] = placedLabels(
      [{ near: { x: 10, y: 10 }, text: "a very long word ".repeat(9), fill: "#ffffff" }],
      [],
      frame,
    );
    expect(label?.text.endsWith("…")).toBe(true);
    expect(label === undefined ? 0 : labelBox(label).right).toBeLessThanOrEqual(600);
  });
});
