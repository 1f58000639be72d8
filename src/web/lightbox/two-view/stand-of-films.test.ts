import { describe, expect, it } from "vitest";
import { toScreen } from "../kernels/film-placement.ts";
import { filmPoint } from "../kernels/film-point.ts";
import { film, trace } from "./case-for-tests.ts";
import { framedOn, standOf } from "./stand-of-films.ts";

const view = (quarterTurns: number, mirrored: boolean) => ({
  ...{ windowCentre: 2000, windowWidth: 4000, invert: false, quarterTurns, mirrored },
});

describe("how a film stands before the eye", () => {
  it.each([
    ["mesial", 0, false, "mesial", "down"],
    ["distal", 0, false, "distal", "down"],
    ["mesial", 0, true, "distal", "down"],
    ["mesial", 2, false, "distal", "up"],
    ["mesial", 2, true, "mesial", "up"],
  ] as const)(
    "%s to the right, %d quarter turns, mirrored %s: %s to the right, apex %s",
    (uRunsTo, turns, mirrored, rightIs, apexIs) => {
      const one = { film: film("film-1", { uRunsTo, view: view(turns, mirrored) }), trace: trace("t1", "film-1") };
      expect(standOf(one)).toEqual({ rightIs, apexIs });
    },
  );

  it("has the apex up where the trace runs up", () => {
    const down = trace("t1", "film-1");
    const up = { ...down, body: { ...down.body, points: [...down.body.points].reverse() } };
    expect(standOf({ film: film("film-1"), trace: up }).apexIs).toBe("up");
  });
});

describe("a canal framed in its pane", () => {
  const pane = { width: 500, height: 800 };
  const line = [filmPoint(300, 100), filmPoint(320, 300), filmPoint(310, 500)];
  it("lies in the middle and inside, the film turned or not", () => {
    for (const quarterTurns of [0, 1, 2, 3]) {
      const lies = framedOn(line, pane, { quarterTurns, mirrored: quarterTurns === 1 });
      for (const at of line) {
        const { x, y } = toScreen(lies, pane, at);
        expect(x > 0 && x < pane.width && y > 0 && y < pane.height).toBe(true);
      }
      const middle = toScreen(lies, pane, filmPoint(310, 300));
      expect([middle.x, middle.y]).toEqual([expect.closeTo(250, 9), expect.closeTo(400, 9)]);
    }
  });

  it("takes a good half of the pane's height", () => {
    const lies = framedOn(line, pane, { quarterTurns: 0, mirrored: false });
    expect((400 * lies.zoom) / pane.height).toBeCloseTo(0.58, 9);
  });
});
