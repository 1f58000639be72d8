import { type Block, type Line, type Page, says } from "../page-model.ts";
import { shortSource } from "../sections/sources.ts";
import { type ConsentCase, inOneLine, type PlacedWay, told, waysToTell } from "./consent-case.ts";
import { consentWords } from "./consent-words.ts";

/** Every way that is open: what it is, what it takes, what helps and what may be left of it. */
export function waysPage(of: ConsentCase): Page {
  const blocks = waysToTell(of).map((way) => wayBlock(of, way));
  return {
    title: consentWords.ways,
    on: "",
    blocks: [...blocks, ...otherWays(of), { kind: "text", lines: [says(consentWords.figures)] }],
    notes: [],
  };
}

function wayBlock(of: ConsentCase, { way, plain, at, outcomes }: PlacedWay): Block {
  const isAdvised = way === of.plan.chosen;
  const sentences = (field: "whatItIs" | "whatItAsks" | "whatItLeaves"): Line[] =>
    plain[field].map((one, index) => told(of, one, `${at}.plain.${field}[${index}]`));
  const chances = plain.chances.map(({ says: sentence, outcome }, index): Line => {
    const place = outcomes.findIndex(({ id }) => id === outcome);
    return [
      ...told(of, sentence, `${at}.plain.chances[${index}].says`),
      ...behind(of, outcomes[place], `${at}.outcomes[${place}]`),
    ];
  });
  return {
    kind: "text",
    heading: isAdvised ? `${plain.name} (${consentWords.advised})` : plain.name,
    lines: [
      inOneLine([...sentences("whatItIs"), told(of, plain.visits, `${at}.plain.visits`)]),
      inOneLine(chances.length === 0 ? [says(consentWords.noFigure)] : chances),
      // What the advised way asks of the patient has a place of its own.
      ...(isAdvised || plain.whatItAsks.length === 0 ? [] : [inOneLine(sentences("whatItAsks"))]),
      ...(plain.whatItLeaves.length === 0 ? [] : [inOneLine(sentences("whatItLeaves"))]),
    ],
  };
}

/** ` (188 of 221, Ng 2011)`, small. */
function behind(
  { read, subject, source }: ConsentCase,
  outcome: PlacedWay["outcomes"][number] | undefined,
  at: string,
): Line {
  if (outcome === undefined) return [];
  const [events, n] = [read.number(subject, `${at}.events`, 0), read.number(subject, `${at}.n`, 0)];
  const counts = events === undefined || n === undefined ? [] : [events, { text: " of " }, n, { text: ", " }];
  const name = { text: shortSource(outcome.source, source.references) };
  return [{ text: " (" }, ...counts, name, { text: ")" }].map((run) => ({ ...run, quiet: true }));
}

/** Ways that wait for an answer are named, with what they are. */
function otherWays({ ways, plan }: ConsentCase): Block[] {
  const waiting = ways.options.filter(
    ({ standing, way }) => standing === "needs an answer first" && way !== plan.chosen,
  );
  if (waiting.length === 0) return [];
  const lines = waiting.map(({ plain }) => says([`${plain.name}.`, ...plain.whatItIs].join(" ")));
  return [
    { kind: "text", lines: [says(consentWords.asksFirst)] },
    { kind: "text", points: true, lines },
  ];
}
