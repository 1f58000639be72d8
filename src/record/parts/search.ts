import { z } from "zod";
import { share } from "../../core/share.ts";
import { features } from "../../core/tooth/missed-canal/feature.ts";
import { lookFacts, lookKinds, lookResults } from "../../core/tooth/missed-canal/look.ts";
import { definePart } from "../part.ts";
import { canalName, day, line, mmBetween, words } from "../values.ts";

const look = z
  .strictObject({
    on: day,
    kind: z.enum(lookKinds),
    result: z.enum(lookResults).describe("seen or notSeen of a look; yes or no of a sign."),
    depthMm: mmBetween(0, 5).optional().describe("How deep a trough went, mm."),
    sensitivity: share.optional().describe("Share of teeth, 0 to 1."),
    specificity: share.optional().describe("Share of teeth, 0 to 1."),
    from: line.optional().describe("Where the person's own sensitivity and specificity come from."),
    note: line,
  })
  .superRefine(({ kind, result, depthMm }, { addIssue }) => {
    const accepted: readonly string[] = lookFacts[kind].sign ? ["yes", "no"] : ["seen", "notSeen"];
    if (!accepted.includes(result))
      addIssue({ code: "custom", path: ["result"], message: `is no result of ${kind}; ${accepted.join(" or ")} is` });
    if (depthMm !== undefined && kind !== "troughing")
      addIssue({ code: "custom", path: ["depthMm"], message: `is a depth of troughing, not of ${kind}` });
  });

/** The search for one canal or root that may hide in the tooth, look by look; a case has one for each. */
export const searchPart = definePart({
  kind: "search",
  version: 1,
  single: false,
  migrations: [],
  body: z.strictObject({
    feature: z.enum(features),
    population: line.optional().describe("The region whose series apply; all of them where absent."),
    wallKnownMm: mmBetween(0, 10).optional().describe("The wall where troughing would cut, mm."),
    lessWasNotEnough: words.optional().describe("Why films and the microscope were not enough for a CBCT."),
    looks: z.array(look).max(40),
    foundAs: canalName.optional().describe("The canal that it turned out to be, as Roots and canals names it."),
  }),
});
