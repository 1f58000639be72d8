import { missedCanalTopic } from "../../core/tooth/missed-canal-topic.ts";
import type { InputPath } from "../../record/ledger-entry.ts";
import { type PartOf, partsOf, thePart } from "../../record/parts.ts";
import type { Binding, Question } from "../binding.ts";

type Search = PartOf<"search">;
type Look = Search["body"]["looks"][number];

/** How likely each canal is that somebody searches for; a case without a search asks nothing. */
export const missedCanalBinding: Binding = {
  topic: missedCanalTopic,
  ask: ({ parts }) => {
    const about = thePart(parts, "case");
    return about === undefined ? [] : partsOf(parts, "search").map((search) => chanceOf(search, about));
  },
};

function chanceOf({ id, body }: Search, about: PartOf<"case">): Question {
  const { feature, looks } = body;
  const optional = written({
    population: body.population,
    wallKnownMm: body.wallKnownMm,
    lessWasNotEnough: body.lessWasNotEnough,
  });
  const path = (input: string, field = input): InputPath => ({ input, record: `${id}/${field}` });
  return {
    subject: `missedCanal of ${id}`,
    input: { tooth: about.body.tooth, feature, evidence: looks.map(evidenceOf), ...optional },
    inputPaths: [
      { input: "tooth", record: `${about.id}/tooth` },
      path("feature"),
      ...Object.keys(optional).map((field) => path(field)),
      ...looks.map((_, at) => path(`evidence[${at}]`, `looks/${at}`)),
    ],
  };
}

const evidenceOf = ({ kind, result, depthMm, sensitivity, specificity, from }: Look): object => ({
  ...{ kind, result },
  ...written({ depthMm, sensitivity, specificity, from }),
});

/** What a person wrote: a field that was emptied again is as absent as one that never was filled. */
const written = (fields: Readonly<Record<string, unknown>>): object =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined && value !== ""));
