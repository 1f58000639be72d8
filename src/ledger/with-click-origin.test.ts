import { expect, test } from "vitest";
import { sampleParts } from "../../test/sample-case.ts";
import { firstSettings } from "../record/settings.ts";
import { deriveLedger } from "./derive-ledger.ts";
import { withClickOrigin } from "./with-click-origin.ts";

const clickSigmaFrom = { exerciseId: "exercise-7", at: "2026-11-29T10:00:00.000Z", n: 120 };
const measured = { ...firstSettings, clickSigmaPx: 0.6, clickSigmaFrom };
const asked = {
  subject: "a sum",
  inputPaths: [
    { input: "points", record: "mark-1/points" },
    { input: "sigmaMm", record: "settings/clickSigmaPx" },
  ],
};

test("the exercise is named beside the error that it gave, and beside nothing else", () => {
  expect(withClickOrigin(asked, measured).inputPaths).toEqual([
    ...asked.inputPaths,
    { input: "sigmaMm", record: "exercise-7/answer/sigmaPx" },
  ]);
  expect(withClickOrigin(asked, firstSettings)).toBe(asked);
  const ownSigma = { inputPaths: [{ input: "sigmaMm", record: "mark-1/sigmaPx" }] };
  expect(withClickOrigin(ownSigma, measured)).toEqual(ownSigma);
});

test("entries of a case carry the measured error and name its exercise; assumed ones name the setting alone", () => {
  const parts = sampleParts().map((one) => {
    if (one.kind !== "mark" || one.body.shape !== "trace") return one;
    const { sigmaPx: _own, ...body } = one.body;
    return { ...one, body };
  });
  const source = { caseId: "case-sample", parts, at: clickSigmaFrom.at, known: () => undefined };
  const course = (settings: typeof firstSettings) =>
    deriveLedger({ ...source, settings }).find(({ subject }) => subject === "curvature of trace-1");
  const [before, after] = [course(firstSettings), course(measured)];
  const sigmaOf = (entry: typeof before) => Number(Reflect.get(Object(entry?.input), "sigmaMm"));
  expect(sigmaOf(after) / sigmaOf(before)).toBeCloseTo(0.6, 12);
  expect(after?.id).not.toBe(before?.id);
  const origins = (entry: typeof before) => entry?.inputPaths.filter(({ input }) => input === "sigmaMm");
  expect(origins(after)?.map(({ record }) => record)).toEqual(["settings/clickSigmaPx", "exercise-7/answer/sigmaPx"]);
  expect(origins(before)?.map(({ record }) => record)).toEqual(["settings/clickSigmaPx"]);
});
