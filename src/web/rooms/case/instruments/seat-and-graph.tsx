import { type KeyboardEvent, type PointerEvent, useMemo } from "react";
import { seatedFile } from "../../../../figures/seated-file.ts";
import { strainAlong } from "../../../../figures/strain-along.ts";
import { strainText } from "../../../../figures/strain-ramp.ts";
import type { BendTold } from "../../../../ledger/bend-told.ts";
import type { InstrumentUsed } from "../../../../ledger/instruments-of-canals.ts";
import {
  numberAtCourse,
  numberAtShare,
  numberNearest,
  type PlaceOnInstrument,
} from "../../../../ledger/place-on-instrument.ts";
import { FigureView } from "../../../parts/figure-view.tsx";
import { boundOfStrain, startWords } from "./bend-in-words.ts";
import { drawnCourse } from "./drawn-places.ts";
import { shareAcross, shareAlongPath } from "./share-under-pointer.ts";

interface SeatAndGraphOptions {
  readonly told: BendTold;
  readonly used: InstrumentUsed;
  /** The place that is pointed at, by its number along the profile. */
  readonly number: number | undefined;
  readonly place: PlaceOnInstrument | undefined;
  readonly point: (number: number | undefined) => void;
}

/** The instrument in its seat beside the graph of its strain; a place that is pointed at in one is shown in both. */
export function SeatAndGraph({ told, used, number, place, point }: SeatAndGraphOptions) {
  const { seat, graph } = useDrawings({ told, used, place });
  const last = told.profile.length - 1;
  const keys = (event: KeyboardEvent) => {
    const now = number ?? numberNearest(told, told.fromTipMm ?? 0);
    const next = { ArrowLeft: now - 1, ArrowRight: now + 1, ArrowDown: now - 1, ArrowUp: now + 1, Home: 0, End: last }[
      event.key
    ];
    if (next === undefined && event.key !== "Escape") return;
    event.preventDefault();
    point(next === undefined ? undefined : Math.min(last, Math.max(0, next)));
  };
  const over = (event: PointerEvent<Element>) => {
    const share = shareAcross(event.currentTarget, "curve", event.clientX);
    if (share !== undefined) point(numberAtShare(told, share));
  };
  const along = (event: PointerEvent<Element>) => {
    const share = shareAlongPath(event.currentTarget, "course", { x: event.clientX, y: event.clientY });
    if (share !== undefined) point(numberAtCourse(told, share));
  };
  return (
    <div className="instruments-pair">
      {seat && (
        <div className="instruments-seat" onPointerMove={along} onPointerLeave={() => point(undefined)}>
          <FigureView figure={seat} />
        </div>
      )}
      <div className="instruments-graph">
        <div
          role="slider"
          tabIndex={0}
          aria-label="Place along the instrument"
          aria-valuemin={0}
          aria-valuemax={last}
          aria-valuenow={number ?? 0}
          aria-valuetext={place === undefined ? "none" : placeInWords(place, told)}
          onKeyDown={keys}
          onPointerMove={over}
          onPointerLeave={() => point(undefined)}
          onBlur={() => point(undefined)}
        >
          <FigureView figure={graph} />
        </div>
        <p className="quiet instruments-place">
          {place === undefined
            ? "Point at either drawing, or take the arrow keys on the graph: both show the place."
            : placeInWords(place, told)}
        </p>
      </div>
    </div>
  );
}

const placeInWords = ({ fromTipMm, fromStartMm, strain }: PlaceOnInstrument, { startsAt }: BendTold): string =>
  `${fromTipMm.toFixed(1)} mm from its tip, ${fromStartMm.toFixed(1)} mm from ${startWords[startsAt]}: strain ${strainText(strain)}`;

type Drawn = Pick<SeatAndGraphOptions, "told" | "used" | "place">;

function useDrawings({ told, used, place }: Drawn) {
  const { profile, tipDepthMm, startsAt, fromTipMm, peakStrain, intervals } = told;
  const placeMm = place?.fromTipMm;
  const course = useMemo(() => drawnCourse(told.course), [told]);
  const seat = useMemo(
    () =>
      course.length < 2
        ? undefined
        : seatedFile({
            ...{ name: used.name, course, tipDepthMm, profile, diameters: used.diameters, placeMm },
            ...(fromTipMm === undefined ? {} : { tightest: { fromTipMm, strain: peakStrain } }),
            ...{ bound: boundOfStrain(told), beginsAt: startWords[startsAt], theme: "paper", widthPx: 460 },
          }),
    [course, used, told, tipDepthMm, profile, fromTipMm, peakStrain, startsAt, placeMm],
  );
  const graph = useMemo(
    () =>
      strainAlong({
        ...{ profile, placeMm, tenPercent: true, theme: "paper", widthPx: 480 },
        ...(fromTipMm === undefined ? {} : { peak: { fromTipMm, strain: peakStrain, interval: intervals.peakStrain } }),
      }),
    [profile, placeMm, fromTipMm, peakStrain, intervals],
  );
  return { seat, graph };
}
