import { type FractureTold, fractureSubject, fractureTold } from "../../ledger/fracture-told.ts";
import { brokenInstrumentSubject } from "../../ledger/instrument-told.ts";
import type { InstrumentAsTold } from "../../record/instrument-as-told.ts";
import { mishapGuide } from "../../record/mishap-guide/mishap-guide.ts";
import { type BodyOf, type PartOf, partsOf } from "../../record/parts.ts";
import { bendWords, handledWords, mishapWords, thirdWords } from "../../record/words/later-words.ts";
import { explanationWords, toldByWords } from "../../record/words/mishap-words.ts";
import { alloyWords, movementWords } from "../../record/words/visit-words.ts";
import type { CaseSource } from "../case-source.ts";
import { byPosterior, explanationsDecide } from "../fracture-account.ts";
import { breakPlacesFigure } from "../fracture-figures.ts";
import { type LedgerReader, ledgerReader } from "../ledger-reader.ts";
import { momentWords } from "../moment-words.ts";
import { type Block, type Line, type Page, type Run, says } from "../page-model.ts";
import { sentence } from "../sentence.ts";
import { shareWithInterval } from "../share-with-interval.ts";
import { taperWords } from "./canal-table.ts";
import { mishapDetailWords } from "./mishap-details.ts";
import { textBlock } from "./presenting.ts";

type Mishap = PartOf<"mishap">;

/** Each mishap: what happened, where, what was done and told; then, of a separated instrument, how it may have broken. */
export function mishapPages(source: CaseSource): Page[] {
  return partsOf(source.parts, "mishap").flatMap((mishap) => [aboutPage(mishap, source), ...whyPages(mishap, source)]);
}

function aboutPage({ body }: Mishap, source: CaseSource): Page {
  const facts = [...mishapLines(body), ...detailLines(body, source), ...toldLines(body, source)];
  return {
    ...{ title: sentence(mishapWords[body.what]), on: body.on, subtitle: momentWords(body.on, source.parts) },
    blocks: [
      { kind: "text", heading: "Facts", lines: facts },
      ...textBlock("Account", body.story),
      ...textBlock("Said to the patient, and agreed", `${body.told?.said ?? ""}\n${body.told?.agreed ?? ""}`),
    ],
    notes: doneNotes(body),
    stepSources: stepSourcesOf(body),
  };
}

/** How a separated instrument may have broken: drawn along it, in two sentences, and as the resident defends it. */
function whyPages({ id, body }: Mishap, source: CaseSource): Page[] {
  const own = [
    ...textBlock("Own account", body.defence ?? ""),
    ...textBlock("What the supervisor objects", body.objection ?? ""),
  ];
  const why = body.what === "separatedInstrument" ? whyBlocks(id, source) : [];
  if (why.length === 0 && own.length === 0) return [];
  const title = body.canal === undefined ? "How it may have broken" : `How it may have broken, ${body.canal}`;
  return [{ title, on: body.on, subtitle: momentWords(body.on, source.parts), blocks: [...why, ...own], notes: [] }];
}

/** What the record of its kind says, in one line. */
function detailLines(body: BodyOf<"mishap">, { notation }: CaseSource): Line[] {
  const words = mishapDetailWords(body, notation);
  return words.length === 0 ? [] : [says(words.join("; "))];
}

function mishapLines(body: BodyOf<"mishap">): Line[] {
  const { instrument } = body;
  const where = [
    body.canal,
    body.third === "notRecorded" ? undefined : thirdWords[body.third],
    body.bend === "notRecorded" || body.bend === "none" ? undefined : bendWords[body.bend],
  ];
  const place = where.filter((piece) => piece !== undefined).join(", ");
  return [
    ...(place === "" ? [] : [says(`Where: ${place}`)]),
    ...(instrument === undefined ? [] : [says(`Instrument: ${toldOfInstrument(instrument)}`)]),
    ...(body.fragmentMm === undefined ? [] : [says(`Fragment: ${body.fragmentMm} mm`)]),
    says(`Handled: ${handledWords[body.handled]}`),
  ];
}

/** An instrument as far as it was told. */
function toldOfInstrument({ size, taper, alloy, movement }: InstrumentAsTold): string {
  const told = [
    size === undefined ? undefined : `size ${size}`,
    taper === undefined ? undefined : `taper ${taperWords(taper)}`,
    alloy === undefined ? undefined : alloyWords[alloy],
    movement === undefined ? undefined : movementWords[movement],
  ].filter((one) => one !== undefined);
  return told.length === 0 ? "not described" : told.join(", ");
}

