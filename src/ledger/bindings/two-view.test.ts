import { describe, expect, it } from "vitest";
import { part, sampleParts } from "../../../test/sample-case.ts";
import { answer } from "../../core/topic.ts";
import type { LedgerEntry } from "../../record/ledger-entry.ts";
import type { BodyOf, Part } from "../../record/parts.ts";
import { firstSettings } from "../../record/settings.ts";
import { deriveLedger } from "../derive-ledger.ts";
import { calibrateBinding } from "./calibrate.ts";
import { twoViewBinding } from "./two-view.ts";

const straightFilm = sampleParts().find((one) => one.kind === "film");
if (straightFilm?.kind !== "film") throw new Error("the sample has a film");

const film = (id: string, change: Partial<BodyOf<"film">>): Part =>
  part("film", id, {
    ...straightFilm.body,
    horizontalAngleDeg: 0,
    uRunsTo: "distal",
    receptor: "turnsWithBeam",
    ...change,
  });

const noScale = {
  sourceFormat: "png" as const,
  sourceSha256: "ab".repeat(32),
  wasColour: false,
  lossy: false,
  inverted: false,
};

/** A canal that bends to buccal by 40 degrees on 5 mm, 0.05 mm a pixel, on a film under an angle. */
function trace(
  id: string,
  on: string,
  angleDeg: number,
  change: Partial<Extract<BodyOf<"mark">, { shape: "trace" }>> = {},
): Part {
  const a = (angleDeg * Math.PI) / 180;
  const points = Array.from({ length: 30 }, (_, index): [number, number] => {
    const s = 0.5 * index;
    const turn = (Math.min(Math.max(s - 8, 0), 3.49) / 5) * 1;
    const rest = Math.max(0, s - 11.49);
    const y = 5 * (1 - Math.cos(turn)) + rest * Math.sin(turn);
    const z = Math.min(s, 8) + 5 * Math.sin(turn) + rest * Math.cos(turn);
    return [300 + (y * Math.sin(a)) / 0.05, 100 + z / 0.05];
  });
  const anchors: [number, number][] = [points[0] ?? [0, 0], points.at(-1) ?? [0, 0]];
  return part("mark", id, {
    shape: "trace",
    film: on,
    canal: "DL",
    polarity: "dark",
    sigmaPx: 0.4,
    anchors,
    points,
    ...change,
  });
}
const spot = (id: string, on: string, what: string, at: [number, number]): Part =>
  part("mark", id, { shape: "spot", film: on, what, at });

const angled = (change: Partial<BodyOf<"film">> = {}): Part =>
  film("film-2", { horizontalAngleDeg: 25, takenOn: "2024-03-10", purpose: "angled", caption: "Shifted", ...change });
const pair = (change: Partial<BodyOf<"film">> = {}): Part[] => [
  film("film-1", {}),
  angled(change),
  trace("trace-1", "film-1", 0),
  trace("trace-2", "film-2", 25),
];

const derived = (parts: readonly Part[]): LedgerEntry[] =>
  deriveLedger(
    { caseId: "case-sample", parts, settings: firstSettings, at: "2024-10-01T10:00:00Z", known: () => undefined },
    [calibrateBinding, twoViewBinding],
  ).filter(({ topic }) => topic === "twoView");

