import { describe, expect, it } from "vitest";
import { filmPoint } from "../kernels/film-point.ts";
import { axisAtRest, stepAxis } from "./axis-tool.ts";
import { outlineAtRest, stepOutline } from "./outline-tool.ts";
import type { ToolEvent } from "./tool-step.ts";
import { after, endAt, moveTo, pressAt, pressTwiceAt, releaseAt, worldWith } from "./tool-world-for-tests.ts";
import { isBusy, isMarking, pathsWanted, stepTool, toolAtRest, tools } from "./tools.ts";
import { stepTwoPoint, twoPointAtRest } from "./two-point-tool.ts";
import { stepWindow, windowAtRest } from "./window-tool.ts";

const world = worldWith();
const measured = { do: "measured", as: "distance", from: filmPoint(10, 10), to: filmPoint(60, 10) };

describe("a known length or a distance", () => {
  const run = (events: readonly ToolEvent[]) =>
    after(twoPointAtRest("distance"), events, (state, event) => stepTwoPoint(state, event, world));

  it("is measured by a drag", () => {
    expect(run([pressAt(10, 10), moveTo(30, 10), releaseAt(60, 10)]).effects).toEqual([measured]);
  });

  it("is measured by two presses", () => {
    const events = [pressAt(10, 10), releaseAt(11, 10), moveTo(30, 10), pressAt(60, 10), releaseAt(60, 10)];
    expect(run(events).effects).toEqual([measured]);
  });

  it("is measured with Enter at the crosshair, twice", () => {
    expect(run([endAt(10, 10), endAt(60, 10)]).effects).toEqual([measured]);
  });

  it("is nothing where both places are the same", () => {
    expect(run([pressAt(10, 10), releaseAt(10, 10), pressAt(11, 11)]).effects).toEqual([]);
  });

  it("is taken back and left", () => {
    expect(run([pressAt(10, 10), { is: "takenBack" }]).state).toEqual({ tool: "distance" });
    expect(run([pressAt(10, 10), { is: "cancelled" }]).state).toEqual({ tool: "distance" });
  });
});

describe("crown and root", () => {
  const run = (events: readonly ToolEvent[]) =>
    after(axisAtRest, events, (state, event) => stepAxis(state, event, world));
  const parted = { do: "parted", crown: filmPoint(0, 0), level: filmPoint(5, 80), apex: filmPoint(0, 200) };

  it("are cusp, level and apex, by three presses or with Enter at the crosshair", () => {
    const presses = [pressAt(0, 0), releaseAt(0, 0), moveTo(2, 40), pressAt(5, 80), pressAt(0, 200)];
    expect(run(presses)).toEqual({ state: axisAtRest, effects: [parted] });
    expect(run([endAt(0, 0), endAt(5, 80), endAt(0, 200)]).effects).toEqual([parted]);
  });

  it("take a place back, leave with Escape, and pass over a place that is marked twice", () => {
    const begun = [pressAt(0, 0), pressAt(9, 9)];
    expect(run([...begun, { is: "takenBack" }]).state.places).toEqual([filmPoint(0, 0)]);
    expect(run([...begun, { is: "cancelled" }]).state).toEqual(axisAtRest);
    expect(run([...begun, { is: "takenBack" }, pressAt(5, 80), pressAt(6, 80), pressAt(0, 200)]).effects).toEqual([
      parted,
    ]);
  });
});

