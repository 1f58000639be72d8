import { numbersIn, type Page } from "../page-model.ts";
import { shortSource } from "../sections/sources.ts";
import type { ConsentCase } from "./consent-case.ts";
import { consentWords } from "./consent-words.ts";

/** The studies behind the figures that are printed, in full and small. */
export function whereFrom({ source, ways }: ConsentCase, pages: readonly Page[]): Page {
  const printed = numbersIn({ pages }).map(({ path }) => path);
  const ids = ways.options.flatMap(({ outcomes, plain }, at) =>
    plain.chances.flatMap(({ outcome }, index) =>
      printed.includes(`options[${at}].plain.chances[${index}].says`)
        ? outcomes.filter(({ id }) => id === outcome).map(({ source: id }) => id)
        : [],
    ),
  );
  const lines = [...new Set(ids)].sort().map((id) => [
    {
      text: `${shortSource(id, source.references)}: ${source.references.get(id)?.reference ?? id}`,
      quiet: true,
    },
  ]);
  const stars = { text: ` ${consentWords.recalled}`, quiet: true };
  const heading = [
    { text: consentWords.studies, quiet: true },
    ...(lines.some(([run]) => run?.text.includes("*")) ? [stars] : []),
  ];
  return {
    title: "",
    on: "",
    blocks: lines.length === 0 ? [] : [{ kind: "text", lines: [heading, ...lines] }],
    notes: [],
  };
}
