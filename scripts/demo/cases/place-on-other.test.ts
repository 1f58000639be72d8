import { describe, expect, it } from "vitest";
import { filmsOfCaseA } from "../../../src/phantom/cases/case-a.ts";
import { projectionOf } from "../../../src/phantom/exposure/projection.ts";
import { toothPoint } from "../../../src/phantom/tooth-point.ts";
import { placeOnOther } from "./place-on-other.ts";

const [straight, angled] = [filmsOfCaseA[0]?.geometry, filmsOfCaseA[1]?.geometry];
if (straight === undefined || angled === undefined) throw new Error("case A has no films");

describe("a place of one film on another", () => {
  it.each([
    [0, 0, 0],
    [4, 2.5, -6],
    [-8, -1, 9],
  ])("is where the place of the tooth (%d, %d, %d) falls there", (x, y, z) => {
    const place = toothPoint(x, y, z);
    const { column, row } = projectionOf(straight).toFilm(place);
    const [u, v] = placeOnOther({ at: [column, row], buccalMm: y }, straight, angled);
    const there = projectionOf(angled).toFilm(place);
    expect(u).toBeCloseTo(there.column, 6);
    expect(v).toBeCloseTo(there.row, 6);
  });
});
