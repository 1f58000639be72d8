import { type BodyOf, type Part, partsOf, thePart } from "../../record/parts.ts";
import type { CaseSource } from "../case-source.ts";
import { type Block, type Line, type Page, says } from "../page-model.ts";
import { dayWords, inWords, sentence } from "../record-words.ts";
import { textBlock } from "./presenting.ts";

/** Each mishap: what happened, where, and what was done about it. */
export function mishapPages({ parts }: CaseSource): Page[] {
  const first = thePart(parts, "case")?.body.presentedOn ?? "";
  return partsOf(parts, "mishap").map(({ body }) => ({
    title: sentence(inWords(body.what)),
    on: body.on,
    subtitle: dayWords(body.on, first),
    blocks: [{ kind: "text", heading: "Facts", lines: mishapLines(body) }, ...textBlock("Account", body.story)],
    notes: [],
  }));
}

function mishapLines(body: BodyOf<"mishap">): Line[] {
  const { instrument } = body;
  const where = [
    body.canal,
    body.third === "notRecorded" ? undefined : `${body.third} third`,
    body.bend === "notRecorded" || body.bend === "none" ? undefined : `${body.bend} the bend`,
  ];
  const place = where.filter((piece) => piece !== undefined).join(", ");
  return [
    ...(place === "" ? [] : [says(`Where: ${place}`)]),
    ...(instrument === undefined
      ? []
      : [
          says(
            `Instrument: size ${instrument.size}, taper .${String(Math.round(instrument.taper * 100)).padStart(2, "0")}, ${inWords(instrument.alloy)}, ${inWords(instrument.movement)}`,
          ),
        ]),
    ...(body.fragmentMm === undefined ? [] : [says(`Fragment: ${body.fragmentMm} mm`)]),
    says(`Handled: ${inWords(body.handled)}`),
    says(body.toldPatient === "told" ? "The patient was told" : "The patient has not been told yet"),
  ];
}

/** The day of the last visit that filled a canal; recalls are counted from it. */
function filledOn(parts: readonly Part[]): string | undefined {
  const filled = partsOf(parts, "visit").filter(({ body }) => body.canals.some(({ state }) => state === "filled"));
  return filled
    .map(({ body }) => body.on)
    .sort()
    .at(-1);
}

/** All recalls in one table, and the notes of each. */
export function recallPages({ parts }: CaseSource): Page[] {
  const filled = filledOn(parts);
  const first = filled ?? thePart(parts, "case")?.body.presentedOn ?? "";
  const recalls = partsOf(parts, "recall").sort((a, b) => (a.body.on < b.body.on ? -1 : 1));
  if (recalls.length === 0) return [];
  const notes: Block[] = recalls.flatMap(({ body }) => textBlock(sentence(dayWords(body.on, first)), body.note));
  return [
    {
      title: "Recalls",
      on: recalls.at(-1)?.body.on ?? first,
      blocks: [
        {
          kind: "table",
          caption: "Tooth, symptoms and film over time",
          columns: [
            [filled === undefined ? "When" : "After filling", 0.14],
            ["Tooth", 0.13],
            ["Symptoms", 0.2],
            ["Percussion", 0.14],
            ["Film", 0.17],
            ["Score by reader", 0.22],
          ].map(([head, share]) => ({ head: String(head), share: Number(share), align: "left" as const })),
          rows: recalls.map(({ body }) => recallRow(body, first)),
        },
        ...notes,
      ],
      notes: [
        "Score: periapical index of Orstavik, Kerekes and Eriksen 1986, 1 to 5; a multirooted tooth takes its worst root.",
      ],
    },
  ];
}

function recallRow(body: BodyOf<"recall">, first: string): Line[] {
  const scores = body.readings
    .map(({ reader, score, blind }) => `${reader} ${score}${blind ? "" : " (not blind)"}`)
    .join(", ");
  return [
    dayWords(body.on, first),
    body.retained,
    inWords(body.symptoms),
    inWords(body.percussion),
    inWords(body.onFilm),
    scores === "" ? "not scored" : scores,
  ].map(says);
}
