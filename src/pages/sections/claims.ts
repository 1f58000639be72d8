import { type BodyOf, type Part, partsOf } from "../../record/parts.ts";
import { claimStateWords, mishapWords, speaksWords } from "../../record/words/later-words.ts";
import type { CaseSource } from "../case-source.ts";
import { momentWords } from "../moment-words.ts";
import { type Line, type Page, says } from "../page-model.ts";
import { sentence } from "../sentence.ts";

/** What speaks for and against each decision, how well it stands, and on which references. */
export function claimPages({ parts }: CaseSource): Page[] {
  const claims = partsOf(parts, "claim");
  if (claims.length === 0) return [];
  const columns = [
    ["Decision", 0.12],
    ["Claim", 0.3],
    ["Standing", 0.12],
    ["Stands on", 0.14],
    ["Verdict", 0.32],
  ] as const;
  return [
    {
      title: "Claims",
      on: "",
      blocks: [
        {
          kind: "table",
          caption: "What speaks for and against each decision",
          columns: columns.map(([head, share]) => ({ head, share, align: "left" as const })),
          rows: claims.map(({ body }) => claimRow(body, parts)),
        },
      ],
      notes: [],
    },
  ];
}

function claimRow(claim: BodyOf<"claim">, parts: readonly Part[]): Line[] {
  const references = partsOf(parts, "reference")
    .filter(({ id }) => claim.references.includes(id))
    .map(({ body }) => shortReference(body));
  return [
    decisionName(claim.about, parts),
    claim.says,
    `${speaksWords[claim.speaks]}, ${claimStateWords[claim.state]}`,
    references.length === 0 ? "no reference" : references.join("; "),
    claim.verdict === "" ? "–" : claim.verdict,
  ].map(says);
}

/** `Martins 2018`: the first author's family name and the year. */
const shortReference = ({ authors, title, year }: BodyOf<"reference">): string =>
  `${authors[0]?.split(" ")[0] ?? title}${year === undefined ? "" : ` ${year}`}`;

/** What the pages call the part that a claim speaks to. */
function decisionName(id: string, parts: readonly Part[]): string {
  const part = parts.find((one) => one.id === id);
  switch (part?.kind) {
    case "plan":
      return "Choice";
    case "diagnosis":
      return "Diagnosis";
    case "findings":
      return "Findings";
    case "handback":
      return "Hand-back";
    case "consent":
      return "Consent";
    case "mishap":
      return sentence(mishapWords[part.body.what]);
    case "visit":
      return `Visit, ${momentWords(part.body.on, parts)}`;
    case "recall":
      return `Recall, ${momentWords(part.body.on, parts)}`;
    default:
      return "The case";
  }
}