describe("the course in space of a case's films", () => {
  it("is asked of a canal traced on two films under different angles, in their scales", () => {
    const [entry, ...others] = derived(pair());
    expect(others).toEqual([]);
    expect(entry?.subject).toBe("twoView of DL film-1 film-2");
    expect(entry?.output).toMatchObject({
      side: "buccal",
      matched: "byIndex",
      lengthMm: expect.closeTo(14.5, 1),
      curvature: { pruettDeg: expect.closeTo(40, 0) },
    });
    expect(entry?.input).toMatchObject({ receptor: "turnsWithBeam", sigmaMm: expect.closeTo(0.02, 9) });
    expect(entry?.output).toEqual(answer(twoViewBinding.topic, JSON.parse(JSON.stringify(entry?.input))));
  });

  it("names where each value came from", () => {
    const paths = derived(pair())[0]?.inputPaths ?? [];
    for (const [input, record] of [
      ["receptor", "film-1/receptor"],
      ["views[1].horizontalAngleDeg", "film-2/horizontalAngleDeg"],
      ["views[0].uRunsTo", "film-1/uRunsTo"],
      ["views[1].points", "trace-2/points"],
      ["sigmaMm", "trace-1/sigmaPx"],
    ])
      expect(paths).toContainEqual({ input, record });
    expect(paths.some(({ input, record }) => input === "views[0].points" && record.startsWith("ledger/"))).toBe(true);
  });

  it("takes spots of the same words on both films as landmarks, and the vertical angle where it is known", () => {
    const parts = [
      ...pair({ verticalAngleDeg: 5 }),
      spot("spot-1", "film-1", "buccal cusp", [310, 40]),
      spot("spot-2", "film-2", "buccal cusp", [350, 40]),
      spot("spot-3", "film-2", "seen once", [200, 40]),
    ];
    const [entry] = derived(parts);
    expect(entry?.input).toMatchObject({
      reference: "buccal cusp",
      views: [
        { landmarks: { "buccal cusp": [15.5, 2] } },
        { verticalAngleDeg: 5, landmarks: { "buccal cusp": [17.5, 2] } },
      ],
    });
    expect(JSON.stringify(entry?.input)).not.toContain("seen once");
    expect(entry?.output).toMatchObject({ liesSide: "lingual" });
  });

  it("takes the pair of one time with the largest shift, and every other film that fits it", () => {
    const third = [film("film-3", { horizontalAngleDeg: 10, takenOn: "2024-03-12" }), trace("trace-3", "film-3", 10)];
    const late = [film("film-4", { horizontalAngleDeg: -40, takenOn: "2025-03-12" }), trace("trace-4", "film-4", -40)];
    const subjects = (parts: Part[]) => derived(parts).map(({ subject }) => subject);
    expect(subjects([...pair(), ...late])).toEqual(["twoView of DL film-1 film-2"]);
    expect(subjects([...pair(), ...third, ...late])).toEqual(["twoView of DL film-1 film-2 film-3"]);
    const of = (change: Partial<BodyOf<"film">>) => [film("film-3", { horizontalAngleDeg: 10, ...change }), third[1]];
    for (const change of [
      { receptor: "fixed" as const },
      { uRunsTo: "unknown" as const },
      { takenOn: "2024-09-12" },
      { technical: noScale },
    ])
      expect(subjects([...pair(), ...of(change)].filter((one) => one !== undefined))).toEqual([
        "twoView of DL film-1 film-2",
      ]);
  });

  it("asks nothing where one film, one angle, another time or no canal is all there is", () => {
    const one = [film("film-1", {}), trace("trace-1", "film-1", 0)];
    expect(derived(one)).toEqual([]);
    expect(derived(pair({ horizontalAngleDeg: 0 }))).toEqual([]);
    expect(derived(pair({ takenOn: "2024-06-10" }))).toEqual([]);
    expect(derived([...one, angled(), trace("trace-2", "film-2", 25, { canal: "D" })])).toEqual([]);
    const { horizontalAngleDeg: _, ...unknown } = film("film-2", {}).body as BodyOf<"film">;
    expect(derived([...one, part("film", "film-2", unknown), trace("trace-2", "film-2", 25)])).toEqual([]);
  });

  it("asks nothing of courses of different things, and has the topic name a stretch that one film lacks", () => {
    const short = (points: number): Part[] => {
      const whole = trace("trace-2", "film-2", 25);
      if (whole.kind !== "mark" || whole.body.shape !== "trace") throw new Error("a trace");
      return [
        ...pair().slice(0, 3),
        part("mark", "trace-2", { ...whole.body, points: whole.body.points.slice(0, points) }),
      ];
    };
    expect(derived(short(12))).toEqual([]);
    expect(derived(short(21))[0]?.refused?.join()).toContain("trace the same stretch of canal on both");
  });

  it("an unknown receptor stays unknown", () => {
    const parts = pair({ receptor: "unknown" }).map((one) =>
      one.id === "film-1" ? film("film-1", { receptor: "unknown" }) : one,
    );
    expect(derived(parts)[0]?.input).toMatchObject({ receptor: "unknown" });
  });

  it.each([
    ["the side to which a film runs", { uRunsTo: "unknown" as const }, 'right on the film "Shifted"; say it in'],
    ["the same receptor", { receptor: "fixed" as const }, "held in two ways"],
    ["a scale", { technical: noScale }, 'film "Shifted" has no scale'],
  ])("says what is missing: %s", (_, change, why) => {
    const [entry] = derived(pair(change));
    expect(entry?.output).toBeUndefined();
    expect(entry?.refused?.join()).toContain(why);
    expect(entry?.inputPaths.map(({ record }) => record)).toEqual(["trace-1/points", "trace-2/points"]);
  });
});