describe("an outline", () => {
  const run = (events: readonly ToolEvent[]) =>
    after(outlineAtRest, events, (state, event) => stepOutline(state, event, world));
  const corners = [
    pressAt(0, 0),
    releaseAt(0, 0),
    pressAt(50, 0),
    releaseAt(50, 0),
    pressAt(50, 50),
    releaseAt(50, 50),
  ];
  const outlined = { do: "outlined", points: [filmPoint(0, 0), filmPoint(50, 0), filmPoint(50, 50)] };

  it("ends with a press on its first corner, with a double press, and with Enter", () => {
    expect(run([...corners, pressAt(2, 1)]).effects).toEqual([outlined]);
    expect(run([...corners, pressTwiceAt(50, 50)]).effects).toEqual([outlined]);
    expect(run([...corners, endAt(50, 50)]).effects).toEqual([outlined]);
  });

  it("is swept in one go while the button is held, and ends where it began", () => {
    const circle = Array.from({ length: 60 }, (_, index) => {
      const angle = (index / 60) * 2 * Math.PI;
      return moveTo(100 + 40 * Math.cos(angle), 100 + 40 * Math.sin(angle));
    });
    const { effects, state } = run([pressAt(140, 100), ...circle, releaseAt(140, 99)]);
    expect(effects).toHaveLength(1);
    const [asked] = effects as { points: { column: number; row: number }[] }[];
    expect(asked?.points.length).toBeGreaterThan(20);
    for (const { column, row } of asked?.points ?? []) expect(Math.hypot(column - 100, row - 100)).toBeCloseTo(40, 6);
    expect(state).toEqual(outlineAtRest);
  });

  it("refuses in words to close with two corners and keeps them", () => {
    const { effects, state } = run([pressAt(0, 0), releaseAt(0, 0), pressAt(50, 0), pressTwiceAt(50, 0)]);
    expect(effects).toMatchObject([{ do: "say", words: expect.stringContaining("fewer than 3 corners") }]);
    expect(state.points).toHaveLength(2);
  });

  it("takes back a corner and leaves with Escape", () => {
    expect(run([...corners, { is: "takenBack" }]).state.points).toHaveLength(2);
    expect(run([...corners, { is: "cancelled" }]).state).toEqual(outlineAtRest);
  });
});

describe("the grey window", () => {
  const run = (events: readonly ToolEvent[]) =>
    after(windowAtRest, events, (state, event) => stepWindow(state, event, world));

  it("follows the drag and is a change only at its end", () => {
    const under = run([pressAt(100, 100), moveTo(160, 100)]);
    expect(under.effects).toEqual([]);
    expect(under.state.drag?.now.width).toBeGreaterThan(1000);
    expect(stepWindow(under.state, releaseAt(160, 100), world).effects).toMatchObject([
      { do: "windowed", window: under.state.drag?.now },
    ]);
  });

  it("is no change after a press alone or after Escape", () => {
    expect(run([pressAt(100, 100), releaseAt(100, 100)]).effects).toEqual([]);
    expect(run([pressAt(100, 100), moveTo(160, 100), { is: "cancelled" }, releaseAt(160, 100)]).effects).toEqual([]);
  });
});

describe("the tools", () => {
  it("have a key each, none twice", () => {
    expect(new Set(tools.map(({ key }) => key)).size).toBe(tools.length);
  });

  it("are idle when they are taken up, and want no paths", () => {
    for (const { tool } of tools) {
      const state = toolAtRest(tool, "dark");
      expect(state.tool).toBe(tool);
      expect(isBusy(state)).toBe(false);
      expect(pathsWanted(state)).toEqual([]);
    }
  });

  it("are busy from the first press until Escape, the spot never", () => {
    for (const { tool } of tools) {
      const { state } = stepTool(toolAtRest(tool, "dark"), pressAt(10, 10), world);
      expect(isBusy(state)).toBe(!["spot", "apex", "fillingEnd", "level"].includes(tool));
      expect(isBusy(stepTool(state, { is: "cancelled" }, world).state)).toBe(false);
    }
  });

  it.each(["spot", "apex", "fillingEnd", "level"] as const)("mark a place as %s with a press or with Enter", (tool) => {
    const spotted = [{ do: "spotted", as: tool, at: filmPoint(3, 4) }];
    expect(stepTool({ tool }, pressAt(3, 4), world).effects).toEqual(spotted);
    expect(stepTool({ tool }, endAt(3, 4), world).effects).toEqual(spotted);
    expect(stepTool({ tool }, moveTo(3, 4), world).effects).toEqual([]);
  });

  it("measure a wall as a distance is measured", () => {
    const { state } = stepTool(toolAtRest("wall", "dark"), pressAt(10, 10), world);
    expect(stepTool(state, pressAt(30, 10), world).effects).toEqual([
      { do: "measured", as: "wall", from: filmPoint(10, 10), to: filmPoint(30, 10) },
    ]);
  });

  it("know which of them mark", () => {
    expect(tools.filter(({ tool }) => !isMarking(tool)).map(({ tool }) => tool)).toEqual(["move", "window"]);
  });

  it("ask for paths along the lines that the tracing follows", () => {
    const { state } = stepTool(toolAtRest("trace", "bright"), pressAt(10, 10), world);
    expect(pathsWanted(state)).toEqual([{ from: filmPoint(10, 10), polarity: "bright" }]);
  });
});
