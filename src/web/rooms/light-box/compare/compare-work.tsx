import { useState } from "react";
import type { Gesture } from "../../../../record/change.ts";
import type { CaseView } from "../../../../server/api.ts";
import {
  type ComparedAs,
  type ComparedLook,
  firstLook,
  squaresBy,
  waysToLook,
} from "../../../lightbox/compare/compared-look.ts";
import { ComparedPane } from "../../../lightbox/compare/compared-pane.tsx";
import type { Comparison, Side } from "../../../lightbox/compare/comparison.ts";
import { landmarkNamed } from "../../../lightbox/compare/comparison-gestures.ts";
import {
  carriedToSecond,
  entryOfComparison,
  outlinesOnFirst,
  readComparison,
} from "../../../lightbox/compare/comparison-reading.ts";
import { LandmarkPanes } from "../../../lightbox/compare/landmark-panes.tsx";
import { useComparing } from "../../../lightbox/compare/use-comparing.ts";
import { useHardParts } from "../../../lightbox/compare/use-hard-parts.ts";
import { useLandmarks } from "../../../lightbox/compare/use-landmarks.ts";
import type { Film } from "../../../lightbox/kernels/film-name.ts";
import { scaleOfFilm } from "../../../lightbox/kernels/ledger-reading.ts";
import { usePaneGroup } from "../../../lightbox/view/use-pane-group.ts";
import { useAnnounce } from "../../../parts/announcer.tsx";
import { Button } from "../../../parts/button.tsx";
import { useShortcut } from "../../../parts/shortcuts.ts";
import { ComparePanel, WaysToLook } from "./compare-panel.tsx";

interface WorkOptions {
  readonly view: CaseView;
  readonly comparison: Comparison;
  readonly films: Readonly<Record<Side, Film>>;
  readonly record: (gesture: Gesture) => void;
  readonly takeAway: () => void;
}

/** One comparison: its films on the left, what came of it on the right. */
export function CompareWork({ view, comparison, films, record, takeAway }: WorkOptions) {
  const { caseId, ledger, parts, facts } = view;
  const { presentedOn } = facts;
  const entry = entryOfComparison(ledger, comparison.id);
  const read = readComparison(entry);
  const isCompared = entry !== undefined && read !== undefined;
  const [look, setLook] = useLook(isCompared, read?.comparable ?? false);
  const say = useAnnounce();
  const comparing = useComparing(caseId, comparison.id);
  const use = useLandmarks({ comparison, films, presentedOn, record, say });
  const hard = useHardParts({ comparison, record, say });
  const group = usePaneGroup(true);
  const isMarking = look.as === "landmarks" || !isCompared;
  useShortcut("c", "Two dates", "Compare", comparing.start);
  useShortcut("o", "Two dates", "Show or hide the lesion's outlines", () => setLook(outlinesTurned));
  useShortcut("[", "Two dates", "Smaller squares", () => setLook((now) => squaresBy(now, -1)));
  useShortcut("]", "Two dates", "Larger squares", () => setLook((now) => squaresBy(now, 1)));
  useShortcut("l", "Two dates", "Move both films together, or each by itself", () =>
    group.link(!group.linked, films.before.id),
  );
  const outline = () => {
    hard.turn(!(hard.isOn && isMarking));
    setLook((now) => ({ ...now, as: "landmarks" }));
  };
  useShortcut("h", "Two dates", "Outline a part to go by, or mark landmarks again", outline);
  useWays(isCompared, setLook);
  return (
    <div className="compare-body">
      <main className="compare-stage">
        <div className="compare-bar">
          <WaysToLook
            look={isMarking ? { ...look, as: "landmarks" } : look}
            isCompared={isCompared}
            comparable={read?.comparable ?? false}
            take={(as) => setLook((now) => ({ ...now, as }))}
          />
          <BesideWays
            look={look}
            isMarking={isMarking}
            setLook={setLook}
            hard={{ isOn: hard.isOn, turn: outline, areThere: hard.outlines.length > 0 }}
            linked={group.linked}
            link={() => group.link(!group.linked, films.before.id)}
          />
        </div>
        {isMarking ? (
          <LandmarkPanes
            {...{ films, group, presentedOn, use, hard }}
            partsOnSecond={read === undefined ? [] : carriedToSecond(hard.outlines, read.transform)}
            mmPerPx={{ before: scaleOfFilm(ledger, films.before.id), after: scaleOfFilm(ledger, films.after.id) }}
          />
        ) : (
          <ComparedPane
            {...{ films, presentedOn, look, setLook }}
            entryId={entry.id}
            sigma={read.differenceSigma}
            outlines={outlinesOnFirst(entry, parts)}
            hardParts={hard.outlines}
          />
        )}
      </main>
      <ComparePanel
        {...{ entry, parts, comparing, use, outline, takeAway }}
        hard={{ ...hard, isOn: hard.isOn && isMarking }}
        name={(index, name) => record(landmarkNamed(comparison, index, name))}
      />
    </div>
  );
}