describe("the films that a person chose for a canal", () => {
  const pairing = (change: Partial<BodyOf<"pairing">> = {}): Part =>
    part("pairing", "pairing-1", { canal: "DL", films: ["film-2", "film-1"], ...change });
  const third = [film("film-3", { horizontalAngleDeg: -20, takenOn: "2025-03-12" }), trace("trace-3", "film-3", -20)];

  it("are asked, in their order and of whatever time, in place of those that would be taken", () => {
    const films = ["film-3", "film-1"];
    const found = derived([...pair(), ...third, pairing({ films })]);
    expect(found.map(({ subject }) => subject)).toEqual(["twoView of DL film-3 film-1"]);
    expect(found[0]?.input).toMatchObject({ views: [{ horizontalAngleDeg: -20 }, { horizontalAngleDeg: 0 }] });
    expect(found[0]?.output).toMatchObject({ side: "buccal" });
    expect(found[0]?.inputPaths).toContainEqual({ input: "views", record: "pairing-1/films" });
    expect(derived([...pair(), pairing(), pairing({ canal: "D" })]).map(({ subject }) => subject)).toEqual([
      "twoView of DL film-2 film-1",
      "twoView of D film-2 film-1",
    ]);
  });

  it("carry levels along the traces, the sureness of angles, and where the tube stood", () => {
    const said = { levels: [[0.5, 0.5]], angleSigmaDeg: 3, sourceToToothMm: 300, toothToDetectorMm: 8 };
    const [entry] = derived([...pair(), pairing(said)]);
    // 0.05 mm a pixel; the straight film shows the canal 13.9 mm deep, with no bend.
    const deep = 8 + 5 * Math.sin(0.698) + 3.01 * Math.cos(0.698);
    expect(entry?.input).toMatchObject({
      angleSigmaDeg: 3,
      units: "toothPlaneMm",
      geometry: { sourceToToothMm: 300, toothToDetectorMm: 8 },
      levels: [[expect.any(Number), expect.closeTo(deep / 2, 1)]],
    });
    expect(entry?.output).toMatchObject({ matched: "byLevel", side: "buccal" });
    for (const field of ["levels", "angleSigmaDeg", "sourceToToothMm", "toothToDetectorMm"])
      expect(entry?.inputPaths.map(({ record }) => record)).toContain(`pairing-1/${field}`);
  });

  it("count in millimetres of the detector where that is all that the files say", () => {
    const technical = { ...noScale, detectorSpacingMm: [0.05, 0.05] as [number, number] };
    const parts = pair({ technical }).map((one) => (one.id === "film-1" ? film("film-1", { technical }) : one));
    const place = { sourceToToothMm: 300, toothToDetectorMm: 8 };
    expect(derived([...parts, pairing(place)])[0]?.input).toMatchObject({ units: "detectorMm" });
    expect(derived([...parts, pairing({ sourceToToothMm: 300 })])[0]?.input).toMatchObject({ units: "toothPlaneMm" });
    const known = part("mark", "known-1", {
      ...{ shape: "knownLength", film: "film-2", object: "gauge", lengthMm: 10, from: [0, 0], to: [0, 200] },
    });
    expect(derived([...parts, known, pairing(place)])[0]?.refused?.join()).toContain("that of the detector");
  });

  it.each([
    ["a film that is gone", { films: ["film-1", "film-9"] }, "no longer stands"],
    ["a film without a trace", { films: ["film-1", "film-4"] }, 'DL is not traced on the film "Late"'],
    ["a film of unknown angle", { films: ["film-1", "film-5"] }, 'angle on the film "Unsaid" is not known'],
    ["a trace from the apex", { films: ["film-1", "film-6"] }, 'the film "Turned" runs from the apex; turn the trace'],
    ["equal angles", { films: ["film-1", "film-7"] }, "both films show the same"],
  ])("say what is missing: %s", (_, change, why) => {
    const { horizontalAngleDeg: _angle, ...unsaid } = film("film-5", { caption: "Unsaid" }).body as BodyOf<"film">;
    const turned = trace("trace-6", "film-6", 25);
    if (turned.kind !== "mark" || turned.body.shape !== "trace") throw new Error("a trace");
    const parts = [
      ...pair(),
      film("film-4", { caption: "Late" }),
      ...[part("film", "film-5", unsaid), trace("trace-5", "film-5", 25)],
      film("film-6", { caption: "Turned", horizontalAngleDeg: 25 }),
      part("mark", "trace-6", { ...turned.body, points: [...turned.body.points].reverse() }),
      ...[film("film-7", { horizontalAngleDeg: 0.5 }), trace("trace-7", "film-7", 0.5)],
    ];
    const found = derived([...parts, pairing(change)]);
    expect(found).toHaveLength(1);
    expect(found[0]?.refused?.join()).toContain(why);
  });

  it("of two films that run against each other, the tooth's row says which trace is turned", () => {
    const turned = trace("trace-2", "film-2", 25);
    if (turned.kind !== "mark" || turned.body.shape !== "trace") throw new Error("a trace");
    const back = part("mark", "trace-2", { ...turned.body, points: [...turned.body.points].reverse() });
    const sample = sampleParts().find((one) => one.kind === "case");
    if (sample?.kind !== "case") throw new Error("the sample has a case");
    const told = (tooth: string) =>
      derived([part("case", "case-1", { ...sample.body, tooth }), ...pair().slice(0, 3), back])[0]?.refused?.join();
    expect(told("46")).toContain('the trace on the film "Shifted" runs from the apex');
    expect(told("26")).toContain('the trace on the film "Length film" runs from the apex');
  });
});
