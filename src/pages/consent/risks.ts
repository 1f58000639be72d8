import { type Block, type Line, type Page, says } from "../page-model.ts";
import { type ConsentCase, type PlacedWay, told, waysToTell } from "./consent-case.ts";
import { consentWords } from "./consent-words.ts";
import { ownRisks } from "./own-risks.ts";

/** A line for every risk that the facts of the case call for: of the advised way, then what others add to them. */
export function risksPage(of: ConsentCase): Page {
  const seen = new Set<string>();
  const blocks = waysToTell(of).flatMap((way) => risksOf(of, way, seen));
  return { title: consentWords.risks, on: "", blocks: [...blocks, ...alsoSaid(of)], notes: [] };
}

function risksOf(of: ConsentCase, { way, plain, risks, at }: PlacedWay, seen: Set<string>): Block[] {
  const fresh = risks.map((risk, index) => ({ ...risk, index })).filter((risk) => !seen.has(risk.plain));
  for (const risk of fresh) seen.add(risk.plain);
  const lines = fresh.map(({ plain: sentence, index }): Line => told(of, sentence, `${at}.risks[${index}].plain`));
  if (lines.length > 0) return [{ kind: "text", heading: plain.name, points: true, lines }];
  if (way !== of.plan.chosen) return [];
  return [
    { kind: "text", heading: plain.name, lines: [says(areJudged(of) ? consentWords.noRisk : consentWords.askRisks)] },
  ];
}

/** Whether a way without a risk has none: its facts are known, and no fact that is missing could call for a risk. */
const areJudged = ({ ways, plan }: ConsentCase): boolean =>
  ways.options.some(({ way, standing }) => way === plan.chosen && standing === "open") &&
  ways.ask.every(({ risks }) => risks.length === 0);

/** Risks that were named beside those, where a patient can read them. */
function alsoSaid(of: ConsentCase): Block[] {
  const lines = ownRisks(of).printed.map((one) => traced(of, one));
  return lines.length === 0 ? [] : [{ kind: "text", heading: consentWords.alsoSaid, points: true, lines }];
}

/** A sentence of a way that is not told keeps its place in the ledger; one of the clinician's own has none. */
function traced(of: ConsentCase, sentence: string): Line {
  const places = of.ways.options.flatMap(({ risks }, way) =>
    risks.flatMap(({ plain }, risk) => (plain === sentence ? [`options[${way}].risks[${risk}].plain`] : [])),
  );
  return places[0] === undefined ? says(sentence) : told(of, sentence, places[0]);
}

/** A line for each risk that was named in words of the trade; a page of its own, as lines to write on are not parted. */
export function risksByHand(of: ConsentCase): readonly Page[] {
  const { byHand } = ownRisks(of);
  if (byHand.length === 0) return [];
  const blocks: Block[] = [
    { kind: "text", lines: [says(consentWords.writeRisks)] },
    { kind: "blanks", labels: byHand.map(() => "") },
  ];
  return [{ title: consentWords.moreRisks, on: "", blocks, notes: [] }];
}
