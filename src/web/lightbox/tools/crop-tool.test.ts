import { describe, expect, it } from "vitest";
import { filmPoint } from "../kernels/film-point.ts";
import { type CropEvent, type CropState, stepCrop } from "./crop-tool.ts";

const world = { picture: { columns: 1000, rows: 600 }, nearPx: 8 };
const box = { column: 100, row: 100, columns: 200, rows: 300 };
const run = (start: CropState, ...events: CropEvent[]) =>
  events.reduce((state, event) => stepCrop(state, event, world), start);
const pressed = (column: number, row: number): CropEvent => ({ is: "pressed", at: filmPoint(column, row) });
const moved = (column: number, row: number): CropEvent => ({ is: "moved", at: filmPoint(column, row) });
const released: CropEvent = { is: "released" };

describe("cropping a picture", () => {
  it("draws a box between press and release", () => {
    expect(run({}, pressed(100, 100), moved(200, 200), moved(300, 400), released)).toEqual({ box });
  });

  it("moves the box from inside and keeps its size, also against the edge", () => {
    expect(run({ box }, pressed(150, 150), moved(170, 140), released).box).toEqual({ ...box, column: 120, row: 90 });
    expect(run({ box }, pressed(150, 150), moved(-900, 150), released).box).toEqual({ ...box, column: 0 });
  });

  it("moves one corner while the one across stays", () => {
    expect(run({ box }, pressed(302, 399), moved(350, 450), released).box).toEqual({ ...box, columns: 250, rows: 350 });
    expect(run({ box }, pressed(101, 101), moved(50, 60), released).box).toEqual({
      column: 50,
      row: 60,
      columns: 250,
      rows: 340,
    });
  });

  it("begins a new box outside, and keeps the old one for a slip of the hand", () => {
    expect(run({ box }, pressed(500, 100), moved(600, 200), released).box).toEqual({
      column: 500,
      row: 100,
      columns: 100,
      rows: 100,
    });
    expect(run({ box }, pressed(500, 100), moved(505, 104), released).box).toEqual(box);
  });

  it("is moved and resized with the arrows, ten pixels at a time with Alt", () => {
    const none = { shift: false, alt: false };
    expect(run({ box }, { is: "arrow", columns: 1, rows: 0, held: none }).box?.column).toBe(101);
    expect(run({ box }, { is: "arrow", columns: 0, rows: -1, held: { shift: false, alt: true } }).box?.row).toBe(90);
    expect(run({ box }, { is: "arrow", columns: 1, rows: 0, held: { shift: true, alt: false } }).box?.columns).toBe(
      201,
    );
    expect(run({}, { is: "arrow", columns: 1, rows: 0, held: none })).toEqual({});
  });

  it("is set and taken away from outside", () => {
    expect(run({}, { is: "set", box })).toEqual({ box });
    expect(run({ box }, { is: "set", box: undefined })).toEqual({});
  });

  it("does nothing while nothing is held", () => {
    expect(run({ box }, moved(500, 500))).toEqual({ box });
  });
});