const outlinesTurned = (look: ComparedLook): ComparedLook => ({ ...look, outlines: !look.outlines });

type SetLook = (next: (look: ComparedLook) => ComparedLook) => void;

/** A comparison that is known opens laid on each other; one that is not, with its landmarks. */
function useLook(isCompared: boolean, comparable: boolean): [ComparedLook, SetLook] {
  const [look, setLook] = useState(() => firstLook(isCompared ? "swipe" : "landmarks"));
  const [was, setWas] = useState(isCompared);
  if (was !== isCompared) {
    setWas(isCompared);
    // What has just been compared is shown at once; the hand that moves a landmark stays with the landmarks.
    if (isCompared) setLook({ ...look, as: "swipe" });
    else setLook({ ...look, as: "landmarks" });
  }
  if (isCompared && !comparable && look.as === "difference") setLook({ ...look, as: "swipe" });
  return [look, setLook];
}

function useWays(isCompared: boolean, setLook: SetLook): void {
  const take = (as: ComparedAs) => () => {
    if (as !== "landmarks" && !isCompared) return false;
    setLook((now) => ({ ...now, as }));
    return true;
  };
  const [landmarks, checkerboard, swipe, blink, difference] = waysToLook;
  useShortcut(landmarks?.keys ?? "1", "Two dates", "Landmarks", take("landmarks"));
  useShortcut(checkerboard?.keys ?? "2", "Two dates", "Checkerboard", take("checkerboard"));
  useShortcut(swipe?.keys ?? "3", "Two dates", "Swipe", take("swipe"));
  useShortcut(blink?.keys ?? "4", "Two dates", "Blink", take("blink"));
  useShortcut(difference?.keys ?? "5", "Two dates", "Difference", take("difference"));
}

interface BesideOptions {
  readonly look: ComparedLook;
  readonly isMarking: boolean;
  readonly setLook: SetLook;
  readonly hard: { readonly isOn: boolean; readonly turn: () => void; readonly areThere: boolean };
  readonly linked: boolean;
  readonly link: () => void;
}

/** What belongs to the way that is taken. */
function BesideWays({ look, isMarking, setLook, hard, linked, link }: BesideOptions) {
  if (isMarking)
    return (
      <div className="beside-ways">
        <Button hint="H" aria-pressed={hard.isOn} onClick={hard.turn}>
          Outline parts
        </Button>
        <Button hint="L" aria-pressed={linked} onClick={link}>
          Move together
        </Button>
      </div>
    );
  return (
    <div className="beside-ways">
      {look.as === "checkerboard" && (
        <>
          <Button hint="[" onClick={() => setLook((now) => squaresBy(now, -1))}>
            Smaller
          </Button>
          <Button hint="]" onClick={() => setLook((now) => squaresBy(now, 1))}>
            Larger
          </Button>
        </>
      )}
      <Button hint="O" aria-pressed={look.outlines} onClick={() => setLook(outlinesTurned)}>
        Outlines
      </Button>
      {look.outlines && (
        <p className="outline-key">
          <span data-side="before">before</span>
          <span data-side="after">after</span>
          {hard.areThere && <span data-side="hard">to go by</span>}
        </p>
      )}
    </div>
  );
}
