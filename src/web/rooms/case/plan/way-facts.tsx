import type { WayTold } from "../../../../ledger/plan-told.ts";
import { numberInWords, quantityInWords } from "../../../parts/figures-in-words.ts";
import { lowered } from "../../../words/capital.ts";
import { sentenceInWords } from "../../../words/value-words.ts";
import { SourceMark } from "./source-mark.tsx";

const standingWords = {
  met: "● met",
  notMet: "◇ not met",
  notRecorded: "○ not recorded",
} as const;

/** What must be true before a way is gone: met, not met or not recorded, with value and threshold. */
export function MustBeTrue({ of: list }: { readonly of: WayTold["mustBeTrueFirst"] }) {
  if (list.length === 0) return null;
  return (
    <section className="way-part">
      <h3>Must be true first</h3>
      <ul className="plan-lines">
        {list.map((one) => (
          <li key={one.id}>
            <span className="plan-standing" data-look={one.standing === "notMet"}>
              {standingWords[one.standing]}
            </span>
            <span>
              {goesOn(one.says)}
              {heldAgainst(one)} <SourceMark {...one} />
              {one.note !== undefined && <span className="quiet plan-note">{sentenceInWords(one.note)}</span>}
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** `: 2.5 mm, 0.5 mm above 2 mm`; units that can't stand behind each number stand behind the last. */
function heldAgainst({ value, threshold, unit = "", by }: WayTold["mustBeTrueFirst"][number]): string {
  const told = (number: number) => (isShort(unit) ? quantityInWords(number, unit) : quantityInWords(number, ""));
  const behind = isShort(unit) || unit === "" ? "" : ` (${unit})`;
  if (value === undefined) return threshold === undefined ? "" : `: ${told(threshold)} is asked${behind}`;
  const has = typeof value === "number" ? told(value) : value;
  if (threshold === undefined) return `: ${has}${typeof value === "number" ? behind : ""}`;
  if (by === undefined || by === 0) return `: ${has}, against ${told(threshold)}${behind}`;
  return `: ${has}, ${told(Math.abs(by))} ${by > 0 ? "above" : "below"} ${told(threshold)}${behind}`;
}

const isShort = (unit: string): boolean => /^(mm|°|%|s)$/.test(unit);

/** A sentence that goes on with more words. */
const goesOn = (sentence: string): string => sentenceInWords(sentence).replace(/\.$/, "");

/** Facts of the case that move the outcome, with published ratios, and a personal figure only where one may stand. */
export function Factors({ of: list }: { readonly of: WayTold["factors"] }) {
  if (list.length === 0) return null;
  const elsewhere = list.filter(({ standing }) => standing === "notHere");
  return (
    <section className="way-part">
      <h3>What moves it in this case</h3>
      <FactorLines of={list.filter(({ standing }) => standing !== "notHere")} />
      {elsewhere.length > 0 && (
        <details>
          <summary>{elsewhere.length} more that are not here</summary>
          <FactorLines of={elsewhere} />
        </details>
      )}
    </section>
  );
}

const factorWords = { here: "● here", notHere: "– not here", notRecorded: "○ not recorded" } as const;

const FactorLines = ({ of: list }: { readonly of: WayTold["factors"] }) => (
  <ul className="plan-lines">
    {list.map((one) => (
      <li key={one.id}>
        <span className="plan-standing">{factorWords[one.standing]}</span>
        <span>
          {goesOn(one.says)} <SourceMark {...one} />
          <span className="quiet plan-note">{movesInWords(one)}</span>
        </span>
      </li>
    ))}
  </ul>
);

const directionWords = { lowers: "For the worse", raises: "For the better", either: "Either way" } as const;

/** `For the worse: odds ratio 0.5 (0.3 to 0.8), adjusted, of healing. No figure of its own: ..`. */
function movesInWords({ ratio, ratioIs, interval, adjusted, direction, ...one }: WayTold["factors"][number]): string {
  const ends =
    interval === undefined ? "" : ` (${numberInWords(interval.low, 2)} to ${numberInWords(interval.high, 2)})`;
  const by = ratio === undefined ? "no ratio is printed" : `${ratioIs} ${numberInWords(ratio, 2)}${ends}`;
  const moves = `${directionWords[direction]}: ${by}${adjusted === true ? ", adjusted" : ""}; ${one.appliesTo}.`;
  if (one.personalFigure !== undefined) return `${moves} ${sentenceInWords(one.personalFigure.says)}`;
  if (one.standing !== "here" || one.noPersonalFigure === undefined) return moves;
  return `${moves} No figure of its own: ${lowered(one.noPersonalFigure)}`;
}

/** Why a way stands where it does, row by row of the table. */
export const Reasons = ({ of: list }: { readonly of: WayTold["why"] }) => (
  <ul className="plan-reasons">
    {list.map(({ row, speaks, says, ...from }) => (
      <li key={row}>
        <span className="plan-speaks">{speaksWords[speaks]}</span> {sentenceInWords(says)} <SourceMark {...from} />
      </li>
    ))}
  </ul>
);

const speaksWords = { for: "For:", against: "Against:", asks: "Asks:" } as const;

/** Published figures that contradict each other, side by side. */
export const Conflicts = ({ of: list }: { readonly of: WayTold["conflicts"] }) =>
  list.map(({ says }) => (
    <p key={says} className="quiet plan-note">
      ◇ {sentenceInWords(says)}
    </p>
  ));
