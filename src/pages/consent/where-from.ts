import { type Line, numbersIn, type Page } from "../page-model.ts";
import { sourceName } from "../source-name.ts";
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
  const studies = [...new Set(ids)].sort().map((id) => {
    const known = source.references.get(id);
    return `${known?.reference ?? sourceName(id)}${known?.verification === "seen" ? "" : "*"}`;
  });
  const stars = studies.some((study) => study.endsWith("*")) ? ` (${consentWords.recalled})` : "";
  const line: Line = [{ text: `${consentWords.studies} ${studies.join("; ")}${stars}`, quiet: true }];
  return { title: "", on: "", blocks: studies.length === 0 ? [] : [{ kind: "text", lines: [line] }], notes: [] };
}
