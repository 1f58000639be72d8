import { consentWords } from "../consent/consent-words.ts";
import type { Line, Page } from "../page-model.ts";
import { sourceName } from "../source-name.ts";
import { endsOfChance } from "./ends-of-chance.ts";
import type { PieceCase } from "./piece-case.ts";

/** The studies behind the figures that are printed, in full and small. */
export function sourcesOfPiece({ weighed, source }: PieceCase): Page {
  const told = weighed?.told;
  const drawn = [...(told?.ways.flatMap(({ from }) => from) ?? []), ...(told?.perforation.from ?? [])];
  const ids = [
    ...drawn.filter(({ inSum }) => inSum).map(({ source: id }) => id),
    ...(told === undefined ? [] : endsOfChance(told).map(({ series }) => series)),
  ];
  const studies = [...new Set(ids)].sort().map((id) => {
    const known = source.references.get(id);
    return `${known?.reference ?? sourceName(id)}${known?.verification === "seen" ? "" : "*"}`;
  });
  const stars = studies.some((study) => study.endsWith("*")) ? ` (${consentWords.recalled})` : "";
  const line: Line = [{ text: `${consentWords.studies} ${studies.join("; ")}${stars}`, quiet: true }];
  return { title: "", on: "", blocks: studies.length === 0 ? [] : [{ kind: "text", lines: [line] }], notes: [] };
}
