import { type BodyOf, type Part, partsOf } from "../../record/parts.ts";
import { touchWords } from "../../record/words/finding-words.ts";
import { onFilmWords, readerWords, symptomsWords } from "../../record/words/later-words.ts";
import type { CaseSource } from "../case-source.ts";
import { momentWords } from "../moment-words.ts";
import { type Block, type Line, type Page, says, type Table } from "../page-model.ts";
import { sentence } from "../sentence.ts";
import { textBlock } from "./presenting.ts";

/** All recalls in one table, and the notes of each. */
export function recallPages(source: CaseSource): Page[] {
  const table = recallTable(source, "bare");
  if (table === undefined) return [];
  const recalls = inOrder(source.parts);
  const notes: Block[] = recalls.flatMap(({ body }) =>
    textBlock(sentence(momentWords(body.on, source.parts)), body.note),
  );
  return [
    {
      title: "Recalls",
      on: recalls.at(-1)?.body.on ?? "",
      blocks: [table, ...notes],
      notes: [scoreNote],
    },
  ];
}

const scoreNote =
  "Score: periapical index of Orstavik, Kerekes and Eriksen 1986, 1 to 5; a multirooted tooth takes its worst root.";

const inOrder = (parts: readonly Part[]) => partsOf(parts, "recall").sort((a, b) => (a.body.on < b.body.on ? -1 : 1));

/** The recalls as a table, each with what was noted where the notes have no place of their own; none without a recall. */
export function recallTable({ parts }: CaseSource, as: "bare" | "withNotes"): Table | undefined {
  const recalls = inOrder(parts);
  if (recalls.length === 0) return undefined;
  const columns = [
    ["When", 0.18],
    ["Tooth", 0.14],
    ["Symptoms", 0.17],
    ["Percussion", 0.16],
    ["Film", 0.15],
    ["Score by reader", 0.2],
    ...(as === "withNotes" ? [["Note", 0.9] as const] : []),
  ] as const;
  return {
    kind: "table",
    caption: as === "bare" ? "Tooth, symptoms and film over time" : `Tooth, symptoms and film over time. ${scoreNote}`,
    columns: columns.map(([head, share]) => ({ head, share, align: "left" as const })),
    rows: recalls.map(({ body }) => [
      ...recallRow(body, parts),
      ...(as === "withNotes" ? [says(body.note.replace(/\s+/g, " ") || "–")] : []),
    ]),
  };
}

function recallRow(body: BodyOf<"recall">, parts: readonly Part[]): Line[] {
  const scores = body.readings
    .map(({ reader, score, blind }) => `${readerWords[reader]} ${score}${blind ? "" : " (not blind)"}`)
    .join(", ");
  return [
    momentWords(body.on, parts),
    body.retained,
    symptomsWords[body.symptoms],
    touchWords[body.percussion],
    onFilmWords[body.onFilm],
    scores === "" ? "not scored" : scores,
  ].map(says);
}
