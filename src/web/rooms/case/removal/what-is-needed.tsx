import { removalFromElsewhere } from "../../../../ledger/removal-told.ts";
import type { LedgerEntry } from "../../../../record/ledger-entry.ts";
import { courseEndWords, wallSideWords } from "../../../../record/words/removal-words.ts";
import { SelectField } from "../../../parts/fields/choice-field.tsx";
import { NumberField } from "../../../parts/fields/number-field.tsx";
import { Rows } from "../../../parts/fields/rows.tsx";
import { TickField } from "../../../parts/fields/tick-field.tsx";
import { numberInWords } from "../../../parts/figures-in-words.ts";
import { useCaseNow } from "../case-now.ts";
import { rowName } from "../forms/row-name.ts";
import { inputOrigin } from "../ledger/entry-subject.ts";
import { useWallsInHand } from "./walls-in-hand.ts";

interface WhatIsNeededOptions {
  readonly removalId: string;
  /** The sum over this removal; absent before there is one. */
  readonly entry: LedgerEntry | undefined;
}

/** What the sum rests on: what is measured here, and what it takes from elsewhere in the record. */
export function WhatIsNeeded({ removalId, entry }: WhatIsNeededOptions) {
  const { headDepthMm, headDiameterMm } = removalFromElsewhere(entry, removalId);
  return (
    <section className="form-part" aria-labelledby="removal-needs">
      <h2 id="removal-needs">What the sum needs</h2>
      <div className="fields">
        <NumberField
          at="headDepthMm"
          label="Top of the piece, below the orifice"
          unit="mm"
          digits={1}
          {...givenAs(headDepthMm, 1)}
        />
        <NumberField
          at="headDiameterMm"
          label="Width of its top"
          unit="mm"
          digits={2}
          {...givenAs(headDiameterMm, 2)}
        />
        <NumberField at="canalDiameterMm" label="Canal beside its top" unit="mm" digits={2} />
        <NumberField at="clearanceMm" label="Room for a tip on each side" unit="mm" digits={2} />
        <NumberField at="offCentreMm" label="Off the root's centre by" unit="mm" digits={2} />
        <NumberField at="orificeShiftMm" label="Orifice moved off the inner wall" unit="mm" digits={1} />
        <SelectField at="innerSide" label="Inner side of the bend" words={wallSideWords} unset="not told" />
        <SelectField at="courseEnds" label="Traced canal ends" words={courseEndWords} unset="not told: its foramen" />
      </div>
      <div className="removal-walls">
        <div className="form-part">
          <h3>Dentine round the canal at its top</h3>
          <Rows
            at="walls"
            label="Walls at the top of the piece"
            add="Add a wall"
            start={() => ({ side: "furcation" })}
            nameOf={(row, index) => `wall ${index + 1}, ${sideOf(row)}`}
            columns={[
              { head: "Side", cell: <Side />, wide: true },
              { head: "Dentine", unit: "mm", cell: <Thickness />, figure: true },
            ]}
          />
        </div>
        <div className="form-part">
          <h3>Thinnest between orifice and piece</h3>
          <Rows
            at="thinnestAlong"
            label="Thinnest dentine between the orifice and the piece"
            add="Add a place"
            start={() => ({ side: "furcation" })}
            nameOf={(row, index) => `place ${index + 1}, ${sideOf(row)}`}
            columns={[
              { head: "Below the orifice", unit: "mm", cell: <Depth />, figure: true },
              { head: "Side", cell: <Side />, wide: true },
              { head: "Dentine", unit: "mm", cell: <Thickness />, figure: true },
            ]}
          />
        </div>
      </div>
      <StandByWalls />
      <FromElsewhere {...{ removalId, entry }} />
    </section>
  );
}

/** Asked where a wall is thinner than its canal alone; what was said stays to be seen and taken back. */
function StandByWalls() {
  const { hasThin, isConfirmed } = useWallsInHand();
  return (
    <div className="removal-stand-by">
      {(hasThin || isConfirmed) && (
        <TickField at="wallsConfirmed" label="Walls thinner than the canal were measured twice: weigh with them" />
      )}
    </div>
  );
}

/** What the record gives stands in the empty field; what is written there goes before it. */
const givenAs = (value: number | undefined, decimals: number) =>
  value === undefined ? {} : { placeholder: `${numberInWords(value, decimals)} in the record` };

const Side = () => <SelectField at="side" label="Side" words={wallSideWords} bare />;
const Thickness = () => <NumberField at="mm" label="Dentine" unit="mm" digits={1} bare />;
const Depth = () => <NumberField at="atMm" label="Below the orifice" unit="mm" digits={1} bare />;

const isSide = (side: string): side is keyof typeof wallSideWords => Object.hasOwn(wallSideWords, side);

function sideOf(row: unknown): string {
  const side = rowName(row, "side", "");
  return isSide(side) ? wallSideWords[side] : side;
}

/** Inputs that the record gives by itself, each with its place; a person need not write them again. */
function FromElsewhere({ removalId, entry }: WhatIsNeededOptions) {
  const { caseId, parts } = useCaseNow();
  const paths = (entry?.inputPaths ?? []).filter(({ record }) => !record.startsWith(`${removalId}/`));
  if (paths.length === 0)
    return (
      <p className="quiet">
        Course, length and place of the piece are taken from the films and the mishap where they stand there; nothing is
        yet.
      </p>
    );
  const origins = paths.map((path) => inputOrigin(path, parts, caseId));
  const shown = [...new Map(origins.map((one) => [`${one.input} ${one.from}`, one])).values()];
  return (
    <details className="removal-from">
      <summary>Taken from the record ({shown.length})</summary>
      <ul>
        {shown.map(({ input, from, href }) => (
          <li key={`${input} ${from}`}>
            {input}: <a href={href}>{from}</a>
          </li>
        ))}
      </ul>
    </details>
  );
}
