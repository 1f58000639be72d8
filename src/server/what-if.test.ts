import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type SampleBench, sampleBench } from "../../test/sample-bench.ts";
import { lidocaine, surgery, visitParts } from "../ledger/visit-sums/visit-for-tests.ts";
import { partsOf } from "../record/parts.ts";
import type { CaseView, RefusalView, WhatIfView } from "./api.ts";

let one: SampleBench;
let caseId: string;
const drop = { solvent: "chloroform", volumeMl: 0.1, atMin: 0 } as const;
const [about, visit] = visitParts({ solvent: [drop], clinic: { room: surgery } });
const body = visit === undefined ? undefined : partsOf([visit], "visit")[0]?.body;

beforeAll(async () => {
  one = await sampleBench();
  const made = await one.ask({ method: "POST", url: "/api/cases", payload: { case: about?.body } });
  caseId = made.json<CaseView>().caseId;
  await one.ask({
    ...{ method: "POST", url: `/api/cases/${caseId}/gestures` },
    payload: { words: "Visit begun", operations: [laid({})] },
  });
});
afterAll(() => one.close());

function laid(more: object, baseRevision = 0) {
  return { op: "put", id: "visit-1", kind: "visit", baseRevision, body: { ...body, ...more } };
}
const whatIf = (asks: readonly object[], of = caseId) =>
  one.ask({ method: "POST", url: `/api/cases/${of}/what-if`, payload: { asks } });
const solvent = (...operations: object[]) => ({ topic: "solvent", subject: "solvent of visit-1", operations });

describe("questions what if, over the API", () => {
  it("answer in their order, and leave the case, its ledger and its history as they were", async () => {
    const state = async () => (await one.ask({ url: `/api/cases/${caseId}` })).json<CaseView>();
    const before = await state();
    const reply = await whatIf([
      solvent(),
      solvent(laid({ clinic: undefined })),
      {
        topic: "anaesthetic",
        subject: "anaesthetic of visit-1",
        operations: [laid({ nextAnaesthetic: { ...lidocaine, cartridges: 1 } })],
      },
    ]);
    expect(reply.statusCode).toBe(200);
    const { answers } = reply.json<WhatIfView>();
    expect(answers.map(({ topic }) => topic)).toEqual(["solvent", "solvent", "anaesthetic"]);
    expect(answers[0]?.output).toEqual(before.ledger.find((entry) => entry.subject === "solvent of visit-1")?.output);
    expect(answers[1]?.gap).toContain("the room was not set");
    expect(answers[2]?.output).toMatchObject({ planned: { wanted: { mg: 36, overLimit: false } } });
    expect(await state()).toEqual(before);
  });

  it.each([
    ["no question", () => whatIf([]), 400, "asks"],
    ["thirteen", () => whatIf(Array.from({ length: 13 }, () => solvent())), 400, "asks"],
    ["a topic that rests on others", () => whatIf([{ ...solvent(), topic: "plan" }]), 400, "asks[0].topic"],
    ["an operation that is none", () => whatIf([solvent({ op: "put", id: "visit-1" })]), 400, "asks[0].operations[0]"],
    [
      "a negative dose",
      () => whatIf([solvent(laid({ solvent: [{ ...drop, volumeMl: -1 }] }))]),
      400,
      "solvent[0].volumeMl",
    ],
  ])("refuse %s with its path", async (_name, asked, status, path) => {
    const reply = await asked();
    const { code, faults } = reply.json<RefusalView>();
    expect({ status: reply.statusCode, code }).toEqual({ status, code: "input.invalid" });
    expect(faults.map((fault) => fault.path).join(" ")).toContain(path);
  });

  it("refuse a case that is not there", async () => {
    const reply = await whatIf([solvent()], "case-unknown");
    expect(reply.json<RefusalView>().code).toBe("record.notFound");
  });
});
