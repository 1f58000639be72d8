import { useMemo } from "react";
import { percentText } from "../../../../figures/chance-text.ts";
import { innerSideTaken, type RemovalTold } from "../../../../ledger/removal-told.ts";
import { platformFigure, sightFigure } from "../../../../pages/removal-figures.ts";
import type { LedgerEntry } from "../../../../record/ledger-entry.ts";
import { pathWords, wallGradeWords, wallSideWords } from "../../../../record/words/removal-words.ts";
import { FigureView } from "../../../parts/figure-view.tsx";
import { numberInWords, withUnit } from "../../../parts/figures-in-words.ts";
import { sentenceInWords } from "../../../words/value-words.ts";
import { LimitsOfWall } from "./limits-of-wall.tsx";
import { NotComputed } from "./not-computed.tsx";

interface WayToItOptions {
  readonly told: RemovalTold;
  readonly entry: LedgerEntry;
}

/** What is missing of the way is told with it, all else below. */
export const isOfWay = ({ name }: RemovalTold["notComputed"][number]): boolean => /^(sightLine|platform)/.test(name);

/** The straight path to the piece and the platform at it, with the dentine that each leaves on every side. */
export function WayToIt({ told, entry }: WayToItOptions) {
  const { sightLine, platform, notComputed } = told;
  const drawn = useMemo(
    () => [sightFigure, platformFigure].flatMap((draw) => draw(entry, told, { theme: "paper", widthPx: 460 }) ?? []),
    [entry, told],
  );
  return (
    <section className="form-part" aria-labelledby="removal-way">
      <h2 id="removal-way">The way to it</h2>
      {drawn.length > 0 && (
        <div className="removal-drawn">
          {drawn.map((figure) => (
            <FigureView key={figure.alternative} figure={figure} />
          ))}
        </div>
      )}
      {sightLine && <SightLine line={sightLine} entry={entry} />}
      {platform && <Platform platform={platform} entryId={entry.id} />}
      <NotComputed of={notComputed.filter(isOfWay)} />
    </section>
  );
}

const mm = (value: number) => withUnit(numberInWords(value, 2), "mm");

interface SightLineOptions {
  readonly line: NonNullable<RemovalTold["sightLine"]>;
  readonly entry: LedgerEntry;
}

function SightLine({ line, entry }: SightLineOptions) {
  const inner = innerSideTaken(entry);
  const { verdict, says } = line.path;
  return (
    <div className="removal-told">
      <h3>Sight line</h3>
      <p>
        The canal lies{" "}
        <a className="removal-number" href={`#${entry.id}`}>
          {mm(line.maxOffsetMm)}
        </a>{" "}
        off the straight line between orifice and piece, the most at {mm(line.offsetAtMm)} below the orifice.
      </p>
      {inner && (
        <p className="quiet">
          Inner side of the bend: {wallSideWords[inner.side]}
          {inner.isTold ? "." : "; nobody told it, and the sum assumes that side."}
        </p>
      )}
      <p className="removal-verdict" data-verdict={verdict}>
        <strong>
          {verdict === "refused" ? "◆ " : ""}
          {sentenceInWords(pathWords[verdict])}.
        </strong>{" "}
        {sentenceInWords(says)}
      </p>
      {line.sides.length > 0 && (
        <table className="ruled-table removal-table">
          <caption>Dentine along the straight path, by side</caption>
          <thead>
            <tr>
              <th scope="col">Side</th>
              <th scope="col" data-figure>
                To cut
              </th>
              <th scope="col" data-figure>
                Left
              </th>
              <th scope="col" data-figure>
                Below the orifice
              </th>
              <th scope="col">That is</th>
            </tr>
          </thead>
          <tbody>
            {line.sides.map(({ side, dentineToCutMm, wallLeftMm, atMm, grade }) => (
              <tr key={side}>
                <th scope="row">{wallSideWords[side]}</th>
                <td data-figure>{mm(dentineToCutMm)}</td>
                <td data-figure>{wallLeftMm === undefined ? "wall not known" : mm(wallLeftMm)}</td>
                <td data-figure>{mm(atMm)}</td>
                <td>{grade === undefined ? "–" : wallGradeWords[grade]}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </div>
  );
}

interface PlatformOptions {
  readonly platform: NonNullable<RemovalTold["platform"]>;
  readonly entryId: string;
}

function Platform({ platform, entryId }: PlatformOptions) {
  const { widthMm, wallLeftMm, side, grade, sides, limits, ring } = platform;
  return (
    <div className="removal-told">
      <h3>Platform at the piece</h3>
      <p>
        {mm(widthMm)} wide
        {wallLeftMm !== undefined && (
          <>
            ; it leaves{" "}
            <a className="removal-number" href={`#${entryId}`}>
              {mm(wallLeftMm)}
            </a>
            {side && ` ${wallSideWords[side]}`}
            {grade && `: ${wallGradeWords[grade]}`}
          </>
        )}
        .
      </p>
      {sides.length > 0 && (
        <table className="ruled-table removal-table">
          <caption>Dentine round the platform, by side</caption>
          <thead>
            <tr>
              <th scope="col">Side</th>
              <th scope="col" data-figure>
                Before
              </th>
              <th scope="col" data-figure>
                Left
              </th>
              <th scope="col">That is</th>
            </tr>
          </thead>
          <tbody>
            {sides.map((one) => (
              <tr key={one.side}>
                <th scope="row">{wallSideWords[one.side]}</th>
                <td data-figure>{mm(one.wallMm)}</td>
                <td data-figure>{mm(one.wallLeftMm)}</td>
                <td>{wallGradeWords[one.grade]}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      <LimitsOfWall limits={limits} />
      {ring && (
        <p className="quiet">
          The root&apos;s ring loses {percentText(ring.lostShare)} % of its moment of inertia there; off the centre the
          wall goes first and this hardly.
        </p>
      )}
    </div>
  );
}
