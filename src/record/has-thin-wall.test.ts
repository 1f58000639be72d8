import { describe, expect, it } from "vitest";
import { hasThinWall } from "./has-thin-wall.ts";

describe("hasThinWall", () => {
  const wall = (mm?: number) => ({ side: "mesial" as const, ...(mm === undefined ? {} : { mm }) });
  it.each([
    ["a wall at the head below the canal", { canalDiameterMm: 0.5, walls: [wall(1.2), wall(0.49)] }, true],
    ["a wall on the way below it", { canalDiameterMm: 0.5, thinnestAlong: [{ ...wall(0.3), atMm: 5 }] }, true],
    [
      "one on the way of which the place is not written yet",
      { canalDiameterMm: 0.5, thinnestAlong: [wall(0.3)] },
      true,
    ],
    ["a wall just as thick as the canal", { canalDiameterMm: 0.5, walls: [wall(0.5)] }, false],
    ["walls above the canal", { canalDiameterMm: 0.5, walls: [wall(0.9)], thinnestAlong: [wall(0.7)] }, false],
    ["a wall that is not measured", { canalDiameterMm: 0.5, walls: [wall()] }, false],
    ["a canal that is not measured", { walls: [wall(0.1)] }, false],
    ["nothing written", {}, false],
  ])("of %s", (_, body, is) => {
    expect(hasThinWall(body)).toBe(is);
  });
});
