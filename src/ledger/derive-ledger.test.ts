import { describe, expect, it, vi } from "vitest";
import { part, sampleParts, samplePoints } from "../../test/sample-case.ts";
import { answer } from "../core/topic.ts";
import { topicNamed, topics } from "../core/topics.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";
import { firstSettings } from "../record/settings.ts";
import { bindings } from "./bindings.ts";
import { deriveLedger, deriveLedgerBy, type LedgerSource, outcomesOf, type SumsToDo } from "./derive-ledger.ts";

const at = "2024-10-01T10:00:00Z";
const source = (change: Partial<LedgerSource> = {}): LedgerSource => ({
  ...{ caseId: "case-sample", parts: sampleParts(), settings: firstSettings, at, known: () => undefined },
  ...change,
});
const named = (entries: readonly LedgerEntry[], subject: string): LedgerEntry => {
  const found = entries.find((entry) => entry.subject === subject);
  if (found === undefined) throw new Error(`${subject} is not in the ledger`);
  return found;
};

describe("the ledger", () => {
  it("has one binding for each topic of the register but those that no case asks", () => {
    const asked = topics.filter(({ asked: by }) => by !== "onTheShell" && by !== "byExercise");
    expect(bindings.map(({ topic }) => topic.name).sort()).toEqual(asked.map(({ name }) => name).sort());
  });

  it("holds for each entry just what its topic answers to the entry's own input", () => {
    for (const { topic, input, output } of deriveLedger(source())) {
      expect(output).toBeDefined();
      expect(output).toEqual(answer(topicNamed(topic), JSON.parse(JSON.stringify(input))));
    }
  });

  it("hands over only the sums that are not known, and fails where one gets no answer", async () => {
    const before = new Map(deriveLedger(source()).map((entry) => [entry.id as string, entry]));
    const handed: string[] = [];
    const doing = async (sums: SumsToDo) => {
      handed.push(...sums.inputs.map(() => sums.topic.name));
      return outcomesOf(sums);
    };
    const known = (id: string) => before.get(id);
    await deriveLedgerBy(doing, source({ known }));
    expect(handed).toEqual([]);
    const settings = { ...firstSettings, stopShortMm: 1 };
    const entries = await deriveLedgerBy(doing, source({ known, settings }));
    expect(handed).toEqual(["workingLength"]);
    expect(entries).toEqual(deriveLedger(source({ settings })));
    await expect(deriveLedgerBy(async () => [], source())).rejects.toThrow("no answer about tooth");
  });

  it("measures the sample's canal: straight 10 mm, then 60 degrees on a radius of 5 mm (15.236 mm)", () => {
    const { output, inputPaths } = named(deriveLedger(source()), "curvature of trace-1");
    expect(output).toMatchObject({
      lengthMm: expect.closeTo(15.236, 1),
      pruettDeg: expect.closeTo(60, 0),
      pruettRadiusMm: expect.closeTo(5, 1),
    });
    expect(inputPaths.map((path) => path.record)).toContain("trace-1/points");
    expect(inputPaths.some((path) => path.record.startsWith("ledger/"))).toBe(true);
  });

  it("sets the apex locator's reading of that canal beside the film's length", () => {
    const { input, inputPaths } = named(deriveLedger(source()), "workingLength of trace-1");
    expect(input).toMatchObject({ locatorMm: 15.4, stopShortMm: 0.5, curved: true, openApex: false });
    expect(inputPaths).toContainEqual({ input: "locatorMm", record: "visit-1/canals/0/locatorMm" });
  });

  it("takes a working length only from a course that begins at the reference point", () => {
    const change = (purpose: "diagnostic" | "workingLength", from?: "orifice" | "referencePoint") =>
      deriveLedger(
        source({
          parts: sampleParts().map((one) => {
            if (one.kind === "film") return { ...one, body: { ...one.body, purpose } };
            if (one.kind !== "mark" || one.body.shape !== "trace" || from === undefined) return one;
            return { ...one, body: { ...one.body, from } };
          }),
        }),
      ).some((entry) => entry.topic === "workingLength");
    expect([change("workingLength"), change("diagnostic")]).toEqual([true, false]);
    expect([change("workingLength", "orifice"), change("diagnostic", "referencePoint")]).toEqual([false, true]);
  });

  it("gives no stop where the findings call the apex open", () => {
    const findings = part("findings", "findings-1", {
      takenOn: "2024-03-04",
      history: {
        spontaneousPain: "no",
        painToCold: "no",
        painToHeat: "no",
        relievedByCold: "no",
        painOnBiting: "no",
        trauma: "no",
        recentOnset: "no",
      },
      teeth: [
        {
          tooth: "26",
          role: "tooth",
          cold: { reply: "notDone" },
          heat: { reply: "notDone" },
          electric: "notDone",
          percussion: "none",
          palpation: "none",
          bite: "none",
          mobility: 0,
          probingMm: {},
        },
      ],
      seen: { swelling: "none", sinusTract: "none", caries: "none", crack: "none", restoration: "", fever: "no" },
      onFilm: {
        ligament: "normal",
        lamina: "intact",
        lucency: "none",
        sclerosis: "no",
        resorption: "none",
        apex: "open",
        calcified: "no",
        earlierFilling: "none",
      },
      note: "",
    });
    const entry = named(deriveLedger(source({ parts: [...sampleParts(), findings] })), "workingLength of trace-1");
    expect(entry.input).not.toHaveProperty("stopShortMm");
    expect(entry.output).not.toHaveProperty("recommendedMm");
  });

  it("computes nothing that is known, and names the same sum by the same id", () => {
    const first = deriveLedger(source());
    const known = vi.fn((id: string) => first.find((entry) => entry.id === id));
    const second = deriveLedger(source({ known, at: "2030-01-01T00:00:00Z" }));
    expect(second).toEqual(first);
    expect(known).toHaveBeenCalledTimes(first.length);
  });

  it("gives exactly the sums that depend on a changed input new ids", () => {
    const before = deriveLedger(source());
    const moved = samplePoints().map(([u, v], index): [number, number] => [u, index === 0 ? v - 20 : v]);
    const parts = sampleParts().map((one) =>
      one.kind === "mark" && one.body.shape === "trace" ? { ...one, body: { ...one.body, points: moved } } : one,
    );
    const after = deriveLedger(source({ parts }));
    const changed = after.filter((entry) => !before.some((one) => one.id === entry.id)).map(({ subject }) => subject);
    expect(changed.sort()).toEqual(["curvature of trace-1", "difficulty of about", "workingLength of trace-1"]);
  });

  it("gives a course on a film without a scale its angles and says why it has no length; a known length gives one", () => {
    const parts = sampleParts().map((one) => {
      if (one.kind !== "film") return one;
      const { pixelSpacingMm: _spacing, calibrationType: _type, ...technical } = one.body.technical;
      return { ...one, body: { ...one.body, technical } };
    });
    const bare = deriveLedger(source({ parts }));
    expect(named(bare, "calibrate of film-1").output).toBeUndefined();
    const { output } = named(bare, "curvature of trace-1");
    expect(output).toMatchObject({ pruettDeg: expect.closeTo(60, 0) });
    expect(output).not.toHaveProperty("lengthMm");
    expect(named(bare, "workingLength of trace-1").refused).toEqual(["the course of this canal has no length yet"]);
    const gauge = part("mark", "gauge-1", {
      shape: "knownLength",
      film: "film-1",
      object: "gauge",
      lengthMm: 10,
      from: [100, 100],
      to: [100, 300],
    });
    expect(named(deriveLedger(source({ parts: [...parts, gauge] })), "curvature of trace-1").output).toHaveProperty(
      "lengthMm",
    );
  });
});
