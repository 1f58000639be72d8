import { rowsOf } from "../../../lightbox/two-view/level-rows.ts";
import { levelsFreed, pairingTakenBack } from "../../../lightbox/two-view/pairing-gestures.ts";
import { Button } from "../../../parts/button.tsx";
import { countOf } from "../../../parts/figures-in-words.ts";
import { useTwoView } from "./two-view-work.ts";

/** How many levels there are, which of them were set by hand, and the way back. */
export function LevelsSection() {
  const { ticks, hand, record } = useTwoView();
  const set = ticks.filter(({ fixed, isEnd }) => fixed && !isEnd);
  const inner = ticks.filter(({ isEnd }) => !isEnd);
  if (inner.length === 0 && hand.pairing === undefined) return null;
  return (
    <section aria-label="Levels">
      <h2>Levels</h2>
      {inner.length > 0 && (
        <p className="quiet">
          {countOf(inner.length, "level")} between orifice and foramen
          {set.length === 0 ? ", all found by computing" : `, ${set.length} set by hand`}. Drag a number along its
          trace, or take it with Tab and move it with the arrow keys; Delete leaves it to the computing again.
        </p>
      )}
      {set.map(({ number }) => (
        <Button key={number} weight="bare" onClick={() => record(levelsFreed(hand, rowsOf(ticks, number), number))}>
          Level {number}: leave it to the computing
        </Button>
      ))}
      {set.length > 1 && (
        <Button weight="bare" onClick={() => record(levelsFreed(hand, []))}>
          Leave all levels to the computing
        </Button>
      )}
      {hand.pairing !== undefined && (
        <Button weight="bare" onClick={() => hand.pairing && record(pairingTakenBack(hand, hand.pairing))}>
          Leave films and levels to the computing
        </Button>
      )}
    </section>
  );
}
