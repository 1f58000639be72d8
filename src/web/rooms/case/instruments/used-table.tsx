import { strainText } from "../../../../figures/strain-ramp.ts";
import { bendTold } from "../../../../ledger/bend-told.ts";
import type { InstrumentUsed, UseInCanal } from "../../../../ledger/instruments-of-canals.ts";
import { numberInWords, quantityInWords } from "../../../parts/figures-in-words.ts";

interface UsedTableOptions {
  readonly label: string;
  readonly instruments: readonly InstrumentUsed[];
  /** One choice for all visits of a canal. */
  readonly group: string;
  readonly shown: string | undefined;
  readonly show: (key: string) => void;
}

/** What went into a canal at a visit, in its order; one of them is looked at more closely. */
export function UsedTable({ label, instruments, group, shown, show }: UsedTableOptions) {
  return (
    <table className="ruled-table instruments-table">
      <caption className="unseen">{label}</caption>
      <thead>
        <tr>
          <th scope="col">Instrument</th>
          <th scope="col">Depth</th>
          <th scope="col">Time</th>
          <th scope="col">Turns</th>
          <th scope="col">Most strain</th>
          <th scope="col">There</th>
        </tr>
      </thead>
      <tbody>
        {instruments.map((used) => (
          <Row key={used.key} {...{ used, group, show }} isShown={used.key === shown} />
        ))}
      </tbody>
    </table>
  );
}

interface RowOptions {
  readonly used: InstrumentUsed;
  readonly group: string;
  readonly isShown: boolean;
  readonly show: (key: string) => void;
}

const Row = ({ used, group, isShown, show }: RowOptions) => (
  <tr data-shown={isShown}>
    <th scope="row">
      <label className="instruments-choice">
        <input type="radio" name={group} checked={isShown} onChange={() => show(used.key)} />
        <span>
          <strong>{used.name}</strong>
          {used.broke && <span className="look"> ▲ broke</span>}
          <span className="quiet">{used.says}</span>
          {filesOf(used) !== "" && <span className="quiet">file {filesOf(used)}</span>}
        </span>
      </label>
    </th>
    <Each of={used.uses}>{depthWords}</Each>
    {used.broke ? (
      <td colSpan={2} className="quiet">
        at the break
      </td>
    ) : (
      <>
        <Each of={used.uses}>
          {({ seconds }) => (seconds === undefined ? "not said" : quantityInWords(seconds, "s"))}
        </Each>
        <Each of={used.uses}>
          {({ turns }) => (used.byHand ? "not counted" : turns === undefined ? "not known" : numberInWords(turns, 0))}
        </Each>
      </>
    )}
    <Most used={used} />
  </tr>
);

const filesOf = ({ uses }: InstrumentUsed): string => [...new Set(uses.flatMap(({ file }) => file ?? []))].join(", ");

interface EachOptions {
  readonly of: readonly UseInCanal[];
  readonly children: (use: UseInCanal) => string;
}

/** A line for each use. */
const Each = ({ of, children }: EachOptions) => (
  <td>
    {of.map((use) => (
      <span key={use.record} className="instruments-line">
        {children(use)}
      </span>
    ))}
  </td>
);

const depthWords = ({ depthMm, depthFrom }: UseInCanal): string =>
  depthMm === undefined
    ? "not said"
    : `${quantityInWords(depthMm, "mm")}${depthFrom === "orifice" ? " from the orifice" : ""}`;

/** The largest strain with the way to how it came about, and where on the instrument. */
function Most({ used: { bend } }: { readonly used: InstrumentUsed }) {
  const told = bendTold(bend);
  if (bend === undefined || told === undefined)
    return (
      <td colSpan={2} className="quiet">
        not told
      </td>
    );
  return (
    <>
      <td>
        <a className="instruments-number" href={`#${bend.id}`}>
          {strainText(told.peakStrain)}
        </a>
        {told.overTenPercent && <span className="look"> ▲ over 10 %</span>}
      </td>
      <td>{told.fromTipMm === undefined ? "straight" : `${told.fromTipMm.toFixed(1)} mm from its tip`}</td>
    </>
  );
}
