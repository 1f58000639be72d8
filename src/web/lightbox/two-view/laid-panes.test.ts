import { describe, expect, it } from "vitest";
import { filmPoint } from "../kernels/film-point.ts";
import { LaidPanes } from "./laid-panes.ts";

const lies = {
  placement: { zoom: 1, centre: filmPoint(0, 0), orientation: { quarterTurns: 0, mirrored: false } },
  pane: { width: 10, height: 10 },
  corner: { x: 0, y: 0 },
  isOpen: true,
};

describe("where films lie", () => {
  it("is told to who watches, and is one object until something moves", () => {
    const laid = new LaidPanes();
    let told = 0;
    const stop = laid.watch(() => {
      told += 1;
    });
    laid.put("film-1", lies);
    const now = laid.now();
    expect([told, laid.now() === now, now.get("film-1")]).toEqual([1, true, lies]);
    laid.put("film-1", undefined);
    stop();
    laid.put("film-2", lies);
    expect([told, now.size, [...laid.now().keys()]]).toEqual([2, 1, ["film-2"]]);
  });
});
