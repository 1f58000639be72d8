import { Link } from "wouter";
import { type HeatTold, heatTold } from "../../../../../ledger/heat-told.ts";
import { Cautions } from "../../../../parts/cautions.tsx";
import { refusalInWords, sentenceInWords } from "../../../../words/value-words.ts";
import { useCaseNow } from "../../case-now.ts";
import { quantity } from "./dose-in-words.ts";
import { burstInWords } from "./read-burst.ts";
import { sourcesInWords } from "./sources-in-words.ts";
import { useVisit, type Visit } from "./use-visit.ts";
import "../../../../parts/ruled-table.css";

/** How long ultrasound worked, beside what published tables say of conditions near by; no temperature of this tooth. */
export function HeatSection() {
  const { visitId, visit } = useVisit("Ultrasound");
  const { ledger } = useCaseNow();
  const told = heatTold(ledger, visitId);
  const bursts = visit.ultrasonics ?? [];
  if (bursts.length === 0) return <p className="quiet">No ultrasound is noted.</p>;
  if (told === undefined) return null;
  if (told.output === undefined) return <p className="look">▲ Not looked at. {refusalInWords(told.why)}</p>;
  const { output, entryId } = told;
  const { totals } = output;
  return (
    <div className="sum-told">
      <p>
        <a className="sum-number" href={`#${entryId}`}>
          {quantity(totals.activeSeconds, "s")}
        </a>{" "}
        in {totals.bursts} {totals.bursts === 1 ? "burst" : "bursts"}, {quantity(totals.drySeconds, "s")} of it dry,{" "}
        {quantity(totals.restSeconds, "s")} of rest between.
        {output.longestDryBurst && ` Longest dry: ${quantity(output.longestDryBurst.seconds, "s")}.`}
      </p>
      <BurstTable {...{ bursts, output, entryId }} />
      <p className="quiet">
        Bone was injured from {output.threshold.celsius} °C over {output.threshold.seconds} s on: a rise of{" "}
        {output.threshold.riseCelsius} °C from 37 °C.
      </p>
      <Cautions topic="ultrasonicHeat" cautions={output.cautions} />
      <p>
        <Link href="/methods/ultrasonicHeat">What these tables can and can't tell</Link>
      </p>
    </div>
  );
}

interface BurstTableOptions {
  readonly bursts: NonNullable<Visit["ultrasonics"]>;
  readonly output: HeatTold;
  readonly entryId: string;
}

const BurstTable = ({ bursts, output, entryId }: BurstTableOptions) => (
  <div className="rows-scroll">
    <table className="ruled-table">
      <caption>Each burst, beside the published condition nearest to it</caption>
      <thead>
        <tr>
          <th scope="col">Burst</th>
          <th scope="col">Nearest published mean rise</th>
          <th scope="col">How that was measured, and what differs</th>
        </tr>
      </thead>
      <tbody>
        {bursts.map((burst, index) => {
          const nearest = output.bursts[index]?.published[0];
          return (
            // biome-ignore lint/suspicious/noArrayIndexKey: bursts have no other name than their place
            <tr key={index}>
              <th scope="row">
                {index + 1}. {burstInWords(burst)}
                {index < bursts.length - 1 && (
                  <span className="quiet">, then {quantity(burst.restSeconds, "s")} of rest</span>
                )}
              </th>
              <td>
                {nearest === undefined ? (
                  "no table that was read"
                ) : (
                  <a className="sum-number" href={`#${entryId}`}>
                    {riseInWords(nearest)}
                  </a>
                )}
              </td>
              <td className="quiet">{nearest && conditionsInWords(nearest)}</td>
            </tr>
          );
        })}
      </tbody>
    </table>
  </div>
);

type Rise = HeatTold["bursts"][number]["published"][number];

const riseInWords = ({ riseCelsius, sd, seconds }: Rise): string =>
  `${quantity(riseCelsius, "°C")}${sd === undefined ? "" : ` (SD ${quantity(sd, "°C")})`} in ${rangeInWords(seconds)} s`;

const rangeInWords = ({ low, high }: Rise["seconds"]): string => (low === high ? String(low) : `${low} to ${high}`);

const conditionsInWords = ({ conditions, differs, source, mark }: Rise): string =>
  [
    `${sentenceInWords(conditions)}.`,
    ...(differs.length === 0 ? [] : [`Other here: ${differs.join("; ")}.`]),
    `${sourcesInWords(source, mark)}.`,
  ].join(" ");
