import { type Block, type Line, type Page, says } from "../page-model.ts";
import { type ConsentCase, type PlacedWay, told, waysToTell } from "./consent-case.ts";
import { consentWords } from "./consent-words.ts";

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
  if (lines.length === 0)
    return way === of.plan.chosen ? [{ kind: "text", heading: plain.name, lines: [says(consentWords.noRisk)] }] : [];
  return [{ kind: "text", heading: plain.name, points: true, lines }];
}

/** Risks that the clinician named beside those that the facts call for, in the clinician's words. */
function alsoSaid({ ways, plan }: ConsentCase): Block[] {
  const known = new Set(ways.options.flatMap(({ risks }) => risks.flatMap(({ says: trade, plain }) => [trade, plain])));
  const own = plan.risksNamed.filter((risk) => risk !== "" && !known.has(risk));
  return own.length === 0 ? [] : [{ kind: "text", heading: consentWords.alsoSaid, points: true, lines: own.map(says) }];
}
