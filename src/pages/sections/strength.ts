import { chanceLadder } from "../../figures/chance-ladder.ts";
import { missedCanalRungs, missedCanalTold } from "../../ledger/missed-canal-told.ts";
import { testStrengthRungs, testStrengthTold } from "../../ledger/test-strength-told.ts";
import { type BodyOf, partsOf } from "../../record/parts.ts";
import { featureWords } from "../../record/words/search-words.ts";
import type { CaseSource } from "../case-source.ts";
import { type LedgerReader, ledgerReader } from "../ledger-reader.ts";
import { momentWords } from "../moment-words.ts";
import { type Block, type Line, type Page, says } from "../page-model.ts";
import { sentence } from "../sentence.ts";
import { shareWithInterval } from "../share-with-interval.ts";
import { withSourceNames } from "../source-name.ts";

/** How far the tests of each sheet move the chance that the pulp is not vital, where a start is stated. */
export function strengthPages(source: CaseSource): Page[] {
  const read = ledgerReader(source.ledger);
  return partsOf(source.parts, "findings").flatMap(({ id, body }): Page[] => {
    const subject = `testStrength of ${id}`;
    const told = testStrengthTold(read.entry(subject));
    if (told === undefined) return [];
    const figure = chanceLadder({
      ...{ that: "the pulp is not vital", rungs: testStrengthRungs(read.entry(subject)) },
      ...{ theme: source.theme, widthPx: 900, letters: 1.1 },
    });
    const from = body.prior === undefined || body.prior.from === "" ? [] : [says(`Start: ${body.prior.from}`)];
    return [
      {
        title: "Strength of the tests",
        subtitle: momentWords(body.takenOn, source.parts),
        on: body.takenOn,
        blocks: [
          { kind: "figure", figure, caption: "Chance that the pulp is not vital, test by test" },
          {
            kind: "text",
            heading: "Before and after (95 % intervals)",
            lines: [...chanceLines(read, subject), ...from],
          },
          ...cautionBlock(told.cautions),
        ],
        notes: [],
      },
    ];
  });
}

/** How likely each canal is that was looked for and not found, look by look. */
export function hiddenCanalPages(source: CaseSource): Page[] {
  const read = ledgerReader(source.ledger);
  return partsOf(source.parts, "search").flatMap(({ id, body }): Page[] => {
    const subject = `missedCanal of ${id}`;
    const told = missedCanalTold(read.entry(subject));
    if (told === undefined) return [];
    const name = featureWords[body.feature];
    const last = body.looks
      .map(({ on }) => on)
      .sort()
      .at(-1);
    const figure = chanceLadder({
      ...{ that: `a ${name} is there`, rungs: missedCanalRungs(read.entry(subject)) },
      ...{ theme: source.theme, widthPx: 900, letters: 1.1 },
    });
    return [
      {
        title: `${body.foundAs === undefined ? "Hidden" : "Found"}: ${name}`,
        ...(last === undefined ? {} : { subtitle: `last look ${momentWords(last, source.parts)}` }),
        on: last ?? dayOfCase(source),
        blocks: [
          { kind: "figure", figure, caption: "Chance that it is there, look by look" },
          {
            kind: "text",
            heading: "Before and after (95 % intervals)",
            lines: [...chanceLines(read, subject), ...foundLine(body)],
          },
          ...cautionBlock(told.cautions),
        ],
        notes: [],
      },
    ];
  });
}

/** Once it was found, the chance is only what series and looks gave. */
const foundLine = ({ foundAs }: BodyOf<"search">): Line[] =>
  foundAs === undefined ? [] : [says(`Found as ${foundAs}; the chance is that of the series and the looks alone`)];

const dayOfCase = ({ parts }: CaseSource): string => partsOf(parts, "case")[0]?.body.presentedOn ?? "";

/** `Before: 0.43 (0.38 to 0.48)`, `After: ..`; chances from 0 to 1, as the ledger keeps them. */
function chanceLines(read: LedgerReader, subject: string): Line[] {
  const chance = (at: string): Line =>
    shareWithInterval(read, subject, { share: `${at}.mean`, interval: `${at}.interval` });
  return [
    [{ text: "Before: " }, ...chance("prior")],
    [{ text: "After: " }, ...chance("posterior")],
  ];
}

const cautionBlock = (cautions: readonly string[]): Block[] =>
  cautions.length === 0
    ? []
    : [
        {
          kind: "text",
          heading: "To be read with care",
          lines: cautions.slice(0, 3).map((one) => says(sentence(withSourceNames(one)))),
        },
      ];
