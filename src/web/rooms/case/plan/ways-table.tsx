import { chanceColumn } from "../../../../figures/chance-text.ts";
import { wayWords } from "../../../../record/words/case-words.ts";
import { Button } from "../../../parts/button.tsx";
import { sentenceInWords, sourceInWords } from "../../../words/value-words.ts";
import { unnamed, type WayShown } from "./ways-shown.ts";

interface WaysTableOptions {
  readonly ways: readonly WayShown[];
  /** What the table is called; the ways on which a choice is made unless it says otherwise. */
  readonly caption?: string;
  /** Absent while nobody has chosen. */
  readonly chosen: string | undefined;
  readonly named: readonly string[];
  /** Absent where the case is only looked at. */
  readonly choose: ((way: WayShown) => void) | undefined;
  readonly showEntry: () => void;
}

/** The ways that can be gone, side by side: what must be true, the nearest published outcome, visits, risks. */
export const WaysTable = ({ ways, caption, chosen, named, choose, showEntry }: WaysTableOptions) => (
  <div className="rows-scroll">
    <table className="plan-table">
      <caption className="unseen">{caption ?? "Ways side by side"}</caption>
      <thead>
        <tr>
          <th scope="col">Way</th>
          <th scope="col">Must be true first</th>
          <th scope="col">Nearest published outcome</th>
          <th scope="col">Visits</th>
          <th scope="col">Risks to name</th>
          {choose && (
            <td>
              <span className="unseen">choose</span>
            </td>
          )}
        </tr>
      </thead>
      <tbody>
        {ways.map((way) => (
          <tr key={way.way} data-chosen={way.way === chosen}>
            <th scope="row">
              <WayCell way={way} isChosen={way.way === chosen} />
            </th>
            <td>
              {mustsInWords(way).map((line) => (
                <span key={line} className="plan-count">
                  {line}
                </span>
              ))}
            </td>
            <td>
              <Nearest way={way} showEntry={showEntry} />
            </td>
            <td>{way.visits.usual}</td>
            <td>{risksInWords(way, named)}</td>
            {choose && <td>{way.way !== chosen && <ChooseButton way={way} choose={() => choose(way)} />}</td>}
          </tr>
        ))}
      </tbody>
    </table>
  </div>
);

const WayCell = ({ way, isChosen }: { readonly way: WayShown; readonly isChosen: boolean }) => (
  <span className="plan-way">
    <strong>{sentenceInWords(wayWords[way.way])}</strong>
    {isChosen && <span className="way-chosen">✓ chosen</span>}
    {way.standing !== "open" && <span className={isChosen ? "look" : "quiet"}>◇ {way.standing}</span>}
  </span>
);

/** One press chooses the way; its digit does the same. */
const ChooseButton = ({ way, choose }: { readonly way: WayShown; readonly choose: () => void }) => (
  <Button onClick={choose} {...(way.key === undefined ? {} : { hint: way.key })}>
    Choose<span className="unseen"> {wayWords[way.way]}</span>
  </Button>
);

function mustsInWords({ mustBeTrueFirst: musts }: WayShown): readonly string[] {
  const count = (standing: (typeof musts)[number]["standing"]) =>
    musts.filter((one) => one.standing === standing).length;
  const told = [
    [count("notMet"), "◇", "not met"],
    [count("notRecorded"), "○", "not recorded"],
    [count("met"), "●", "met"],
  ] as const;
  const lines = told.filter(([number]) => number > 0).map(([number, shape, says]) => `${shape} ${number} ${says}`);
  return lines.length === 0 ? ["nothing"] : lines;
}

/** The first series of healing or of a living pulp, else of what is still in place; it opens the entry. */
function Nearest({ way, showEntry }: { readonly way: WayShown; readonly showEntry: () => void }) {
  const first = way.outcomes.find(({ kind }) => kind === "healing" || kind === "pulp") ?? way.outcomes[0];
  if (first === undefined) return <span className="quiet">none is kept</span>;
  const { events, n, what, proportion, interval, source } = first;
  return (
    <>
      <Button weight="bare" onClick={showEntry}>
        {chanceColumn({ mean: proportion, interval })}
        <span className="unseen"> of {wayWords[way.way]}, where it comes from</span>
      </Button>{" "}
      <span className="quiet">
        {what}
        {events !== undefined && n !== undefined ? `, ${events}/${n}` : ""}, {sourceInWords(source)}
      </span>
    </>
  );
}

function risksInWords(way: WayShown, named: readonly string[]): string {
  const open = unnamed(way, named).length;
  if (way.risks.length === 0) return "none called for";
  return open === 0 ? `● all ${way.risks.length} named` : `◇ ${open} of ${way.risks.length} not named`;
}
