import { describe, expect, it } from "vitest";
import { type BodyOf, partsOf } from "../record/parts.ts";
import { firstSettings } from "../record/settings.ts";
import { outcomesOf, type SumsToDo } from "./derive-ledger.ts";
import { asksOfIrrigant, irrigantComes } from "./irrigant-ahead.ts";
import { visitEntries, visitParts } from "./visit-sums/visit-for-tests.ts";
import { whatIfAnswers } from "./what-if-answers.ts";

type Row = BodyOf<"visit">["irrigation"][number];
const row = (solution: Row["solution"], percent: number | undefined, canal: string | undefined): Row => ({
  ...{ solution, volumeMl: 5, minutes: 1, activated: "no" },
  ...(percent === undefined ? {} : { percent }),
  ...(canal === undefined ? {} : { canal }),
});
const bleach = (canal?: string): Row => row("sodium hypochlorite", 3, canal);
const chlorhexidine = (canal?: string): Row => row("chlorhexidine", 2, canal);
const water = (canal?: string): Row => row("sterile water", undefined, canal);

/** A visit of two canals with these rows, as a question about a next row finds it. */
function visitWith(irrigation: readonly Row[]) {
  const canals = ["MB", "DB"].map((canal) => ({
    ...{ canal, state: "shaped" as const, patency: "notTried" as const, reference: "" },
  }));
  const parts = visitParts({ irrigation: [...irrigation], canals });
  const visit = partsOf(parts, "visit")[0]?.body;
  if (visit === undefined) throw new Error("there is a visit");
  return { parts, asked: { visitId: "visit-1", revision: 1, visit } };
}

async function comes(stands: readonly Row[], next: Row) {
  const { parts, asked } = visitWith(stands);
  const doSums = async (sums: SumsToDo) => outcomesOf(sums);
  const answers = await whatIfAnswers(doSums, { parts, settings: firstSettings }, asksOfIrrigant(asked, next));
  const { clashes, why, cautions } = irrigantComes(answers, visitEntries(parts), "visit-1");
  return { pairs: clashes.map(({ first, second }) => `${first}, ${second}`), why, cautions };
}
const pair = "sodium hypochlorite, chlorhexidine";

describe("what an irrigant would meet", () => {
  it("is asked of each canal that it reaches, and of those that no row names", () => {
    const subjects = (rows: readonly Row[], next: Row) =>
      asksOfIrrigant(visitWith(rows).asked, next).map(({ subject }) => subject.slice("irrigation of visit-1".length));
    expect(subjects([bleach()], chlorhexidine())).toEqual([""]);
    expect(subjects([bleach("MB")], chlorhexidine("DB"))).toEqual([" DB"]);
    expect(subjects([bleach("MB")], chlorhexidine())).toEqual(["", " MB"]);
    expect(subjects([bleach("MB"), water("DB")], chlorhexidine())).toEqual([" MB", " DB"]);
  });

  it("is told in the canals that no row names, where a rinse of another canal lay between", async () => {
    expect(await comes([bleach(), water("MB")], chlorhexidine())).toMatchObject({ pairs: [pair], why: undefined });
    expect(await comes([bleach(), water()], chlorhexidine())).toMatchObject({ pairs: [], why: undefined });
  });

  it("is told of a canal also where the same two met in another one before", async () => {
    const inDistal = [bleach("DB"), chlorhexidine("DB")];
    expect((await comes([...inDistal, bleach("MB")], chlorhexidine("MB"))).pairs).toEqual([pair]);
    expect((await comes([...inDistal, bleach("MB")], water("MB"))).pairs).toEqual([]);
  });

  it("is told again where the same two meet once more in one canal, and not where nothing new comes", async () => {
    const met = [bleach("MB"), chlorhexidine("MB")];
    expect((await comes([...met, water("MB"), bleach("MB")], chlorhexidine("MB"))).pairs).toEqual([pair]);
    expect((await comes(met, water("MB"))).pairs).toEqual([]);
  });

  it("of a canal that is named for the first time is what comes, not what stood in all", async () => {
    const came = await comes([bleach(), chlorhexidine()], water("MB"));
    expect(came).toMatchObject({ pairs: [], why: undefined });
    expect(came.cautions.filter((caution) => /^Steps/.test(caution))).toEqual([]);
  });
});
