import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import { sampleWays } from "../../../../../test/sample-ways.ts";
import { partId } from "../../../../core/ids.ts";
import type { BodyOf, PartOf } from "../../../../record/parts.ts";
import { EditPart } from "../../../parts/fields/editing.tsx";
import { DraftBook } from "../../../record/draft-book.ts";
import { PlanFacts } from "./plan-facts.tsx";
import { RisksInWords } from "./risks-in-words.tsx";

function drawn(form: React.ReactNode, more: Partial<BodyOf<"plan">>): string {
  const body: BodyOf<"plan"> = { madeOn: "2024-03-04", options: [], chosen: "retreat", because: "", risksNamed: [] };
  const part: PartOf<"plan"> = { id: partId("plan-1"), kind: "plan", revision: 1, body: { ...body, ...more } };
  const book = new DraftBook({ put: async () => Promise.reject(new Error("nothing is recorded here")) });
  return renderToStaticMarkup(
    <EditPart part={part} title="Plan" draft={undefined} book={book}>
      {form}
    </EditPart>,
  );
}

describe("the plan page", () => {
  it("says which named risks the consent page does not print, and what it does instead", () => {
    const risks = (...risksNamed: string[]) => drawn(<RisksInWords told={sampleWays()} />, { risksNamed });
    expect(risks("Extrusion beyond the apex")).toMatch(
      /does not print “Extrusion beyond the apex”: a patient may not know apex, extrusion\. It leaves a line/,
    );
    expect(risks("A small tool may break")).toMatch(/does not print “A small tool may break”: a risk that it prints/);
    expect(risks("Subsequent deterioration")).toContain("it is hard to read");
    expect(risks("It may go dark.")).not.toContain("does not print");
  });

  it("offers one answer for a crown of which nothing is recorded, and keeps a plan that says not asked", () => {
    const options = (crowned?: "yes" | "notAsked") => {
      const html = drawn(<PlanFacts />, crowned === undefined ? {} : { crowned });
      const [field = ""] = html.slice(html.indexOf("Carries a crown")).match(/<select.*?<\/select>/s) ?? [];
      return [...field.matchAll(/<option([^>]*)>([^<]*)/g)].map(([, marks = "", word]) =>
        marks.includes("selected") ? `${word} *` : word,
      );
    };
    expect(options()).toEqual(["not recorded *", "yes", "no"]);
    expect(options("yes")).toEqual(["not recorded", "yes *", "no"]);
    expect(options("notAsked")).toEqual(["not recorded", "yes", "no"]);
  });
});