function toldLines({ toldPatient, told, what, steps }: BodyOf<"mishap">, { parts }: CaseSource): Line[] {
  const usual = mishapGuide(what).steps;
  const done = usual.filter(({ id }) => steps?.some(({ step }) => step === id));
  const by = told === undefined ? "" : ` by ${told.by === "both" ? "both" : `the ${toldByWords[told.by]}`}`;
  const when = told === undefined ? "" : `, ${momentWords(told.on, parts)}`;
  return [
    says(toldPatient === "told" ? `The patient was told${by}${when}` : "The patient has not been told yet"),
    ...(done.length === 0 ? [] : [says(`Noted of the usual immediate steps: ${done.length} of ${usual.length}`)]),
  ];
}

/** What stands behind the usual steps that were noted. */
export const stepSourcesOf = ({ what, steps = [] }: BodyOf<"mishap">): string[] =>
  mishapGuide(what).steps.flatMap(({ id, source }) => (steps.some(({ step }) => step === id) ? [source] : []));

/** The steps that were noted, in the order in which they were done; no time of day stands in a document. */
function doneNotes({ what, steps = [] }: BodyOf<"mishap">): string[] {
  const usual = mishapGuide(what).steps;
  const inOrder = [...steps].sort((a, b) => (a.at < b.at ? -1 : 1));
  return inOrder.flatMap(({ step }) => usual.filter(({ id }) => id === step).map(({ says: does }) => `Done: ${does}`));
}

function whyBlocks(id: string, source: CaseSource): Block[] {
  const read = ledgerReader(source.ledger);
  const entry = read.entry(fractureSubject(id));
  const told = fractureTold(entry);
  if (told === undefined) return [];
  const shape = read.entry(brokenInstrumentSubject(id));
  const figure = breakPlacesFigure(told, { entry, shape }, { theme: source.theme, widthPx: 900 });
  return [
    ...(figure === undefined
      ? []
      : [{ kind: "figure" as const, figure, caption: "Where each explanation expects the break, mm from the tip" }]),
    { kind: "text", heading: "Consistent with (95 % intervals)", lines: whyLines(told, read, id) },
  ];
}

/** `Consistent most with bending fatigue, 0.63 (0.41 to 0.82); then ..`, what that starts from, and whether it decides. */
function whyLines(told: FractureTold, read: LedgerReader, id: string): Line[] {
  const subject = fractureSubject(id);
  const placeOf = (name: string) => `explanations[${told.explanations.findIndex((one) => one.name === name)}]`;
  const ranked = byPosterior(told).flatMap(({ name }, rank): Run[] => {
    const at = `${placeOf(name)}.posterior`;
    const lead = rank === 0 ? "Consistent most with " : "; then with ";
    return [
      { text: `${lead}${explanationWords[name]}, ` },
      ...shareWithInterval(read, subject, { share: `${at}.mean`, interval: `${at}.interval` }),
    ];
  });
  const torsional = `${placeOf("torsionalOverload")}.prior`;
  const [n, N] = [read.number(subject, `${torsional}.n`, 0), read.number(subject, `${torsional}.N`, 0)];
  const start: Run[] =
    n && N ? [n, { text: "/" }, N, { text: " torsional in published series, a flaw by assumption" }] : [];
  const decides = explanationsDecide(told)
    ? "The first interval lies above the next, under the assumptions made"
    : "The intervals overlap: the facts do not decide";
  return [ranked, [{ text: decides }, ...(start.length === 0 ? [] : [{ text: "; from " }, ...start])]];
}

/** One mishap in a few sentences: what, when, the facts, and how it may have broken. */
export function mishapFacts({ id, body }: Mishap, source: CaseSource): Line {
  const facts = [...mishapLines(body), ...toldLines(body, source)];
  const read = ledgerReader(source.ledger);
  const told = fractureTold(read.entry(fractureSubject(id)));
  const lines = [...facts, ...(told === undefined ? [] : whyLines(told, read, id))];
  const lead = says(`${sentence(mishapWords[body.what])}, ${momentWords(body.on, source.parts)}. `);
  return [...lead, ...lines.flatMap((line) => [...line, { text: ". " }]).slice(0, -1), { text: "." }];
}
