import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { pointsOfCourse } from "../kernels/course-segments.ts";
import { filmPoint } from "../kernels/film-point.ts";
import type { ToolEvent, ToolWorld } from "./tool-step.ts";
import { after, endAt, moveTo, notYet, pressAt, pressTwiceAt, releaseAt, worldWith } from "./tool-world-for-tests.ts";
import { stepTrace, traceAtRest, tracePathsWanted } from "./trace-tool.ts";

const world = worldWith();
const blind = worldWith({ find: () => notYet });
const run = (events: readonly ToolEvent[], seen: ToolWorld = world) =>
  after(traceAtRest("dark"), events, (state, event) => stepTrace(state, event, seen));

describe("drawing a fragment", () => {
  const draw = (events: readonly ToolEvent[], seen: ToolWorld = world) =>
    after(traceAtRest("dark", "fragment"), events, (state, event) => stepTrace(state, event, seen));

  it("ends with its second place, along the bright line between", () => {
    const { state, effects } = draw([pressAt(10, 10), releaseAt(10, 10), moveTo(30, 40), pressAt(50, 90)]);
    expect(effects).toMatchObject([
      { do: "traced", as: "fragment", course: { anchors: [filmPoint(10, 10), filmPoint(50, 90)] } },
    ]);
    expect(state).toEqual({
      tool: "fragment",
      polarity: "bright",
      course: { anchors: [], segments: [] },
      ending: false,
    });
  });

  it("may be straight and short, and needs two places", () => {
    expect(draw([pressAt(10, 10, true), pressAt(14, 10, true)]).effects).toMatchObject([{ do: "traced" }]);
    const { effects } = draw([endAt(10, 10)]);
    expect(effects).toMatchObject([{ do: "say", words: expect.stringContaining("mark its top first") }]);
  });

  it("waits for its path", () => {
    const waiting = draw([pressAt(10, 10), pressAt(50, 90)], blind);
    expect(waiting.effects).toEqual([]);
    expect(stepTrace(waiting.state, { is: "pathsFound" }, world).effects).toMatchObject([{ do: "traced" }]);
  });
});

