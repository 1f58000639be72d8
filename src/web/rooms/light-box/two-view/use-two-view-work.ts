import { useCallback, useEffect, useMemo, useRef, useState } from "react";
import { courseRead } from "../../../../ledger/course-in-space.ts";
import { partsOf } from "../../../../record/parts.ts";
import type { CaseView } from "../../../../server/api.ts";
import { pointOf } from "../../../lightbox/kernels/film-point.ts";
import { twoViewOf } from "../../../lightbox/kernels/hidden-part.ts";
import { tubeAngleInWords } from "../../../lightbox/kernels/tube-angle.ts";
import { type MovedLevel, rowsOf, withLevelMoved } from "../../../lightbox/two-view/level-rows.ts";
import { type LevelTick, levelTicks, measuredLine } from "../../../lightbox/two-view/level-ticks.ts";
import { levelMoved, type PairingInHand } from "../../../lightbox/two-view/pairing-gestures.ts";
import { sharedSpots } from "../../../lightbox/two-view/shared-spots.ts";
import { filmsBeside, pairingOf, type TracedFilm } from "../../../lightbox/two-view/traced-films.ts";
import { newPartId } from "../../../record/new-part-id.ts";
import { useRecording } from "../../../record/use-recording.ts";
import type { FilmInWork, NewLandmark, TwoViewWork } from "./two-view-work.ts";

/** What the room knows and does about one canal. */
export function useTwoViewWork(view: CaseView, canal: string, measuring: boolean): TwoViewWork {
  const { parts, ledger, facts, caseId } = view;
  const record = useRecording(caseId);
  const films = useMemo(() => filmsBeside(parts, ledger, canal).map(inWork(view)), [view, parts, ledger, canal]);
  const newId = useMemo(() => newPartId("pairing"), []);
  const pairing = pairingOf(parts, canal);
  const ids = films.map(({ film }) => film.id);
  const hand: PairingInHand = { canal, films: ids, pairing, newId };
  const entry = twoViewOf(ledger, canal);
  const course = useMemo(() => courseRead(entry), [entry]);
  const [place, setPlace] = useState<number>();
  const [level, setLevel] = useState<number>();
  const [landmark, setLandmark] = useState<NewLandmark>();
  const levels = useLevels({ course, measuring }, (moved, ticks) => {
    const film = films[moved.film]?.film;
    if (film !== undefined)
      record(levelMoved(hand, rowsOf(ticks), { number: moved.number, film, presentedOn: facts.presentedOn }));
  });
  const marks = useMemo(() => partsOf(parts, "mark"), [parts]);
  return {
    ...{ caseId, canal, films, entry, ledger, course, hand, measuring, record },
    ...levels,
    ...{ tooth: facts.tooth, presentedOn: facts.presentedOn },
    spots: sharedSpots(marks, ids),
    ...{ place, setPlace, level, setLevel, landmark, setLandmark },
  };
}

const inWork =
  ({ parts }: CaseView) =>
  ({ film, trace }: TracedFilm): FilmInWork => {
    const { horizontalAngleDeg } = film.body;
    return {
      ...{ film, trace, line: measuredLine(trace.body.points.map(pointOf)) },
      marks: partsOf(parts, "mark").filter(
        ({ id, body }) => body.film === film.id && (id === trace.id || body.shape === "spot"),
      ),
      name:
        horizontalAngleDeg === undefined
          ? "angle not known"
          : horizontalAngleDeg === 0
            ? "straight"
            : tubeAngleInWords(horizontalAngleDeg),
    };
  };

/** An arrow moves a level at once; the gesture is recorded when the hand has rested for so long. */
const restMilliseconds = 900;

/** The levels with those that the hand moved where it put them, until the ledger has answered. */
function useLevels(
  { course, measuring }: { readonly course: TwoViewWork["course"]; readonly measuring: boolean },
  keep: (moved: MovedLevel, ticks: readonly LevelTick[]) => void,
) {
  const read = useMemo(() => (course === undefined ? [] : levelTicks(course)), [course]);
  const [moves, setMoves] = useState<readonly MovedLevel[]>([]);
  const waiting = useRef<{ readonly timer: number; readonly moved: MovedLevel } | undefined>(undefined);
  const ticks = useMemo(() => moves.reduce<readonly LevelTick[]>(withLevelMoved, read), [read, moves]);
  const latest = useRef({ keep, ticks });
  latest.current = { keep, ticks };
  // What the hand did stands until the answer to all of it is there.
  // biome-ignore lint/correctness/useExhaustiveDependencies: another course or an end of saving is what ends it
  useEffect(() => {
    if (!measuring && waiting.current === undefined) setMoves([]);
  }, [course, measuring]);
  const finish = useCallback(() => {
    const { current } = waiting;
    if (current === undefined) return;
    clearTimeout(current.timer);
    waiting.current = undefined;
    latest.current.keep(current.moved, latest.current.ticks);
  }, []);
  useEffect(() => finish, [finish]);
  const moveLevel: TwoViewWork["moveLevel"] = (moved, when) => {
    const before = waiting.current?.moved;
    if (before !== undefined && (before.number !== moved.number || before.film !== moved.film)) finish();
    if (waiting.current !== undefined) clearTimeout(waiting.current.timer);
    latest.current = { ...latest.current, ticks: withLevelMoved(latest.current.ticks, moved) };
    setMoves((made) => [...made.filter(({ number, film }) => number !== moved.number || film !== moved.film), moved]);
    waiting.current = { timer: window.setTimeout(finish, restMilliseconds), moved };
    if (when === "now") finish();
  };
  /** Puts a level back where it was before the hand took it. */
  const dropLevel = () => {
    const { current } = waiting;
    if (current === undefined) return;
    clearTimeout(current.timer);
    waiting.current = undefined;
    setMoves((made) => made.filter((moved) => moved !== current.moved));
  };
  return { ticks, moveLevel, finishLevel: finish, dropLevel };
}