describe("tracing a canal", () => {
  it("records orifice to apex when it is ended with Enter", () => {
    const { state, effects } = run([pressAt(10, 10), releaseAt(10, 10), moveTo(40, 60), endAt(50, 90)]);
    expect(effects).toHaveLength(1);
    expect(effects[0]).toMatchObject({ do: "traced", course: { anchors: [filmPoint(10, 10), filmPoint(50, 90)] } });
    expect(state).toEqual(traceAtRest("dark"));
  });

  it("records the same when it is ended with a double press", () => {
    const { effects } = run([pressAt(10, 10), pressAt(50, 90), pressTwiceAt(50, 91)]);
    expect(effects).toMatchObject([{ do: "traced", course: { anchors: [filmPoint(10, 10), filmPoint(50, 90)] } }]);
  });

  it("goes through every anchor, in order, within a pixel or so of where it was put", () => {
    const free = [pressAt(10, 10, true), pressAt(20, 50, true), pressAt(40, 70, true), pressAt(50, 120, true)];
    const { effects } = run([...free, pressTwiceAt(50, 120)]);
    const [asked] = effects as { course: Parameters<typeof pointsOfCourse>[0] }[];
    expect(asked?.course.anchors).toEqual([
      filmPoint(10, 10),
      filmPoint(20, 50),
      filmPoint(40, 70),
      filmPoint(50, 120),
    ]);
    const points = asked === undefined ? [] : pointsOfCourse(asked.course);
    const rows = points.map(({ row }) => row);
    expect(rows).toEqual([...rows].sort((a, b) => a - b));
    for (const anchor of asked?.course.anchors ?? []) expect(points).toContainEqual(anchor);
  });

  it("shows the piece to the pointer along the ridge, or straight while Shift is held", () => {
    const snapped = run([pressAt(10, 10), moveTo(40, 60)]).state;
    expect(snapped.ahead).toMatchObject({ drawn: "snapped", points: expect.arrayContaining([filmPoint(40, 10)]) });
    const free = run([pressAt(10, 10), moveTo(40, 10, true)]).state;
    expect(free.ahead?.drawn).toBe("free");
    expect(free.ahead?.points?.every(({ row }) => row === 10)).toBe(true);
  });

  it("refuses in words to end with one place or none, and keeps what was marked", () => {
    const none = run([pressTwiceAt(10, 10)]);
    expect(none.effects).toMatchObject([{ do: "say", words: expect.stringContaining("one place") }]);
    const one = run([endAt(10, 10)]);
    expect(one.effects).toMatchObject([{ do: "say" }]);
    expect(one.state.course.anchors).toEqual([filmPoint(10, 10)]);
    expect(one.state.ending).toBe(false);
  });

  it("refuses in words a course of fewer than 4 points", () => {
    const { state, effects } = run([pressAt(10, 10, true), pressAt(14, 10, true), pressTwiceAt(14, 10)]);
    expect(effects).toMatchObject([{ do: "say", words: expect.stringContaining("fewer than 4 points") }]);
    expect(state).toEqual(traceAtRest("dark"));
  });

  it("takes back one anchor at a time", () => {
    const { state } = run([pressAt(10, 10), pressAt(20, 50), pressAt(40, 70), { is: "takenBack" }]);
    expect(state.course.anchors).toEqual([filmPoint(10, 10), filmPoint(20, 50)]);
    expect(state.ahead?.points?.[0]).toEqual(filmPoint(20, 50));
    const empty = run([pressAt(10, 10), { is: "takenBack" }, { is: "takenBack" }]).state;
    expect(empty.course.anchors).toEqual([]);
    expect(empty.ahead).toBeUndefined();
  });

  it("is away with Escape, without a trace in the record", () => {
    const { state, effects } = run([pressAt(10, 10), pressAt(20, 50), { is: "cancelled" }]);
    expect(state).toEqual(traceAtRest("dark"));
    expect(effects).toEqual([]);
  });

  it("asks for paths from its last anchor first", () => {
    const { state } = run([pressAt(10, 10), pressAt(20, 50)], blind);
    expect(tracePathsWanted(state)).toEqual([filmPoint(20, 50), filmPoint(10, 10)]);
  });

  it("waits for paths after it was ended, takes no more anchors, and is recorded once they are there", () => {
    const waiting = run([pressAt(10, 10), endAt(20, 50)], blind);
    expect(waiting.effects).toEqual([]);
    expect(waiting.state.ending).toBe(true);
    expect(stepTrace(waiting.state, pressAt(99, 99), blind).state).toBe(waiting.state);
    expect(stepTrace(waiting.state, { is: "pathsFound" }, blind).effects).toEqual([]);
    expect(stepTrace(waiting.state, { is: "pathsFound" }, world).effects).toMatchObject([{ do: "traced" }]);
  });

  it("can be left while it waits", () => {
    const waiting = run([pressAt(10, 10), endAt(20, 50)], blind).state;
    expect(stepTrace(waiting, { is: "cancelled" }, blind).state).toEqual(traceAtRest("dark"));
  });

  it("draws the piece to a resting pointer as soon as its paths are known", () => {
    const resting = run([pressAt(10, 10), moveTo(20, 50)], blind).state;
    expect(resting.ahead?.points).toBeUndefined();
    expect(stepTrace(resting, { is: "pathsFound" }, world).state.ahead?.points?.at(-1)).toEqual(filmPoint(20, 50));
  });

  it("never has more than one segment fewer than anchors, whatever is pressed", () => {
    const coordinate = fc.integer({ min: 0, max: 300 });
    const event: fc.Arbitrary<ToolEvent> = fc.oneof(
      fc.tuple(coordinate, coordinate, fc.boolean()).map(([column, row, free]) => pressAt(column, row, free)),
      fc.tuple(coordinate, coordinate).map(([column, row]) => moveTo(column, row)),
      fc.tuple(coordinate, coordinate).map(([column, row]) => endAt(column, row)),
      fc.constantFrom<ToolEvent>({ is: "takenBack" }, { is: "pathsFound" }, { is: "cancelled" }),
    );
    fc.assert(
      fc.property(fc.array(event, { maxLength: 40 }), fc.boolean(), (events, sees) => {
        const { state, effects } = run(events, sees ? world : blind);
        expect(state.course.segments).toHaveLength(Math.max(0, state.course.anchors.length - 1));
        for (const effect of effects)
          if (JSON.stringify(effect).includes('"traced"'))
            expect(effect).not.toMatchObject({ course: { segments: [{}, { points: undefined }] } });
      }),
    );
  });
});
